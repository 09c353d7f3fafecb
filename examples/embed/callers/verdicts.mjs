// The module with the fewest questions in node: the same verdicts and sweeps as the whole one, byte for byte.
//     node callers/verdicts.mjs SMALL.wasm WHOLE.wasm
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { open } from './shankline.mjs';

const [small, whole] = process.argv.slice(2).map(name => readFileSync(name));
console.log(`only verdicts, sweeps and the catalogue: ${(small.length / 1000).toFixed(0)} kB, ${(gzipSync(small, { level: 9 }).length / 1000).toFixed(0)} kB compressed`);
const doors = [await open(small), await open(whole)];
for (const name of ['davit_socket', 'seesaw_pivot', 'winch_foot']) {
  const joint = JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url)));
  const [own, other] = doors.map(door => door.askText('verdict', JSON.stringify({ joint })));
  assert.equal(own, other);
  const loads = Float64Array.from({ length: 100 }, (_, index) => 300 * index);
  const [swept, wanted] = doors.map(door => door.sweep(joint, loads, loads, 'steady'));
  assert.deepEqual(swept, wanted);
  assert.ok(new Set(swept.words).size > 1);
}
assert.deepEqual(doors[0].ask('version').questions, ['version', 'verdict', 'catalogue']);
assert.throws(() => doors[0].ask('check', {}), problem => problem.code === 'question');
