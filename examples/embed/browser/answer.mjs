// The answer to a joint: what must be said still, a picture, a table, the sheet for the workshop. Everything here is made anew
// from one report, or is gone.
import { byId, el } from './dom.mjs';
import { LABELS } from './layout.mjs';
import { humane } from './schema.mjs';
import { shown, spread } from './units.mjs';

export const WORDS = { holds: 'Holds', does_not_hold: 'Does not hold', undecided: 'Undecided' };

const FIGURES = [
  ['section', 'Section', 'The joint cut along the bolt.'],
  ['checks', 'Utilisation', 'How far each check is used.'],
  ['springs', 'Joint diagram', 'Bolt and plies as two springs.'],
  ['lengths', 'Stock lengths', 'Which stock lengths fit, and why the others do not.'],
];

/** The headline begins with the word in capitals, which stands beside it already. */
export const withoutWord = headline => headline.replace(/^(HOLDS|DOES NOT HOLD|UNDECIDED)\s*/, '');

/** What is said where there is no answer: the old one goes, all of it. `wrong` lists fields of the form, `{ path, text }`. */
export function showNone(reason, wrong = [], form = undefined) {
  const box = byId('verdict');
  box.className = 'verdict none';
  byId('word').textContent = 'No answer';
  byId('why').textContent = reason;
  byId('answer').replaceChildren(el('section', {}, el('p', {}, 'There is no answer to what the form shows now.'),
    el('ul', {}, wrong.map(({ path, text }) => el('li', {}, fieldLink(path, pathName(path), form.go), ` – ${text}`)))));
  byId('made').textContent = '';
}

/** "Stack, from the head: Plies: 1: Hole". */
export const pathName = path => path.map(step => typeof step === 'number' ? step + 1 : LABELS[step] ?? humane(step)).join(': ');

const fieldLink = (path, text, go) => el('a', { href: '#form', on: { click: event => { event.preventDefault(); go(path); } } }, text);

export const section = (title, ...inside) => el('section', {}, el('h3', {}, title), inside);
export const list = (lines, tag = 'ul') => el(tag, {}, lines.map(line => el('li', {}, line)));

function placeText(place) {
  if (typeof place === 'string') return place.replaceAll('_', ' ');
  const [[kind, number]] = Object.entries(place ?? { joint: '' });
  return `${kind === 'plane' ? 'shear plane' : kind} ${number}`;
}

function steps(lines) {
  return el('ul', { class: 'steps' }, lines.map(({ line, source }) =>
    el('li', {}, el('span', { class: 'box', 'aria-hidden': 'true' }), el('div', {}, line.text, ' ', el('span', { class: 'source' }, `(${source})`)))));
}

/** Three digits, and no more reserve than there is: as the texts of the module have it. */
function roundedDown(reserve) {
  const digit = 10 ** (Math.floor(Math.log10(reserve)) - 2);
  return (Math.floor(reserve / digit + 1e-9) * digit).toPrecision(3);
}

/** Checks as a table; `mode` names one. Where they are of several load cases, each row says of which. */
export function checksTable(checks, mode, units) {
  const hasCase = checks.some(check => check.case !== undefined);
  const row = check => el('tr', { class: check.holds ? undefined : 'exceeded' },
    el('td', { class: 'number' }, `${(100 * check.utilisation).toFixed(0)} %`),
    el('td', {}, check.holds ? 'kept' : 'exceeded'),
    el('th', { scope: 'row' }, mode(check.mode)),
    el('td', {}, placeText(check.place)),
    hasCase && el('td', {}, check.case),
    el('td', { class: 'number' }, shown(check.demand, units)),
    el('td', { class: 'number' }, shown(check.resistance, units)),
    el('td', {}, check.level),
    el('td', { class: 'number' }, check.reserve === null ? '–' : roundedDown(check.reserve)),
    el('td', {}, check.method));
  const heads = [['Used', 'number'], ['', ''], ['Of', ''], ['Where', ''], hasCase && ['Load case', ''], ['Load', 'number'], ['Resistance', 'number'], ['Level', ''], ['n', 'number'], ['By', '']].filter(Boolean);
  return [
    el('p', { class: 'hint' }, 'Every load against its resistance, the most used first. n is resistance over load as they stand in the row; safety that is in an allowable or design resistance already is not in n.'),
    table('Checks, the most used first', heads.map(([head, kind]) => [head || el('span', { class: 'unseen' }, 'Kept'), kind]), checks.map(row)),
  ];
}

/** A table that scrolls in its own box. `heads` are each a text and a class. */
export function table(caption, heads, rows) {
  return el('div', { class: 'scroll', role: 'region', tabindex: '0', 'aria-label': `Table: ${caption}` }, el('table', { class: heads.length <= 4 ? 'few' : undefined },
    el('caption', { class: 'unseen' }, caption),
    el('thead', {}, el('tr', {}, heads.map(([head, kind]) => el('th', { scope: 'col', class: kind || undefined }, head)))),
    el('tbody', {}, rows)));
}

function stackTable(report, units) {
  return table('The stack, from the head', ['Layer', 'Thickness', 'Hole', 'Material'].map(head => [head, '']),
    report.layers.map(layer => el('tr', {}, el('th', { scope: 'row' }, `${layer.name}${layer.kind === layer.name ? '' : ` (${layer.kind})`}`),
      el('td', {}, spread(layer.thickness, units)), el('td', {}, shown(layer.hole, units)), el('td', {}, layer.material ?? ''))));
}

/** A picture of the module, shown as an image: nothing in it can run. */
export function figure([picture, title, caption], draw, kept) {
  const svg = draw(picture);
  if (svg === undefined) return undefined;
  const holder = kept.get(picture) ?? el('img', { decoding: 'sync' });
  kept.set(picture, holder);
  holder.alt = /<desc>([^<]*)<\/desc>/.exec(svg)?.[1].replace(/&(lt|gt|quot|apos|#39|amp);/g, (_, name) => ({ lt: '<', gt: '>', quot: '"', amp: '&' })[name] ?? "'") ?? caption;
  holder.src = `data:image/svg+xml,${encodeURIComponent(svg)}`;
  return el('figure', {}, el('h3', {}, title), el('div', { class: 'scroll', role: 'region', tabindex: '0', 'aria-label': title }, holder), el('figcaption', {}, caption));
}

/** Which pictures are drawn. What takes a box to be ticked keeps its focus when the answer is made anew. */
function picker(drawn, redraw) {
  const box = ([name, title]) => el('label', {}, el('input', {
    type: 'checkbox', id: `draw:${name}`, checked: drawn.has(name), on: { change: event => redraw(name, event.target.checked) },
  }), ` ${title}`);
  return el('fieldset', { class: 'pick screen' }, el('legend', {}, 'Pictures'), FIGURES.map(box));
}

/** What must be said still, each line with the `path` of its field, if there is one. */
export function wanted(lines, go, where) {
  return lines.length > 0 && section('Still to be said or decided', el('ul', {}, lines.map(({ text, path }) =>
    el('li', {}, path && where(path) ? fieldLink(path, text, go) : text))));
}

/** Only once all of an answer is there is any of it shown. */
export function present(word, why, parts, made) {
  byId('answer').replaceChildren(...parts.flat().filter(Boolean));
  byId('verdict').className = `verdict ${word}`;
  byId('word').textContent = WORDS[word];
  byId('why').replaceChildren(...why.filter(Boolean));
  byId('made').textContent = made;
}

/**
 * Shows a report. `kept` has the images between answers, `mode` gives the label of a mode, `draw` gives a picture or nothing,
 * `go` goes to the field of a path, `where` tells whether there is one, and `missing` are the lines for them.
 */
export function showReport(report, { kept, mode, missing, draw, drawn, redraw, units, request, go, where, working, made }) {
  // What was not compared may be worse than what was.
  const governs = report.checks[0] && `Governs${report.missing.length > 0 ? ', as far as it was compared' : ''}: ${report.checks[0].text}.`;
  const figures = FIGURES.filter(([name]) => drawn.has(name)).map(picture => figure(picture, draw, kept)).filter(Boolean);
  const isLeftOut = figures.length < FIGURES.filter(([name]) => drawn.has(name)).length;
  const unconcerned = new Map();
  for (const { mode: code, why } of report.not_concerned) unconcerned.set(why, [...unconcerned.get(why) ?? [], mode(code)]);
  const parts = [
    el('section', {}, el('h2', { class: 'title' }, report.title),
      el('p', {}, report.bolt.name, report.bolt.nut && `; ${report.bolt.nut}`, report.tightening && `; torque ${shown(report.tightening.torque, units)}`, '.')),
    wanted(missing, go, where),
    report.faults.length > 0 && section('What forbids it', list(report.faults.map(({ text }) => text))),
    report.granted.length > 0 && section('Taken for granted', list(report.granted.map(({ fact, value }) => `${humane(fact)}: ${value}`))),
    report.set_aside.length > 0 && section('Set aside by the engineer', list(report.set_aside.map(one => `${mode(one.mode)}: ${one.reason}`))),
    el('section', { class: 'pictures' }, picker(drawn, redraw), figures, isLeftOut && el('p', { class: 'source' }, 'No joint diagram: no preload is known, or not how stiff the parts are.')),
    section('Checks', report.checks.length > 0 ? checksTable(report.checks, mode, units) : el('p', {}, 'Nothing could be compared.')),
    report.notes.length > 0 && section('To know and to do', list(report.notes.map(({ text }) => text))),
    section('What it was checked for', list(report.conditions)),
    section('Stack, from the head', stackTable(report, units)),
    report.assembly.length > 0 && section('For the workshop', steps(report.assembly)),
    report.inspection.length > 0 && section('For the inspector', steps(report.inspection)),
    section('In order, and not concerned', list([
      report.in_order.length > 0 && `In order: ${report.in_order.map(mode).join(', ')}`,
      ...[...unconcerned].map(([why, some]) => `Not concerned (${why}): ${some.join(', ')}`)].filter(Boolean))),
    section('Cautions', list(report.cautions.map(({ text }) => text))),
    section('Where the numbers come from', list(report.sources)),
    el('section', { class: 'paper' }, el('h3', {}, 'What was asked'), el('pre', {}, request)),
    working(),
  ];
  present(report.word, [withoutWord(report.headline), governs && el('span', { class: 'governs' }, governs)], parts, made);
}
