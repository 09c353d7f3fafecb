// The page: one request, and the answer to exactly that request or none.
import { open, Refusal } from '../callers/shankline.mjs';
import { WORDS, pathName, showNone, showReport, withoutWord } from './answer.mjs';
import { missingOf, showConnection, templateOf } from './connection.mjs';
import { byId, el } from './dom.mjs';
import { makeForm } from './form.mjs';
import { saidIn } from './layout.mjs';
import { heldBy, linkOf, written } from './link.mjs';
import { humane, pathOf, readSchema, valueAt } from './schema.mjs';

const inlined = id => JSON.parse(byId(id).textContent);

async function moduleBytes() {
  const packed = Uint8Array.from(atob(byId('module').textContent.trim()), letter => letter.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}

async function start() {
  const shankline = await open(await moduleBytes());
  const catalogue = shankline.ask('catalogue');
  const demonstrations = inlined('demonstrations');
  const { version } = shankline.ask('version');
  const modes = new Map(catalogue.families.modes.map(({ code, label }) => [code, label]));

  const mode = code => modes.get(code) ?? humane(code);

  /** What may be asked about. The schema of a connection has that of a joint in it: the template of its bolts. */
  const schema = inlined('schema');
  const KINDS = {
    joint: {
      called: 'One joint', schema: readSchema({ ...schema.$defs.Joint, title: 'Joint', $defs: schema.$defs }), question: 'check', picture: 'draw',
      show: showReport, headline: answer => `${WORDS[answer.word]} ${withoutWord(answer.headline)}`, missing: answer => answer.missing,
      /** The joint that is a connection's template. */
      from: connection => connection.joint,
    },
    connection: {
      called: 'A connection', schema: readSchema(schema), question: 'check_connection', picture: 'draw_connection',
      show: showConnection, headline: answer => `${WORDS[answer.verdict.word]} ${withoutWord(answer.headline)}`, missing: missingOf,
      from: joint => ({ ...blankOf('connection'), title: joint.title ?? '', joint: templateOf(joint) }),
    },
  };

  /** Empty, and even that nothing is combined or alternates is left to be said. */
  function blankOf(kind) {
    const { combinations, alternations, ...blank } = KINDS[kind].schema.blank(KINDS[kind].schema.root);
    return blank;
  }

  /** What the form shows, of which kind it is, and the text that is asked: they are the same, or the text is not JSON yet. */
  let kind = 'joint';
  let whole = {};
  let text = '{}';
  let units = 'si';
  const template = () => kind === 'joint' ? whole : whole.joint;
  /** Whether there is an answer to the text; and what was changed since there was one. */
  let isAnswered = false, suspect;
  /** Why the text cannot be read, while it cannot: the form then shows what it showed before, and waits. */
  let unread;
  const drawn = new Set(['section', 'checks', 'springs']);
  /** The load case of which the plan is drawn; the one that governs if none is named. */
  let shownCase;
  const kept = new Map();
  let isWorkingOpen = false;

  const fits = new Map();
  function fitsOf(thread) {
    // Without a thread the catalogue lists everything.
    if (typeof thread !== 'string') return undefined;
    if (!fits.has(thread)) {
      let found;
      try { found = shankline.ask('catalogue', { thread }); } catch { /* no thread is made for a word half typed */ }
      fits.set(thread, found);
    }
    return fits.get(thread);
  }

  const forms = new Map();
  function formOf(own) {
    if (!forms.has(own)) {
      forms.set(own, makeForm(byId('fields'), {
        schema: KINDS[own].schema, catalogue, fitsOf, whole: () => whole, template, expanded,
        changed: path => {
          suspect ??= path;
          text = written(whole);
          byId('text').value = text;
          refresh();
        },
      }));
    }
    return forms.get(own);
  }
  let form = formOf(kind);

  /** What a named set of the joint stands for: the module writes it out. */
  function expanded(path) {
    try {
      const { joint } = JSON.parse(shankline.askText('check', `{"joint":${JSON.stringify(template())}}`));
      return valueAt(joint, kind === 'joint' ? path : path.slice(1));
    } catch {
      return undefined;
    }
  }

  /** Asks with the text as it stands. It was read as JSON before, so that it cannot be more than one document. */
  const ask = (question, rest = '') => shankline.askText(question, `{"${kind}":${text},"units":${JSON.stringify(units)}${rest}}`);

  function refresh() {
    isAnswered = false;
    byId('told').textContent = '';
    let reason = unread, told;
    try {
      if (unread !== undefined) throw new Refusal({ text: unread });
      const asked = KINDS[kind];
      const answer = JSON.parse(ask(asked.question));
      const missing = asked.missing(answer).map(one => ({ ...one, path: saidIn(kind, one, whole) }));
      if (!answer.verdict?.cases.some(({ name }) => name === shownCase)) shownCase = undefined;
      asked.show(answer, {
        kept, mode, missing, drawn, units, request: text, go: form.go, where: form.placeOf, working, draw, redraw, shownCase, showCase,
        made: `Made on ${new Date().toISOString().slice(0, 10)} with shankline ${version}, from published tables and formulas. The answer is to the ${kind} as it is described here, and to no other.`,
      });
      form.mark([], wantedBeside(missing));
      told = asked.headline(answer);
      isAnswered = true;
      suspect = undefined;
    } catch (problem) {
      reason = problem instanceof Refusal ? plainer(problem.message) : `a fault of this page: ${problem.message}`;
      // Before anything else the old answer goes.
      showNone(`${reason}.`);
      reason = explain(problem, reason);
    }
    document.title = whole.title ? `${whole.title} – does the joint hold?` : 'Does the joint hold?';
    tell(isAnswered ? told : `No answer: ${reason}`);
    keepAddress();
  }

  /** Says beside the fields what is wrong, and gives it in one line. */
  function explain(problem, reason) {
    if (unread !== undefined) {
      form.mark([], []);
      return reason;
    }
    const place = problem instanceof Refusal ? pathOf(problem.place?.field, kind) : undefined;
    const wrong = allWrong(place?.length ? place : suspect ?? form.named(problem.document?.quantity ?? ''), reason);
    form.mark(wrong, []);
    const [first] = wrong;
    const more = wrong.length > 1 ? `, and ${wrong.length - 1} more (see below)` : '';
    const line = first && first.text !== reason ? `${pathName(first.path)} – ${first.text}${more}` : reason;
    showNone(`${line}.`, wrong, form);
    return line;
  }

  /** For each field that a verdict waits for: for what. */
  function wantedBeside(missing) {
    const found = new Map();
    for (const { path, mode: code, text: line } of missing) {
      const place = path && form.placeOf(path);
      if (!place) continue;
      found.set(place, { path, modes: (found.get(place)?.modes ?? new Set()).add(modes.get(code) ?? line) });
    }
    return [...found.values()].map(({ path, modes }) => ({ path, text: `Wanted for: ${[...modes].join(', ')}` }));
  }

  const plainer = message => message.replace(/^missing field `(\w+)`$/, (_, name) => `"${humane(name)}" is needed`);

  /** The words of the module are for the field it names, or that was changed last; the schema finds the other fields at once. */
  function allWrong(path, reason) {
    const own = form.faults();
    if (!path?.length) return own;
    const isBelow = one => path.every((step, at) => one.path[at] === step);
    // An empty field, or one that is no number, is better told of by the schema than by a reader of JSON.
    if (own.some(one => isBelow(one) && (one.text === 'needed' || typeof valueAt(whole, path) !== 'string' || one.text === 'not a number'))) return own;
    return [{ path, text: reason }, ...own.filter(one => !isBelow(one))];
  }

  /** A picture that cannot be drawn is left out. */
  function draw(picture) {
    const what = kind === 'joint' ? `"picture":"${picture}"` : `"case":${JSON.stringify(shownCase ?? null)}`;
    try {
      return ask(KINDS[kind].picture, `,${what},"format":"svg"`);
    } catch (problem) {
      if (problem instanceof Refusal && problem.code === 'not_drawn') return undefined;
      throw problem;
    }
  }

  function redraw(picture, isWanted) {
    if (isWanted) drawn.add(picture);
    else drawn.delete(picture);
    refresh();
    byId(`draw:${picture}`)?.focus();
  }

  function showCase(name) {
    shownCase = name;
    refresh();
    byId('draw:case')?.focus();
  }

  /** Every step with its formula, worked out only while it is open. */
  function working() {
    const place = el('pre', { tabindex: '0' });
    const fill = () => { place.textContent = ask('explain', ',"show":"working","format":"text"'); };
    if (isWorkingOpen) fill();
    const more = el('details', { class: 'group screen', open: isWorkingOpen, on: { toggle: () => { isWorkingOpen = more.open; if (more.open) fill(); } } },
      el('summary', {}, 'The working of every step'), place);
    return more;
  }

  /** The word is read out once the typing rests, and only if it is another. */
  let told = '', teller;
  function tell(line) {
    clearTimeout(teller);
    teller = setTimeout(() => {
      if (line !== told) byId('live').textContent = line;
      told = line;
    }, 900);
  }

  /** The address follows a little later: browsers allow only so many changes of it. It holds what the box holds. */
  let keeper;
  function keepAddress() {
    clearTimeout(keeper);
    const link = linkOf(kind, byId('text').value, units);
    byId('link').href = link;
    keeper = setTimeout(() => history.replaceState(null, '', link), 250);
  }

  /** Takes another document as a text: from a link, a demonstration or the box. What is not JSON is not asked. */
  function take(given, { of = kind, fromBox = false } = {}) {
    showNone(`Another ${of} is being read.`);
    if (!fromBox) byId('text').value = given;
    suspect = undefined;
    unread = undefined;
    if (of !== kind) {
      kind = of;
      whole = blankOf(kind);
      form = formOf(kind);
      form.render();
    }
    try {
      const found = JSON.parse(given);
      if (typeof found !== 'object' || found === null || Array.isArray(found)) throw new TypeError(`a ${kind} is an object with named fields`);
      [whole, text] = [found, given];
    } catch (problem) {
      unread = `the text of the request is not a ${kind} in JSON: ${problem.message}`;
      byId('asText').open = true;
    }
    if (unread === undefined) form.render();
    byId(`kind:${kind}`).checked = true;
    byId('form').setAttribute('aria-label', KINDS[kind].called);
    byId('broken').hidden = unread === undefined;
    byId('fields').inert = unread !== undefined;
    byId('textWrong').hidden = unread === undefined;
    byId('textWrong').textContent = unread ?? '';
    byId('text').setAttribute('aria-invalid', String(unread !== undefined));
    refresh();
  }

  function fromAddress() {
    const found = heldBy(location.hash);
    if (!found) return false;
    if (found.units) setUnits(found.units);
    take(found.text, { of: found.kind });
    return true;
  }

  function setUnits(code) {
    const input = [...byId('units').querySelectorAll('input')].find(one => one.value === code);
    if (!input) return;
    units = code;
    input.checked = true;
  }

  for (const { code, label } of catalogue.families.units) {
    byId('units').append(el('label', { title: label }, el('input', {
      type: 'radio', name: 'units', value: code, checked: code === units, 'aria-label': label, on: { change: () => { units = code; refresh(); } },
    }), /\((\w+)/.exec(label)?.[1] ?? code));
  }
  /** "Back" of the browser gives what was there before. */
  function keepForBack() {
    history.replaceState(null, '', byId('link').href);
    history.pushState(null, '', byId('link').href);
  }

  for (const [code, { called, from }] of Object.entries(KINDS)) {
    // What the form shows goes on: a joint as the template of a connection, and back.
    const change = () => {
      const given = from(whole) ?? blankOf(code);
      keepForBack();
      take(written(given), { of: code });
    };
    byId('kind').append(el('label', {}, el('input', { type: 'radio', name: 'kind', id: `kind:${code}`, value: code, on: { change } }), called));
  }
  const offered = Object.keys(KINDS).flatMap(of => demonstrations[of].map(one => [of, one]));
  const empty = { empty: 'joint', 'empty connection': 'connection' };
  byId('demo').append(...offered.map(([, { title }], at) => el('option', { value: at }, title)),
    ...Object.entries(empty).map(([value, of]) => el('option', { value }, `An empty ${of}`)));
  byId('load').addEventListener('click', () => {
    const chosen = byId('demo').value;
    keepForBack();
    const [of, given] = empty[chosen] ? [empty[chosen], blankOf(empty[chosen])] : offered[chosen];
    take(written(given), { of });
  });
  byId('text').addEventListener('input', () => take(byId('text').value, { fromBox: true }));
  byId('discard').addEventListener('click', () => { take(written(whole)); byId('text').focus(); });
  byId('print').addEventListener('click', () => print());
  byId('copy').addEventListener('click', async () => {
    const link = new URL(byId('link').getAttribute('href'), location.href).href;
    try {
      await navigator.clipboard.writeText(link);
      byId('told').textContent = 'Copied.';
    } catch {
      byId('told').textContent = 'Not copied: copy the address of the link.';
    }
  });
  byId('link').addEventListener('click', event => { event.preventDefault(); history.replaceState(null, '', byId('link').getAttribute('href')); });
  for (const skip of document.querySelectorAll('[data-skip]')) {
    skip.addEventListener('click', event => { event.preventDefault(); byId(skip.dataset.skip).focus(); byId(skip.dataset.skip).scrollIntoView(); });
  }
  for (const own of document.querySelectorAll('form')) own.addEventListener('submit', event => event.preventDefault());
  addEventListener('hashchange', () => fromAddress());
  addEventListener('popstate', () => fromAddress());

  // After a fault nobody knows what is shown.
  addEventListener('error', ({ message }) => showNone(`A fault of this page: ${message}.`));
  if (!fromAddress()) take(written(demonstrations.joint[0]));
}

start().catch(problem => showNone(`The module did not start: ${problem.message}. Nothing is decided.`));
