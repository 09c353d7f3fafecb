// The module in node: the kept answers, a refusal, a sweep, and how long it takes.
//     node callers/check.mjs MODULE.wasm
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { open, Refusal } from './shankline.mjs';

const data = name => readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8');
const bytes = readFileSync(process.argv[2]);
const begun = performance.now();
const shankline = await open(bytes);
console.log(`${(bytes.length / 1000).toFixed(0)} kB, ${(gzipSync(bytes, { level: 9 }).length / 1000).toFixed(0)} kB compressed, ` +
  `opened in ${(performance.now() - begun).toFixed(0)} ms`);

/** The least time of one call over several runs, in milliseconds: others work on this machine too. */
function timed(runs, calls, call) {
  let least = Infinity;
  for (let run = 0; run < runs; run++) {
    const from = performance.now();
    for (let index = 0; index < calls; index++) call();
    least = Math.min(least, (performance.now() - from) / calls);
  }
  return least;
}

for (const name of ['davit_socket', 'seesaw_pivot', 'winch_foot']) {
  const joint = JSON.parse(data(`${name}.json`));
  assert.deepEqual(shankline.ask('check', { joint, units: 'si' }), JSON.parse(data(`${name}_report.json`)));
  const working = shankline.ask('explain', { joint, show: 'working', format: 'markdown', units: 'si' });
  assert.equal(working, data(`${name}_working.md`));
  assert.ok(shankline.ask('draw', { joint, picture: 'section', format: 'svg' }).startsWith('<svg '));
  const request = JSON.stringify({ joint });
  console.log(`${name}: verdict ${timed(7, 200, () => shankline.ask('verdict', { joint })).toFixed(3)} ms, check ${timed(7, 200, () => shankline.ask('check', { joint })).toFixed(3)} ms, ` +
    `of which the module ${timed(7, 200, () => shankline.askText('check', request)).toFixed(3)} ms, ` +
    `section ${timed(5, 50, () => shankline.ask('draw', { joint, picture: 'section', format: 'svg' })).toFixed(3)} ms`);
}
const design = JSON.parse(data('walkway_hanger_design.json'));
assert.deepEqual(shankline.ask('design', { ...design, units: 'si' }), JSON.parse(data('walkway_hanger_designs.json')));
console.log(`design ${timed(5, 10, () => shankline.ask('design', design)).toFixed(2)} ms`);

const joint = JSON.parse(data('davit_socket.json'));
const wrong = structuredClone(joint);
wrong.stack.plies[0].thickness = '10 kN';
assert.throws(() => shankline.ask('check', { joint: wrong }), problem => {
  assert.ok(problem instanceof Refusal);
  assert.equal(problem.place.field, 'joint.stack.plies[0]');
  return problem.message.includes('10 kN');
});
assert.throws(() => shankline.ask('chek', { joint }), problem => problem.code === 'question');

const count = 1_000_000;
const across = Float64Array.from({ length: count }, (_, index) => index / 10);
const along = new Float64Array(count);
const swept = shankline.sweep(joint, across, along, 'steady');
assert.equal(swept.words[0], swept.words[100]);
assert.ok(swept.words.at(-1) !== 1 && swept.utilisations.at(-1) > swept.utilisations[0]);
console.log(`a million load cases ${timed(3, 1, () => shankline.sweep(joint, across, along, 'steady')).toFixed(0)} ms`);
along[7] = NaN;
assert.throws(() => shankline.sweep(joint, across, along, 'steady'), problem => problem.place.case === 7);
console.log('all is as kept');
