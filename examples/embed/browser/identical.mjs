// The module as it is in the page, and the library itself: the same bytes to every kept request, and to spoiled ones.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const text = name => readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8');

function requests() {
  // Not `version` and no question that is none: both list the questions, and the module of the page has fewer.
  const asked = [['catalogue', '{}'], ['check', ''], ['check', '[]']];
  for (const thread of ['M12', 'M16x1.5', '3/4-10 UNC', 'M17.3']) asked.push(['catalogue', JSON.stringify({ thread })]);
  const joints = ['davit_socket', 'seesaw_pivot', 'winch_foot'].map(name => text(`${name}.json`));
  joints.push(JSON.stringify(JSON.parse(text('walkway_hanger_design.json')).joint));
  for (const joint of joints) for (const units of ['si', 'us_customary']) {
    const about = (question, rest = '') => asked.push([question, `{"joint":${joint},"units":"${units}"${rest}}`]);
    about('check');
    about('lengths');
    for (const picture of ['section', 'checks', 'lengths', 'springs']) about('draw', `,"picture":"${picture}","format":"svg"`);
    about('draw', ',"picture":"section","format":"dxf"');
    for (const format of ['text', 'markdown', 'latex']) about('explain', `,"show":"working","format":"${format}"`);
    for (const format of ['text', 'markdown']) about('explain', `,"show":"report","format":"${format}"`);
    about('explain', ',"show":"sheet","format":"text"');
    asked.push(['assembly', `{"joint":${joint}}`]);
  }
  asked.push(['check', `{"joint":${joints[0]},"group":${text('davit_group.json')}}`]);
  asked.push(['design', text('walkway_hanger_design.json')]);
  // The first has no load case: a refusal.
  for (const connection of [text('mezzanine_bracket.json'), text('../embed/callers/bracket.json')]) {
    asked.push(['check_connection', `{"connection":${connection}}`], ['draw_connection', `{"connection":${connection},"format":"svg"}`], ['draw_connection', `{"connection":${connection},"format":"dxf"}`]);
  }
  // Each line of a joint left out, and each of its numbers changed: refusals and words of every kind.
  for (const joint of joints.slice(0, 3)) {
    const lines = joint.split('\n');
    lines.forEach((line, at) => asked.push(['check', `{"joint":${[...lines.slice(0, at), ...lines.slice(at + 1)].join('\n')}}`]));
    for (const factor of [0, -1, 3, 1e6]) joint.replaceAll(/\d+(\.\d+)?/g, (number, _, at) => {
      asked.push(['check', `{"joint":${joint.slice(0, at)}${number * factor}${joint.slice(at + number.length)}}`]);
      return number;
    });
  }
  return asked;
}

/** Opens the module of the page a second time, beside the page: `window.door`. */
export async function openDoor(page) {
  const door = readFileSync(new URL('../callers/shankline.mjs', import.meta.url), 'utf8').replaceAll(/^export /gm, '');
  await page.value(`(async () => { ${door}
    const packed = Uint8Array.from(atob(document.getElementById('module').textContent), letter => letter.charCodeAt(0));
    window.door = await open(await new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer());
  })()`);
}

/** The number of answers that are the same, their size, and the least time of a check in milliseconds. */
export async function identical(page, library) {
  const asked = requests();
  const native = execFileSync('python3', [fileURLToPath(new URL('native.py', import.meta.url)), library],
    { input: asked.map(one => `${JSON.stringify(one)}\n`).join(''), encoding: 'utf8', maxBuffer: 1 << 30 }).trim().split('\n').map(line => JSON.parse(line));
  await openDoor(page);
  await page.value(`window.answered = asked => asked.map(([question, request]) => {
    try { return [0, window.door.askText(question, request)]; } catch (problem) { return [1, problem.document]; } })`);
  let bytes = 0;
  for (let from = 0; from < asked.length; from += 50) {
    const some = asked.slice(from, from + 50);
    const found = await page.value(`answered(${JSON.stringify(some)})`);
    found.forEach(([status, answer], at) => {
      const [expected, wanted] = native[from + at];
      const what = some[at].join(' ').slice(0, 300);
      assert.equal(status, expected, what);
      // The door for JavaScript has read the document of a refusal already.
      if (status === 1) assert.deepEqual(answer, JSON.parse(wanted), what);
      else assert.ok(answer === wanted, `another answer to ${what}`);
      bytes += wanted.length;
    });
  }
  const request = JSON.stringify({ joint: JSON.parse(text('davit_socket.json')) });
  const check = await page.value(`(() => { let least = Infinity; for (let run = 0; run < 40; run++) { const from = performance.now();
    for (let call = 0; call < 20; call++) window.door.askText('check', ${JSON.stringify(request)}); least = Math.min(least, (performance.now() - from) / 20); } return least; })()`);
  return { count: asked.length, bytes, check };
}
