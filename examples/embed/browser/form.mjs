// The form: made from the schema, and in step with a document. A text input only writes into the joint; whatever changes which
// fields there are makes the form anew.
import { byId, el } from './dom.mjs';
import { DEPEND_ON, FAMILIES, LABELS, SHOWN, fitting } from './layout.mjs';
import { humane, idOf, setAt, valueAt } from './schema.mjs';

const squeezed = text => String(text).toLowerCase().replace(/[^a-z0-9]/g, '');
const labelOf = name => LABELS[name] ?? humane(String(name).split('.').at(-1));
const NUMBER = /^\s*[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?\s*$/;

/** A description, unless it says no more than the label: "The thread." */
function telling(description, label) {
  const small = new Set(['the', 'its', 'a', 'an', 'of', 'what', 'it', 'how', 'is', 'or', 'by']);
  const words = text => text.toLowerCase().match(/[a-z]+/g) ?? [];
  const said = new Set(words(label));
  return words(description).every(word => small.has(word) || said.has(word)) ? '' : description;
}

/** "plies" is a list of what is each a "ply". */
function singular(name) {
  if (name === 'outline' || name === 'footprint') return 'corner';
  const [first, ...rest] = String(name).split('_');
  const one = first.replace(/ies$/, 'y').replace(/s$/, '');
  return [one, ...rest].join(' ');
}

/**
 * `whole()` is the document as it is now, `template()` the joint in it; `changed(path)` is called after each change;
 * `expanded(path)` is what a named set stands for, where that is known.
 */
export function makeForm(host, { schema, catalogue, fitsOf, whole, template, changed, expanded }) {
  /** Every field and group by its id: where it is, and the paragraph that says what is wrong. */
  let places = new Map();
  const open = new Set();

  const names = new Map();
  for (const [from, family] of Object.entries(FAMILIES)) {
    names.set(from, new Map(catalogue.families[family].map(({ code, label }) => [code, label])));
  }
  const nameOf = option => names.get(option.from)?.get(option.value) ??
    (option.own ? 'one of your own, described below' : humane(option.key));
  const same = from => (code, text) => squeezed(text) === squeezed(code) || squeezed(text) === squeezed(names.get(from)?.get(code) ?? code);

  function put(path, value) {
    setAt(whole(), path, value);
    changed(path);
  }

  /** A change after which there are other fields. The one that is wanted, or the one that had it, has the focus again. */
  function restructure(path, value, focus) {
    setAt(whole(), path, value);
    const wanted = focus ?? document.activeElement?.id;
    try {
      render();
      byId(wanted)?.focus();
    } finally {
      // Whatever the form comes to: the old answer is to another joint.
      changed(path);
    }
  }

  /** What is said below a field: the description, and what is wrong or wanted. */
  function below(id, hint, quiet) {
    const note = el('p', { id: `${id}:note`, hidden: true });
    return [hint && el('p', { id: `${id}:hint`, class: quiet ? 'unseen' : 'hint' }, hint), note];
  }

  function field(path, node, name, { required, quiet }, make) {
    const id = idOf(path);
    const { kind, at } = schema.plain(node);
    const description = telling(schema.plain(node).description, labelOf(name));
    const isEmpty = ['', undefined, null].includes(valueAt(whole(), path));
    const such = isEmpty && kind === 'quantity' ? /such as (.+)\.$/.exec(schema.root.$defs[schema.plain(node).name]?.description ?? '')?.[1] : undefined;
    const hint = [description, such && !description.includes('such as') && `Such as ${such}.`].filter(Boolean).join(' ');
    const [hinted, note] = below(id, hint, quiet);
    const input = make({
      id, 'aria-describedby': `${hint ? `${id}:hint ` : ''}${id}:note`, 'aria-required': required ? 'true' : undefined,
    });
    places.set(id, { path, node, required, input, note, kind, at });
    return el('div', { class: kind === 'text' || kind === 'choice' ? 'field wide' : 'field' },
      el('label', { for: id }, labelOf(name), required ? '' : el('span', { class: 'hint' }, ' if known')), input, hinted, note);
  }

  function textField(path, node, name, how) {
    const { kind } = schema.plain(node);
    const value = valueAt(whole(), path) ?? '';
    const isNumber = kind === 'number' || kind === 'integer';
    const shown = typeof value === 'object' ? JSON.stringify(value) : String(value);
    const read = text => {
      if (text.trim() === '') return how.required ? '' : undefined;
      if (isNumber) return NUMBER.test(text) && Number.isFinite(Number(text)) ? Number(text) : text;
      // A quantity may be an object: it is shown, and taken, as JSON.
      if (kind === 'quantity' && text.trim().startsWith('{')) {
        try { return JSON.parse(text); } catch { return text; }
      }
      return text;
    };
    return field(path, node, name, how, attributes => {
      const input = el('input', {
        ...attributes, type: 'text', inputmode: isNumber ? 'decimal' : undefined, spellcheck: kind === 'text' ? undefined : 'false',
        list: kind === 'thread' ? 'threads' : undefined,
        on: {
          input: () => {
            put(path, read(input.value));
            if (kind === 'thread') regroup(['Thread']);
          },
        },
      });
      input.value = shown;
      return input;
    });
  }

  function booleanField(path, node, name, how) {
    const value = valueAt(whole(), path);
    return field(path, node, name, how, attributes => {
      const known = value === true || value === false;
      const select = el('select', { ...attributes, on: { change: () => put(path, { yes: true, no: false }[select.value] ?? (how.required ? '' : undefined)) } },
        el('option', { value: '' }, known || value === undefined || value === '' ? 'not said' : `as written: ${JSON.stringify(value)}`),
        el('option', { value: 'yes', selected: value === true }, 'yes'), el('option', { value: 'no', selected: value === false }, 'no'));
      return select;
    });
  }

  /** The options of a choice, those that fit the thread first. */
  function optionsOf(all, current, value, required, path) {
    const option = one => el('option', { value: one.key, selected: one === current }, nameOf(one));
    const stray = value !== undefined && value !== null && value !== '' && !current;
    const list = [el('option', { value: '' }, stray ? `as written: ${JSON.stringify(value)}` : required ? 'choose' : 'not said')];
    const thread = template()?.bolt?.thread;
    const fits = fitsOf(thread);
    const codes = new Set(all.flatMap(one => fitting(one.from, fits, template()) ?? []).map(({ code }) => code));
    const own = all.filter(one => one.own || one.tag);
    const words = all.filter(one => !one.own && !one.tag);
    if (codes.size === 0) return [...list, words.map(option), own.map(option)];
    const group = (label, some) => some.length > 0 && el('optgroup', { label }, some.map(option));
    return [...list, group(`made for ${thread}`, words.filter(one => codes.has(one.value))), own.map(option),
      group(`not made for ${thread}`, words.filter(one => !codes.has(one.value)))];
  }

  /** The select itself stays while what it opens changes below it: it keeps the focus, and is not read out anew. */
  function choiceField(path, node, name, how) {
    const all = schema.options(node);
    const currentOf = () => schema.chosen(all, valueAt(whole(), path), same(all.find(one => one.from)?.from));
    const meaning = el('p', { class: 'hint' });
    const inner = el('div');
    const fill = () => {
      const current = currentOf();
      // Where the catalogue has a name, that says it.
      meaning.textContent = names.get(current?.from)?.has(current.value) ? '' : current?.description ?? '';
      meaning.hidden = meaning.textContent === '';
      for (const id of places.keys()) if (id.startsWith(`${idOf(path)}.`)) places.delete(id);
      inner.replaceChildren(...[
        current?.tag && anyField([...path, current.tag], current.node, current.tag, { ...how, required: true }),
        current?.own && el('fieldset', {}, el('legend', {}, `${labelOf(name)}: your own`), membersOf(path, current.node, how)),
      ].flat().filter(Boolean));
    };
    const becomes = option => {
      if (option?.value !== undefined) return option.value;
      if (option?.tag) return { [option.tag]: schema.blank(option.node) };
      if (option) return expanded(path) ?? schema.blank(option.node);
      return how.required ? '' : undefined;
    };
    const row = field(path, node, name, how, attributes => {
      const select = el('select', {
        ...attributes,
        on: {
          change: () => {
            setAt(whole(), path, becomes(all.find(one => one.key === select.value)));
            try {
              fill();
              regroup(place.from);
            } finally {
              changed(path);
            }
          },
        },
      });
      return select;
    });
    const place = places.get(idOf(path));
    const refill = () => place.input.replaceChildren(...optionsOf(all, currentOf(), valueAt(whole(), path), how.required, path).flat(2).filter(Boolean));
    place.from = new Set(all.map(one => one.from));
    place.refill = refill;
    refill();
    place.input.after(meaning);
    fill();
    return [row, inner];
  }

  /** Other products are made with another thread, other grades of another product: `changed` are the enumerations. */
  function regroup(changed) {
    const some = new Set([...changed].flatMap(from => DEPEND_ON[from] ?? []));
    for (const { from, refill } of places.values()) if (from && [...from].some(one => some.has(one))) refill();
  }

  /** What is shown at once of an object, and the rest folded away. */
  function membersOf(path, node, { quiet }) {
    const { at, name } = schema.plain(node);
    const own = path.length === 0 ? schema.root.title : name;
    const all = Object.keys(at.properties);
    const required = new Set(at.required);
    const known = SHOWN[own]?.filter(key => all.includes(key));
    const shown = known ?? [...all.filter(key => required.has(key)), ...all.filter(key => !required.has(key))];
    const make = key => anyField([...path, key], at.properties[key], LABELS[`${own}.${key}`] ? `${own}.${key}` : key, { required: required.has(key), quiet });
    const rest = all.filter(key => !shown.includes(key));
    const holder = path.length === 0 ? {} : { class: 'pairs' };
    // Two coordinates stand side by side on a telephone too.
    const parts = [el('div', own === 'GroupBolt' || own === 'Point' ? { class: 'pairs two' } : holder, shown.map(make))];
    if (rest.length > 0) {
      const id = `${idOf(path)}:more`;
      const filled = rest.some(key => ![undefined, null, ''].includes(valueAt(whole(), [...path, key])));
      const details = el('details', {
        id, class: path.length === 0 ? 'group' : undefined, open: open.has(id) || filled,
        on: { toggle: () => { if (details.open) open.add(id); else open.delete(id); } },
      }, el('summary', {}, `More: ${rest.map(key => labelOf(key).toLowerCase()).join(', ')}`), el('div', holder, rest.map(make)));
      parts.push(details);
    }
    return parts;
  }

  /** `must` is the node of what must be there. */
  function group(path, legend, description, { quiet, must }, ...inside) {
    const id = idOf(path);
    const told = telling(description ?? '', legend);
    const [hint, note] = below(id, told, quiet);
    places.set(id, { path, note, node: must, required: true });
    return el('fieldset', { id, tabindex: '-1', 'aria-describedby': `${told ? `${id}:hint ` : ''}${id}:note` }, el('legend', {}, legend), hint, note, inside);
  }

  function objectField(path, node, name, how) {
    const { description, at } = schema.plain(node);
    const value = valueAt(whole(), path);
    const isThere = typeof value === 'object' && value !== null;
    const own = { quiet: how.quiet, must: how.required ? node : undefined };
    if (how.required && isThere) return group(path, labelOf(name), description, own, membersOf(path, node, how));
    const id = `${idOf(path)}:is`;
    const select = el('select', { id, on: { change: () => restructure(path, select.value ? schema.blank(node) : undefined) } },
      el('option', { value: '' }, isThere || value === undefined || value === null || value === '' ? 'not said' : `as written: ${JSON.stringify(value)}`),
      el('option', { value: 'is', selected: isThere }, 'described below'));
    return group(path, labelOf(name), description, own,
      el('div', { class: 'field' }, el('label', { for: id, class: 'unseen' }, labelOf(name)), select), isThere && at && membersOf(path, node, how));
  }

  function listField(path, node, name, how) {
    const { at, description } = schema.plain(node);
    const found = valueAt(whole(), path);
    const list = Array.isArray(found) ? found : [];
    const one = singular(name);
    const addId = `${idOf(path)}:add`;
    const moved = (from, to) => {
      const next = [...list];
      next.splice(to, 0, ...next.splice(from, 1));
      restructure(path, next, `${idOf([...path, to])}:${to < from ? 'up' : 'down'}`);
      // At the end of the list that button is off.
      if (document.activeElement === document.body) byId(`${idOf([...path, to])}:${to < from ? 'down' : 'up'}`)?.focus();
    };
    const button = (id, text, label, disabled, click) =>
      el('button', { type: 'button', id, 'aria-label': label, disabled, on: { click } }, text);
    const isObject = schema.plain(at.items).kind === 'object';
    const items = list.map((item, index) => {
      const here = [...path, index];
      const id = idOf(here);
      const called = `${one} ${index + 1}`;
      const inner = { required: true, quiet: how.quiet || index > 0 };
      const moves = el('div', { class: 'moves' },
        button(`${id}:up`, 'Up', `Move ${called} up`, index === 0, () => moved(index, index - 1)),
        button(`${id}:down`, 'Down', `Move ${called} down`, index === list.length - 1, () => moved(index, index + 1)),
        button(`${id}:remove`, 'Remove', `Remove ${called}`, false, () => restructure(path, list.filter((_, at) => at !== index), addId)));
      return isObject
        ? group(here, humane(called), undefined, { quiet: true }, membersOf(here, at.items, inner), moves)
        : el('div', {}, anyField(here, at.items, called, inner), moves);
    });
    const add = button(addId, `Add ${/^[aeiou]/.test(one) ? 'an' : 'a'} ${one}`, undefined, false, () => {
      const here = [...path, list.length];
      const first = isObject ? SHOWN[schema.plain(at.items).name]?.[0] ?? Object.keys(schema.plain(at.items).at.properties)[0] : undefined;
      restructure(path, [...list, schema.blank(at.items)], idOf(first === undefined ? here : [...here, first]));
    });
    // That there are none is said too, where it must be.
    const isSaid = Array.isArray(found);
    const none = how.required && (isSaid ? list.length === 0 && el('p', { class: 'hint' }, 'None.')
      : button(`${idOf(path)}:none`, 'There are none', `${labelOf(name)}: there are none`, false, () => restructure(path, [], addId)));
    return group(path, labelOf(name), description, { quiet: how.quiet, must: how.required ? node : undefined }, items, el('div', { class: 'moves' }, none, add));
  }

  function anyField(path, node, name, how) {
    switch (schema.plain(node).kind) {
      case 'object': return objectField(path, node, name, how);
      case 'list': return listField(path, node, name, how);
      case 'choice': return choiceField(path, node, name, how);
      case 'boolean': return booleanField(path, node, name, how);
      default: return textField(path, node, name, how);
    }
  }

  function render() {
    places = new Map();
    const threads = el('datalist', { id: 'threads' }, catalogue.threads.map(value => el('option', { value })));
    host.replaceChildren(threads, ...[membersOf([], schema.root, {})].flat());
  }

  /** The place that is shown for a path: its own, or that of what it lies in. */
  function placeOf(path) {
    for (let length = path.length; length > 0; length--) {
      const place = places.get(idOf(path.slice(0, length)));
      if (place) return place;
    }
    return undefined;
  }

  /** Says beside their fields what is wrong and what is wanted: lists of `{ path, text }`. */
  function mark(wrong, wanted) {
    for (const { note, input } of places.values()) {
      if (note.hidden) continue;
      note.hidden = true;
      note.replaceChildren();
      input?.removeAttribute('aria-invalid');
      input?.removeAttribute('data-wanted');
    }
    const say = (list, name, attribute) => {
      for (const { path, text } of list) {
        const place = placeOf(path);
        if (!place) continue;
        const { note, input } = place;
        note.className = text === 'needed' ? `${name} empty` : name;
        note.append(note.hidden ? text : `; ${text}`);
        note.hidden = false;
        input?.setAttribute(attribute, 'true');
        if (name === 'wrong') reveal(note);
      }
    };
    say(wanted, 'wanted', 'data-wanted');
    say(wrong, 'wrong', 'aria-invalid');
  }

  function reveal(element) {
    for (let at = element.closest('details'); at; at = at.parentElement.closest('details')) at.open = true;
  }

  /** What the schema finds wrong with what is shown. */
  function faults() {
    const found = [];
    for (const { path, node, required, kind } of places.values()) {
      if (!node) continue;
      const value = valueAt(whole(), path);
      const stray = kind === 'choice' && value !== undefined && value !== null && value !== '' &&
        !schema.chosen(schema.options(node), value, () => true);
      const text = stray ? 'not one of these' : schema.fault(node, value, required);
      if (text) found.push({ path, text });
    }
    return found;
  }

  /**
   * The field that a quantity of a refusal speaks of, by the words in its name: "load across the axis" is `load.across`. Nothing
   * where two fields answer to it alike.
   */
  function named(quantity) {
    const said = new Set(quantity.toLowerCase().match(/[a-z]+/g));
    const has = step => typeof step === 'string' && step.split('_').every(word => said.has(word));
    const found = [...places.values()].filter(({ input, path }) => input && has(path.at(-1)))
      .map(({ path }) => ({ path, hits: path.filter(has).length })).sort((a, b) => b.hits - a.hits);
    return found.length > 0 && found[0].hits !== found[1]?.hits ? found[0].path : undefined;
  }

  /** Goes to the field of a path. */
  function go(path) {
    const place = placeOf(path);
    if (!place) return;
    const target = place.input ?? byId(idOf(place.path));
    reveal(target);
    target.focus();
    target.scrollIntoView({ block: 'center' });
  }

  return { render, mark, faults, go, named, placeOf };
}
