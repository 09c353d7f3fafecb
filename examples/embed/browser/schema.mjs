// A schema, read for a form: what kind of field a value is, what there is to choose, what is wrong with a value.
// Paths are lists of names and numbers: ['stack', 'plies', 0, 'hole'].

/** Comments of the source as they read for people: no marks of code, and of `tables::plies` the last word. */
const prose = text => text.replaceAll('`', '').replace(/\b\w+::(\w+)/g, (_, word) => word.replaceAll('_', ' '));

/** A reader of a schema with what its `$defs` hold. */
export function readSchema(schema) {
  const cache = new Map();

  /** A node without references, with the description nearest to the field, and whether it may be left out. */
  function plain(node) {
    if (cache.has(node)) return cache.get(node);
    let at = node, name, optional = false, description;
    for (;;) {
      description ??= at.description;
      if (at.$ref) {
        name = at.$ref.split('/').at(-1);
        at = schema.$defs[name];
      } else if (at.anyOf && !at.properties && at.anyOf.some(one => one.type === 'null')) {
        optional = true;
        const others = at.anyOf.filter(one => one.type !== 'null');
        at = others.length === 1 ? others[0] : { anyOf: others };
      } else break;
    }
    const types = [at.type ?? []].flat();
    const found = {
      at, name, description: prose(description ?? ''),
      optional: optional || types.includes('null'), type: types.find(type => type !== 'null'),
    };
    found.kind = kindOf(found);
    cache.set(node, found);
    return found;
  }

  const isQuantity = node => node.anyOf?.some(one => one.pattern) &&
    node.anyOf.some(one => one.properties?.unit || one.properties?.plus_minus);

  function kindOf({ at, type, name }) {
    if (isQuantity(at)) return 'quantity';
    if (type === 'object' || at.properties) return 'object';
    if (type === 'array') return 'list';
    if (type === 'boolean' || type === 'number' || type === 'integer') return type;
    if (at.oneOf || at.anyOf || at.enum) return 'choice';
    return name === 'Thread' ? 'thread' : 'text';
  }

  /** What there is to choose: a word, a word with figures of its own (`tag`), or a description of one's own (`own`). */
  function options(node) {
    const found = [];
    const walk = (one, above) => {
      const { at, description, kind, name } = plain(one);
      const from = name ?? above;
      if (at.const !== undefined) found.push({ key: String(at.const), value: at.const, description, from });
      else if (at.enum) found.push(...at.enum.map(value => ({ key: String(value), value, description: '', from })));
      else if (kind === 'object') {
        const [tag] = Object.keys(at.properties ?? {});
        const tagged = !name && Object.keys(at.properties).length === 1 && at.required?.length === 1;
        found.push(tagged ? { key: tag, tag, node: at.properties[tag], description } : { key: `own ${name}`, own: name, node: one, description });
      } else for (const inner of at.oneOf ?? at.anyOf ?? []) walk(inner, from);
    };
    walk(node);
    return found;
  }

  /** Which of the options a value is, or nothing. `same` tells whether a text is another name of a code. */
  function chosen(all, value, same) {
    if (value === undefined || value === null || value === '') return undefined;
    if (typeof value === 'object' && value !== null) {
      const keys = Object.keys(value);
      return all.find(one => one.tag && keys.length === 1 && keys[0] === one.tag) ?? all.find(one => one.own);
    }
    return all.find(one => one.value === value) ?? all.find(one => one.value !== undefined && same(one.value, value));
  }

  /** A value to begin with: empty, so that nothing is taken for granted. */
  function blank(node) {
    const { kind, at } = plain(node);
    if (kind === 'list') return [];
    if (kind !== 'object') return '';
    const entries = (at.required ?? []).map(name => [name, blank(at.properties[name])]);
    return Object.fromEntries(entries);
  }

  const patterns = new Map();
  function matches(pattern, text) {
    if (!patterns.has(pattern)) patterns.set(pattern, new RegExp(pattern, 'u'));
    return patterns.get(pattern).test(text);
  }

  /** What is wrong with a single value, in words, or nothing. The module has the last word; this one says several at once. */
  function fault(node, value, required) {
    const { kind, at, optional } = plain(node);
    if (value === undefined) return required ? 'needed' : undefined;
    if (value === null) return optional ? undefined : 'needed';
    if (value === '' && kind !== 'text') return 'needed';
    switch (kind) {
      case 'quantity': {
        if (typeof value !== 'string') return undefined;
        const texts = [at, ...at.anyOf.map(one => plain(one).at)].flatMap(one => one.anyOf ?? one).filter(one => one.pattern);
        if (texts.some(one => matches(one.pattern, value))) return undefined;
        const example = plain(at.anyOf[0]).at.anyOf?.find(one => one.properties?.unit) ?? at.anyOf.find(one => one.properties?.unit);
        const units = example?.properties.unit.examples?.join(', ');
        return `not understood; write a number and its unit${units ? ` (${units})` : ''}`;
      }
      case 'number': return typeof value === 'number' ? undefined : 'not a number';
      case 'integer':
        if (!Number.isInteger(value)) return 'not a whole number';
        return value < (at.minimum ?? -Infinity) ? `at least ${at.minimum}` : undefined;
      case 'boolean': return typeof value === 'boolean' ? undefined : 'say yes or no';
      case 'text': case 'thread':
        if (typeof value !== 'string') return 'not a text';
        return at.pattern && !matches(at.pattern, value) ? 'not understood' : undefined;
      case 'object': return typeof value === 'object' && !Array.isArray(value) ? undefined : 'needed';
      case 'list':
        if (!Array.isArray(value)) return 'not a list';
        return value.length < (at.minItems ?? 0) ? `at least ${at.minItems} is needed` : undefined;
      default: return undefined;
    }
  }

  return { root: schema, plain, options, chosen, blank, fault };
}

/** `end_distance` as a label. */
export const humane = name => {
  const words = name.replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** `joint.stack.plies[0].hole` of an error document, as a path within the `joint`; nothing for what lies elsewhere. */
export function pathOf(field, kind) {
  const steps = [];
  for (const [, name, index] of (field ?? '').matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    if (name !== undefined && index === undefined) steps.push(name);
    else steps.push(Number(index));
  }
  return steps[0] === kind ? steps.slice(1) : undefined;
}

export const idOf = path => `f:${path.join('.')}`;

export function valueAt(whole, path) {
  let at = whole;
  for (const step of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return undefined;
    at = at[step];
  }
  return at;
}

/** Sets or, with `undefined`, takes away a value; what lies above is made where it is missing. */
export function setAt(whole, path, value) {
  let at = whole;
  path.slice(0, -1).forEach((step, index) => {
    if (!Object.hasOwn(at, step) || typeof at[step] !== 'object' || at[step] === null) {
      at[step] = typeof path[index + 1] === 'number' ? [] : {};
    }
    at = at[step];
  });
  const last = path.at(-1);
  if (value === undefined) delete at[last];
  else at[last] = value;
}
