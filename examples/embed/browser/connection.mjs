// The answer to a connection: the plan in a load case, the load cases, the bolts, and the checks of the worst of them.
import { WORDS, checksTable, figure, list, present, section, table, wanted, withoutWord } from './answer.mjs';
import { el } from './dom.mjs';
import { shown } from './units.mjs';

const percent = used => used === null ? '–' : `${(100 * used).toFixed(0)} %`;
const PLAN = ['plan', 'Plan', 'The bolts, what comes to each, and the loads where they act.'];

/** A check of the verdict as the table wants it, with the case if the row is to say it: it is kept up to a utilisation of one. */
const tabled = (check, name) => ({
  ...check, case: name, holds: check.utilisation <= 1, reserve: check.proportional && check.utilisation > 0 ? 1 / check.utilisation : null,
});

/** A missing fact of the answer as one of a report: with its code. */
export const missingOf = answer => answer.missing.map(({ need, ...one }) => ({ ...one, code: typeof need === 'string' ? need : Object.keys(need)[0] }));

/**
 * A joint as the template of a connection: one bolt, without what the connection says of all of them, which is where they
 * stand, what comes to them and how often, and how large the plates are. The module refuses what is said twice.
 */
export function templateOf(joint) {
  const plies = joint.stack?.plies;
  const bare = ply => {
    const { pitch, gauge, width, end_distance, edge_distance, ...rest } = ply ?? {};
    return rest;
  };
  return {
    ...joint, pattern: 'single', load: { ...joint.load, across: '0 N', along: '0 N', repeats: 'never' },
    ...Array.isArray(plies) && { stack: { ...joint.stack, plies: plies.map(bare) } },
  };
}

function governs({ governing, missing, verdict }) {
  if (!governing) return undefined;
  const what = governing.bolt === null ? 'all bolts together' : `bolt ${governing.bolt}`;
  const where = `${what} in “${governing.case}”`;
  if (!governing.text) return `Governs: ${where}, of which nothing was compared.`;
  const isFault = verdict.word === 'does_not_hold' && governing.holds;
  return `${isFault ? 'Most used of what was compared' : `Governs${missing.length > 0 ? ', as far as it was compared' : ''}`}: ${where}, ${governing.text}.`;
}

/** A row whose word is that of the module. */
const row = (word, ...cells) => el('tr', { class: word === 'does_not_hold' ? 'exceeded' : undefined }, cells);
const number = text => el('td', { class: 'number' }, text);
const text = (...inside) => el('td', {}, inside);
const head = inside => el('th', { scope: 'row' }, inside);

function casesTable({ cases }) {
  return table('Load cases', [['Load case', ''], ['Word', ''], ['Used', 'number'], ['Worst bolt', 'number']],
    cases.map(one => row(one.word, head(one.name), text(WORDS[one.word]), number(percent(one.utilisation)), number(one.bolt))));
}

function boltsTable({ bolts, cases }, units) {
  const heads = [['Bolt', 'number'], ['x', 'number'], ['y', 'number'], ['Word', ''], ['Used', 'number'], ['Across', 'number'], ['Along', 'number'], ['In load case', '']];
  return table('Bolts, each by the worst that comes to it', heads, bolts.map(bolt => row(bolt.word,
    el('th', { scope: 'row', class: 'number' }, bolt.number), number(shown(bolt.at.x, units)), number(shown(bolt.at.y, units)), text(WORDS[bolt.word]),
    number(percent(bolt.utilisation)), number(shown(bolt.load.across, units)), number(shown(bolt.load.along, units)), text(cases[bolt.case]?.name ?? ''))));
}

/** Which load case is drawn. The select keeps its focus when the answer is made anew. */
function casePicker({ cases }, shownCase, showCase) {
  const option = name => el('option', { value: `case ${name}`, selected: name === shownCase }, name);
  return el('div', { class: 'pick screen' }, el('label', { for: 'draw:case' }, 'Load case drawn'),
    el('select', { id: 'draw:case', on: { change: event => showCase(event.target.value.startsWith('case ') ? event.target.value.slice(5) : undefined) } },
      el('option', { value: '' }, 'the one that governs'), cases.map(({ name }) => option(name))));
}

/** Shows the answer to a connection; what it is given is as for `showReport`, and the case that is drawn. */
export function showConnection(answer, { kept, mode, missing, draw, shownCase, showCase, units, request, go, where, made }) {
  const { verdict } = answer;
  // Where all of them govern together, the worst of that case.
  const ofCase = verdict.cases.find(({ name }) => name === answer.governing?.case)?.bolt;
  const worst = verdict.bolts.find(bolt => bolt.number === (answer.governing?.bolt ?? ofCase));
  const nameOf = at => verdict.cases[at]?.name ?? '';
  const line = governs(answer);
  const parts = [
    el('section', {}, el('h2', { class: 'title' }, verdict.title)),
    wanted(missing, go, where),
    answer.faults.length > 0 && section('What forbids it', list(answer.faults)),
    verdict.set_aside.length > 0 && section('Set aside by the engineer', list(verdict.set_aside.map(one => `${mode(one.mode)}: ${one.reason}`))),
    el('section', { class: 'pictures plan' }, casePicker(verdict, shownCase, showCase), figure(PLAN, draw, kept)),
    section('Load cases', casesTable(verdict)),
    section('Bolts', el('p', { class: 'hint' }, 'Each by the worst that comes to it.'), boltsTable(verdict, units)),
    verdict.checks.length > 0 && section('All bolts together', checksTable(verdict.checks.map(own => tabled(own.check, nameOf(own.case))), mode, units)),
    worst && section(`Bolt ${worst.number} by itself, in “${nameOf(worst.case)}”`, worst.checks.length > 0 ? checksTable(worst.checks.map(check => tabled(check)), mode, units) : el('p', {}, 'Nothing could be compared.')),
    section('Cautions', list(answer.cautions)),
    section('How the loads came to the bolts', list(verdict.methods)),
    el('section', { class: 'paper' }, el('h3', {}, 'What was asked'), el('pre', { class: 'deep' }, request)),
    el('details', { class: 'group screen' }, el('summary', {}, 'The report as text: what to know and to do, what is in order, what is not concerned'), el('pre', { tabindex: '0' }, answer.text)),
    el('section', { class: 'paper' }, el('h3', {}, 'The report as text'), el('pre', { class: 'whole' }, answer.text)),
  ];
  present(verdict.word, [withoutWord(answer.headline), line && el('span', { class: 'governs' }, line)], parts, made);
}
