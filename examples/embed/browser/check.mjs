// The page in a real browser, as a person uses it.
//     node check.mjs PAGE.html LIBRARY [PICTURES]     a folder for screenshots and the sheet, to be looked at
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { startBrowser } from './chrome.mjs';
import { identical, openDoor } from './identical.mjs';
import { reachable } from './reachable.mjs';

const [file, library, pictures] = process.argv.slice(2).map(given => resolve(given));
const address = pathToFileURL(file).href;
const data = name => JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url)));
const scratch = mkdtempSync(join(tmpdir(), 'sheet-'));
if (pictures) mkdirSync(pictures, { recursive: true });
const keep = (name, bytes) => { if (pictures) writeFileSync(join(pictures, name), bytes); };

const browser = await startBrowser();
const page = await browser.page();
const STARTED = '!document.getElementById("why").textContent.includes("has not started")';
async function fresh(hash = '') {
  await page.go(address + hash);
  await page.until(STARTED, 'the page has started');
}
const word = () => page.text('word');
const why = () => page.text('why');
const note = id => page.value(`document.getElementById(${JSON.stringify(`${id}:note`)}).innerText`);
const link = () => page.value('document.getElementById("link").getAttribute("href")');
const request = () => page.value('document.getElementById("text").value');
const packed = (whole, units = 'si', kind = 'joint') => `#units=${units}&${kind}=${Buffer.from(typeof whole === 'string' ? whole : JSON.stringify(whole)).toString('base64url')}`;
const bracket = () => JSON.parse(readFileSync(new URL('../callers/bracket.json', import.meta.url)));
const packedBracket = (change = () => {}) => {
  const whole = bracket();
  change(whole);
  return packed(whole, 'si', 'connection');
};
/** The plan that is shown, as its SVG. */
const plan = () => page.value('decodeURIComponent(document.querySelector("#answer img").src)');

function textOf(pdf) {
  const path = join(scratch, 'sheet.pdf');
  writeFileSync(path, pdf);
  return execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });
}

/** Nothing on the screen, on paper or in the link may say that this joint holds. */
async function isSilent(what, { inText = '' } = {}) {
  assert.equal(await word(), 'No answer', what);
  const seen = await page.value('document.getElementById("verdict").innerText + document.getElementById("answer").innerText + document.title');
  assert.doesNotMatch(seen.replace(/does the joint hold\?/gi, ''), /\bholds?\b/i, what);
  assert.equal(await page.value('document.querySelectorAll("#answer img, #answer table").length'), 0, what);
  assert.equal(await page.value('document.getElementById("verdict").className'), 'verdict none', what);
  const sheet = textOf(await page.pdf());
  assert.match(sheet, /No answer/, what);
  assert.doesNotMatch(sheet.replace(/Does the joint hold\?/, '').replace(inText, ''), /\bholds\b/i, what);
}

const tests = {
  async 'a joint is typed, and gets its word'() {
    await fresh();
    assert.equal(await word(), 'Holds');
    assert.match(await page.text('caution'), /licensed engineer/);
    await page.choose('demo', 'empty');
    await page.click('load');
    await isSilent('an empty form');
    const { fill, choose, click } = page;
    await fill('f:title', 'Bracket of a hay rack (invented)');
    await fill('f:bolt.thread', 'M12');
    await choose('f:bolt.product', 'iso_4014');
    await choose('f:bolt.grade', 'iso_898_1_8_8');
    await choose('f:bolt.finish', 'zinc_plated');
    await choose('f:bolt.finish.zinc_plated.baked', 'no');
    await choose('f:nut:is', 'is');
    await choose('f:nut.style', 'iso_4032');
    await choose('f:nut.grade', 'iso_898_2_8');
    await choose('f:nut.finish', 'zinc_plated');
    await choose('f:nut.finish.zinc_plated.baked', 'no');
    for (const [at, thickness] of [[0, '12 +/- 0.3 mm'], [1, '15 +/- 0.3 mm']]) {
      await click('f:stack.plies:add');
      const ply = `f:stack.plies.${at}`;
      assert.equal(await page.value('document.activeElement.id'), `${ply}.name`);
      await fill(`${ply}.name`, at ? 'post' : 'bracket');
      await fill(`${ply}.thickness`, thickness);
      await choose(`${ply}.material`, 'astm_a36_steel');
      await fill(`${ply}.hole`, '13.5 mm');
      for (const size of ['end_distance', 'edge_distance']) await fill(`${ply}.${size}`, '35 mm');
      await fill(`${ply}.width`, '70 mm');
    }
    await click('f:stack.washers_under_head:add');
    await choose('f:stack.washers_under_head.0.style', 'iso_7089');
    await choose('f:stack.washers_under_nut:is', 'is');
    await fill('f:stack.washers_under_nut.count', '1');
    await choose('f:stack.washers_under_nut.style', 'iso_7089');
    await click('f:stack.shear_planes:add');
    await fill('f:stack.shear_planes.0', '1');
    await choose('f:pattern', 'single');
    await fill('f:load.across', '3 kN');
    await fill('f:load.along', '2 kN');
    await choose('f:load.repeats', 'never');
    await fill('f:load.shock_factor', '1.25');
    await choose('f:load.prying', 'none');
    await fill('f:environment.coldest', '-10 C');
    await fill('f:environment.hottest', '40 C');
    await choose('f:environment.exposure', 'dry');
    for (const fact of ['vibration', 'rotates', 'dangerous_if_lost']) await choose(`f:environment.${fact}`, 'no');
    await fill('f:environment.refits', '0');
    await choose('f:rules', 'fabrication');
    await isSilent('everything but the methods');
    await choose('f:methods', 'machine_design');
    assert.equal(await word(), 'Undecided');
    assert.match(await why(), /say the tightening/);
    assert.match(await note('f:tightening'), /Wanted for: .*bolt tension/);
    await page.value('[...document.querySelectorAll("#answer a")].find(one => /tightening/.test(one.textContent)).click()');
    assert.equal(await page.value('document.activeElement.id'), 'f:tightening');
    await choose('f:tightening', 'torque');
    for (const [key, value] of [['min', '0.16'], ['nominal', '0.18'], ['max', '0.2']]) await fill(`f:tightening.torque.nut_factor.${key}`, value);
    await choose('f:tightening.torque.target', 'reusable');
    await fill('f:tightening.torque.relaxation', '0.1');
    assert.equal(await word(), 'Holds', await why());
    await fill('f:load.along', '200 kN');
    assert.equal(await word(), 'Does not hold');
    assert.ok(await page.value('document.querySelector("tr.exceeded").innerText.includes("exceeded")'));
    assert.deepEqual(page.complaints, []);
  },

  async 'units change what is shown, and nothing that is asked'() {
    await fresh();
    const [before, text] = [await request(), await page.text('answer')];
    assert.match(text, /\d kN/);
    const inch = await page.value(`(() => { const input = document.querySelector('[name=units][value=us_customary]'); input.click(); return document.getElementById('answer').innerText; })()`);
    assert.equal(await request(), before);
    assert.match(inch, /\d lbf/);
    assert.doesNotMatch(inch.replace(/\(invented.*|M16 x 65 mm|hole of [\d.]+ mm|Sizes.*/g, ''), /\d (kN|MPa)\b/);
    assert.match(await page.value('decodeURIComponent(document.querySelector("#answer img").src)'), /Sizes in inches/);
    assert.match(await link(), /^#units=us_customary&/);
  },

  async 'what is wrong is said beside its field, and the word is gone'() {
    for (const [id, text, told] of [
      ['f:load.across', '4', /has no unit/], ['f:load.across', '-4 kN', /not negative/], ['f:load.across', '', /^needed$/],
      ['f:load.shock_factor', '1.', undefined], ['f:load.shock_factor', '1,5', /not a number/], ['f:load.shock_factor', '0.5', /from 1 to 100/],
      ['f:bolt.thread', 'M17.3', /nearest sizes/], ['f:environment.refits', '1.5', /whole number/], ['f:stack.plies.0.thickness', '12 kN', /not understood/],
      ['f:environment.coldest', '90 C', /temperature/], ['f:bolt.length', '5 mm', /nominal length/], ['f:stack.shear_planes.0', '7', /shear plane/],
    ]) {
      await fresh();
      await page.fill(id, text);
      if (!told) { assert.equal(await word(), 'Holds'); continue; }
      assert.equal(await word(), 'No answer', `${id} ${text}`);
      assert.match(await note(id), told, `${id} ${text}`);
      assert.equal(await page.value(`document.getElementById(${JSON.stringify(id)}).getAttribute('aria-invalid')`), 'true', id);
    }
    await isSilent('a shear plane that is none');
    await fresh();
    await page.fill('f:load.across', '4');
    keep('wrong.png', await page.picture());
    await isSilent('a load without a unit');
    await page.type(' kN');
    assert.equal(await word(), 'Holds');
    assert.equal(await note('f:load.across'), '');
    // Where nothing was changed before, the words of the refusal lead to the field.
    const joint = data('davit_socket');
    joint.load.across = '-4 kN';
    await fresh(packed(joint));
    assert.match(await note('f:load.across'), /not negative/);
    await fresh();
    // A list of what is wrong, not one thing after the other.
    await page.fill('f:load.across', 'x');
    await page.fill('f:load.along', 'y');
    await page.fill('f:load.shock_factor', 'z');
    for (const id of ['across', 'along', 'shock_factor']) assert.notEqual(await note(`f:load.${id}`), '', id);
    await isSilent('three wrong fields');
  },

  async 'a link holds exactly what is shown'() {
    await fresh();
    await page.fill('f:load.across', '4.5 kN');
    await page.until('decodeURIComponent(location.hash) === decodeURIComponent(document.getElementById("link").getAttribute("href"))', 'the address has the joint');
    const [hash, shown, text] = [await link(), await page.text('answer'), await request()];
    await fresh(hash);
    assert.equal(await page.text('answer'), shown);
    assert.deepEqual(JSON.parse(await request()), JSON.parse(text));
    assert.equal(await page.value('document.getElementById("f:load.across").value'), '4.5 kN');
    await page.fill('f:load.across', '4.5 k');
    const wrong = await link();
    await fresh(wrong);
    await isSilent('a link to a load half typed');
    assert.match(await note('f:load.across'), /unit|kN/);
    // Another link in the same window.
    await page.value(`location.hash = ${JSON.stringify(hash)}`);
    await page.until('document.getElementById("word").textContent === "Holds"');
    await page.value('location.hash = "#joint=%%%"');
    await page.until('document.getElementById("word").textContent === "No answer"');
    await isSilent('a link to nothing', { inText: '%%%' });
    for (const bad of ['#joint=', '#joint=AAAA', '#joint=_____', packed('[]'), packed('null'), packed('7'), packed('{"title": "x"'), packed({}),
      packed('{"__proto__": {"title": "x"}, "constructor": 1}'), packed({ ...data('davit_socket'), acros: 1 }), '#units=<b>&joint=e30', packed('1e999')]) {
      await fresh(bad);
      assert.equal(await word(), 'No answer', bad);
    }
    // Another demonstration, and back.
    await fresh(hash);
    await page.choose('demo', '2');
    await page.click('load');
    assert.match(await request(), /Winch foot/);
    await page.until('decodeURIComponent(location.hash) === decodeURIComponent(document.getElementById("link").getAttribute("href"))');
    await page.value('history.back()');
    await page.until('document.getElementById("text").value.includes("Davit socket")');
    assert.equal(await page.text('answer'), shown);
    const joint = data('davit_socket');
    for (const [name, text] of [
      ['a name twice', JSON.stringify(joint).replace('"load":{', '"load":{"across":"1 N",')],
      ['a number too large', JSON.stringify(joint).replace('"shock_factor":1.5', '"shock_factor":1e999')],
    ]) {
      await fresh(packed(text));
      assert.equal(await word(), 'No answer', name);
    }
    // The number that JSON cannot hold is not lost by the next edit.
    await page.fill('f:title', 'x');
    await isSilent('a number too large, and an edit elsewhere');
  },

  async 'the text and the form are in step'() {
    await fresh();
    await page.value('document.getElementById("asText").open = true');
    const text = await request();
    const put = given => page.value(`(() => { const box = document.getElementById('text'); box.focus(); box.value = ${JSON.stringify(given)}; box.dispatchEvent(new Event('input', { bubbles: true })); })()`);
    await put(text.replace('"4 kN"', '"3.25 kN"'));
    assert.equal(await page.value('document.getElementById("f:load.across").value'), '3.25 kN');
    assert.equal(await word(), 'Holds');
    await put(text.slice(0, -5));
    await isSilent('a text cut off');
    assert.ok(await page.value('document.getElementById("fields").inert && !document.getElementById("broken").hidden'));
    await page.click('discard');
    assert.equal(await page.value('document.getElementById("f:load.across").value'), '3.25 kN');
    assert.equal(await word(), 'Holds');
    await put(text.replace('"load"', '"lod"'));
    await isSilent('a name misspelt');
    assert.match(await note('f:load'), /needed/);
    await page.fill('f:title', 'y');
    assert.equal(JSON.parse(await request()).lod.across, '4 kN');
    await isSilent('the misspelt name is still there');
  },

  async 'a text that is not JSON stays without answer, whatever else is touched'() {
    await fresh();
    await page.value(`(() => { const box = document.getElementById('text'); box.value = box.value.slice(0, -9); box.dispatchEvent(new Event('input')); })()`);
    await page.value('document.querySelector("[name=units][value=us_customary]").click()');
    await isSilent('other units');
    await page.value('document.getElementById("link").click()');
    await isSilent('the link');
    const cut = await request();
    await page.click('load');
    assert.equal(await word(), 'Holds');
    await page.value('history.back()');
    await page.until(`document.getElementById('text').value === ${JSON.stringify(cut)}`);
    await isSilent('back to it');
  },

  async 'whatever stands in the text, the word is that of the module or none'() {
    for (const [kind, question, hash] of [['joint', 'check', ''], ['connection', 'check_connection', packedBracket()]]) {
      await fresh(hash);
      await openDoor(page);
      const found = await page.value(`(() => {
        const whole = JSON.parse(document.getElementById('text').value), box = document.getElementById('text'), odd = [null, 7, 'x', [], {}, true, [[]], { a: [null] }];
        const paths = []; const walk = (at, path) => { if (path.length) paths.push(path); if (at && typeof at === 'object') for (const key of Object.keys(at)) walk(at[key], [...path, key]); };
        walk(whole, []);
        const wrong = [], words = {}; let count = 0;
        const words_of = { holds: 'Holds', does_not_hold: 'Does not hold', undecided: 'Undecided' };
        paths.forEach((path, turn) => { for (const value of [odd[turn % 8], odd[(turn + 3) % 8], odd[(turn + 5) % 8]]) {
          const joint = structuredClone(whole); let at = joint;
          for (const step of path.slice(0, -1)) at = at[step];
          at[path.at(-1)] = value;
          // The answer before this one says that it holds: it must not stay.
          box.value = JSON.stringify(whole); box.dispatchEvent(new Event('input'));
          if (document.getElementById('word').textContent !== 'Holds') wrong.push('the joint itself');
          box.value = JSON.stringify(joint); box.dispatchEvent(new Event('input'));
          let expected = 'No answer';
          try { const answer = JSON.parse(window.door.askText('${question}', '{"${kind}":' + box.value + '}')); expected = words_of[answer.word ?? answer.verdict.word]; } catch { }
          const shown = document.getElementById('word').textContent;
          words[shown] = (words[shown] ?? 0) + 1; count++;
          if (shown !== expected || (shown === 'No answer') !== (document.querySelectorAll('#answer table').length === 0)) wrong.push(path.join('.') + ' ' + JSON.stringify(value) + ': ' + shown + ', not ' + expected);
          if (document.getElementById('why').textContent.includes('fault of')) wrong.push(path.join('.') + ' ' + JSON.stringify(value) + ': ' + document.getElementById('why').textContent);
        } });
        return { wrong, words, count }; })()`);
      console.log(`   ${found.count} odd texts of a ${kind}: ${JSON.stringify(found.words)}`);
      assert.deepEqual(found.wrong, []);
    }
    assert.deepEqual(page.complaints, []);
  },

  async 'plies are added, moved and taken away, and the focus stays'() {
    await fresh();
    const names = () => page.value('[...document.querySelectorAll("input")].filter(one => /^f:stack\\.plies\\.\\d+\\.name$/.test(one.id)).map(one => one.value)');
    const focus = () => page.value('document.activeElement.id');
    assert.deepEqual(await names(), ['socket flange', 'deck doubler']);
    await page.value('document.getElementById("f:stack.plies.1:up").focus()');
    await page.press('Enter');
    assert.deepEqual(await names(), ['deck doubler', 'socket flange']);
    assert.equal(await focus(), 'f:stack.plies.0:down');
    await page.press('Enter');
    assert.deepEqual(JSON.parse(await request()).stack.plies.map(ply => ply.name), ['socket flange', 'deck doubler']);
    await page.click('f:stack.plies:add');
    assert.equal(await focus(), 'f:stack.plies.2.name');
    await isSilent('a ply without a thickness');
    await page.click('f:stack.plies.2:remove');
    assert.equal(await word(), 'Holds');
    assert.equal(await focus(), 'f:stack.plies:add');
  },

  async 'a connection is typed, and gets its word'() {
    const { fill, choose, click } = page;
    await fresh();
    // The joint that the form shows becomes one of the bolts.
    await click('kind:connection');
    await isSilent('a connection of which only the bolt is known');
    assert.equal(await page.value('document.getElementById("f:joint.bolt.thread").value'), 'M16');
    await choose('f:joint.bolt.product', 'iso_4017');
    await choose('f:joint.bolt.product', 'iso_4014');
    await fill('f:title', 'Foot of a hay crane (invented)');
    for (const [at, x, y] of [[0, '-40 mm', '-40 mm'], [1, '40 mm', '-40 mm'], [2, '-40 mm', '40 mm'], [3, '40 mm', '40 mm']]) {
      await click('f:bolts:add');
      assert.equal(await page.value('document.activeElement.id'), `f:bolts.${at}.x`);
      await fill(`f:bolts.${at}.x`, x);
      await fill(`f:bolts.${at}.y`, y);
    }
    const sizes = { force_x: '3 kN', force_y: '-2 kN', force_z: '0 kN', x: '0 mm', y: '0 mm', z: '0 mm', moment_x: '0 N m', moment_y: '0 N m', moment_z: '0 N m' };
    for (const [at, name] of [[0, 'pull'], [1, 'push']]) {
      await click('f:cases:add');
      await fill(`f:cases.${at}.name`, name);
      for (const [key, size] of Object.entries(sizes)) await fill(`f:cases.${at}.${key}`, at && key === 'force_x' ? '-9 kN' : size);
    }
    // That nothing is combined and nothing alternates is said, and not taken for granted.
    await isSilent('loads of which nobody says whether they alternate');
    assert.match(await note('f:combinations'), /^needed$/);
    await click('f:combinations:none');
    assert.equal(await page.value('document.activeElement.id'), 'f:combinations:add');
    await isSilent('combinations, and still no alternations');
    assert.match(await note('f:alternations'), /^needed$/);
    await click('f:alternations:none');
    assert.equal(await word(), 'Undecided', await why());
    assert.match(await page.text('answer'), /Still to be said/);
    // What a plate must still say leads to where plates are described.
    await page.value('[...document.querySelectorAll("#answer section:nth-of-type(2) a")].find(one => /outline/.test(one.textContent)).click()');
    assert.equal(await page.value('document.activeElement.id'), 'f:plates');
    for (const [at, [ply, y]] of [['socket flange', 120], ['deck doubler', 150]].entries()) {
      await click('f:plates:add');
      await fill(`f:plates.${at}.ply`, ply);
      for (const [corner, [right, up]] of [[-1, -1], [1, -1], [1, 1], [-1, 1]].entries()) {
        await click(`f:plates.${at}.outline:add`);
        await fill(`f:plates.${at}.outline.${corner}.x`, `${100 * right} mm`);
        await fill(`f:plates.${at}.outline.${corner}.y`, `${y * up} mm`);
      }
      await choose(`f:plates.${at}.held`, at ? 'bottom' : 'top');
    }
    await fill('f:loaded', 'socket flange');
    assert.notEqual(await word(), 'No answer', await why());
    assert.match(await why(), /^\(4 bolts, 2 cases\)/);
    assert.match(await page.text('answer'), /push\s+Undecided/);
    assert.match(await page.text('answer'), /Bolt \d by itself/);
    await fill('f:cases.1.force_x', '-900 kN');
    assert.equal(await word(), 'Does not hold');
    assert.match(await why(), /“push”/);
    assert.match(await plan(), /Load case drawn: [^<]*push/);
    assert.deepEqual(page.complaints, []);
  },

  async 'the answer to a connection is that of the module, and goes before another is asked for'() {
    await fresh(packedBracket());
    assert.equal(await word(), 'Holds', await why());
    assert.match(await why(), /Governs: bolt 12 in “crowd and hoist”/);
    assert.equal(await page.value('document.getElementById("kind:connection").checked'), true);
    // Another case is drawn, and the select has the focus still.
    assert.match(await plan(), /Load case drawn: [^<]*crowd and hoist/);
    await page.choose('draw:case', 'case crowd alone');
    assert.match(await plan(), /Load case drawn: [^<]*crowd alone/);
    assert.equal(await page.value('document.activeElement.id'), 'draw:case');
    // Renamed away, the one that governs is drawn again.
    await page.fill('f:combinations.0.name', 'crowd by itself');
    assert.match(await plan(), /Load case drawn: [^<]*crowd and hoist/);
    // Units of what is shown.
    await page.value('document.querySelector("[name=units][value=us_customary]").click()');
    assert.match(await page.text('answer'), /\d lbf/);
    assert.doesNotMatch(await page.text('answer'), /\d kN\b/);
    assert.match(await plan(), /Sizes in inches/);
    assert.match(await link(), /^#units=us_customary&connection=/);
    // What is wrong stands beside its field.
    for (const [id, text, told] of [
      ['f:cases.0.force_y', '-20', /has no unit/], ['f:cases.1.force_x', '', /^needed$/], ['f:bolts.3.x', '6 kN', /not (understood|a length)/],
      ['f:joint.stack.plies.0.thickness', '15 kN', /not understood/], ['f:combinations.0.parts.0.case', 'crow', /crow/], ['f:joint.bolt.thread', 'M17.3', /nearest sizes/],
      ['f:combinations.1.parts.0.factor', '1,5', /not a number/],
    ]) {
      await fresh(packedBracket());
      await page.fill(id, text);
      assert.equal(await word(), 'No answer', `${id} ${text}`);
      assert.match(await note(id), told, `${id} ${text}`);
    }
    await isSilent('a factor that is no number');
    await page.fill('f:combinations.1.parts.0.factor', '1');
    assert.equal(await word(), 'Holds');
    // One bolt less: the plan and the tables are of eleven.
    await page.click('f:bolts.11:remove');
    assert.match(await why(), /^\(11 bolts/);
    assert.doesNotMatch(await why(), /bolt 12/);
    for (const [name, change] of [
      ['no case', whole => { whole.cases = []; whole.combinations = []; }], ['no bolt', whole => { whole.bolts = []; }], ['two of a name', whole => { whole.cases[1].name = 'crowd'; }],
      ['alternations not said', whole => { delete whole.alternations; }], ['a field misspelt', whole => { whole.plate = whole.plates; }], ['no joint', whole => { delete whole.joint; }],
      ['a joint in its place', whole => { for (const key of Object.keys(whole)) delete whole[key]; Object.assign(whole, data('davit_socket')); }],
    ]) {
      await fresh(packedBracket(change));
      await isSilent(name);
    }
    assert.deepEqual(page.complaints, []);
  },

  async 'a link holds a connection, and joint and connection change places'() {
    await fresh(packedBracket());
    const shown = await page.text('answer');
    await page.fill('f:cases.1.force_y', '-30 kN');
    await page.until('decodeURIComponent(location.hash) === decodeURIComponent(document.getElementById("link").getAttribute("href"))');
    const [hash, changed] = [await link(), await page.text('answer')];
    assert.notEqual(changed, shown);
    await page.click('kind:joint');
    assert.match(await request(), /^\{\s*"title": "one of twelve bolts"/);
    assert.equal(await page.value('document.getElementById("f:bolts")'), null);
    assert.notEqual(await page.text('answer'), changed);
    await page.until('location.hash.includes("&joint=")');
    await page.value('history.back()');
    await page.until('document.getElementById("kind:connection").checked');
    assert.equal(await page.text('answer'), changed);
    await fresh(hash);
    assert.equal(await page.text('answer'), changed);
    // A text that is not JSON, and then the other kind: what the form showed goes on, and no old word.
    await page.value(`(() => { const box = document.getElementById('text'); box.value = box.value.slice(0, -9); box.dispatchEvent(new Event('input')); })()`);
    await isSilent('half a connection');
    await page.choose('demo', 'empty connection');
    await page.click('load');
    await isSilent('an empty connection');
    await fresh('#connection=AAAA');
    await isSilent('a link to no connection');
    // Names are text here too.
    const hostile = '</title><img src=x onerror=alert(1)><script>alert(2)</script>"\'&]]>';
    await fresh(packedBracket(whole => {
      whole.title = hostile;
      whole.combinations[1].name = hostile;
      whole.joint.stack.plies[0].name = hostile;
      whole.plates[0].ply = hostile;
      if (whole.loaded) whole.loaded = hostile;
    }));
    assert.equal(await word(), 'Holds', await why());
    assert.ok((await page.text('answer')).includes(hostile));
    assert.equal(await page.value('document.querySelectorAll("#answer script, [onerror]").length'), 0);
    assert.deepEqual(page.complaints, []);
  },

  async 'the sheet of a connection is printed'() {
    await fresh();
    await page.choose('demo', '3');
    await page.click('load');
    await page.choose('draw:case', 'case crowd alone');
    const pdf = await page.pdf();
    keep('connection.pdf', pdf);
    const text = textOf(pdf);
    for (const part of ['Holds', 'Bracket of a hoist beam', 'Governs: bolt 12', 'Load cases', 'crowd and hoist', 'Bolts', 'All bolts together', 'Bolt 12 by itself', 'Cautions', 'licensed',
      'The report as text', 'not concerned']) {
      assert.ok(text.replace(/\s+/g, ' ').includes(part), `the sheet has no "${part}"`);
    }
    const words = new Set(text.match(/[\w.]+/g));
    assert.deepEqual((await request()).match(/[\w.]+/g).filter(one => !words.has(one)), []);
    assert.doesNotMatch(text, /Load case drawn\s+the one|Ask about|if known|Remove/);
  },

  async 'names from strangers are text'() {
    // The crate refuses control characters in names, but not in the title.
    const hostile = `</title><img src=x onerror=alert(1)><script>alert(2)</script><svg onload=alert(3)>"'&]]>--><style>*{display:none}</style>`;
    const joint = data('davit_socket');
    joint.title = `${hostile}\u0000\u202e`;
    joint.stack.plies[0].name = hostile;
    joint.stack.plies[1].material = { name: hostile, kind: 'carbon_steel', yield_strength: '250 MPa', tensile_strength: '400 MPa' };
    joint.stack.washers_under_head[0] = { name: hostile, thickness: '3 mm', outside: '30 mm', inside: '17 mm' };
    joint.set_aside = [{ mode: 'block_shear', reason: hostile }];
    joint.granted = [{ fact: 'holes', value: hostile }];
    await fresh();
    const scripts = await page.value('document.scripts.length');
    await fresh(packed(joint));
    for (const name of ['lengths']) await page.click(`draw:${name}`);
    assert.ok(['Holds', 'Undecided', 'Does not hold'].includes(await word()), await why());
    assert.match(await page.text('answer'), /<img src=x onerror/);
    assert.equal(await page.value('document.scripts.length'), scripts);
    assert.ok(await page.value('[...document.images].every(image => image.src.startsWith("data:image/svg+xml,"))'));
    assert.equal(await page.value('document.querySelectorAll("body style, iframe, object, embed, [onerror], [onload]").length'), 0);
    // In the pictures there is nothing but shapes and text either.
    const tags = await page.value(`(() => { const found = new Set();
      for (const image of document.images) { const svg = new DOMParser().parseFromString(decodeURIComponent(image.src.split(',').slice(1).join(',')).replace(/<style>[^<]*<\\/style>/, ''), 'image/svg+xml');
        for (const one of svg.querySelectorAll('*')) { found.add(one.localName); for (const { name } of one.attributes) if (/^on|href/.test(name)) found.add(name); } } return [...found]; })()`);
    assert.deepEqual(tags.filter(tag => !['svg', 'title', 'desc', 'path', 'circle', 'text'].includes(tag)), []);
    // A value that the form has no choice for is text as well.
    for (const path of ['bolt', 'nut']) { joint[path].grade = hostile; await fresh(packed(joint)); await isSilent(`a hostile grade of the ${path}`, { inText: hostile }); }
    await fresh(packed({ ...joint, [hostile]: 1, methods: { [hostile]: hostile } }));
    assert.equal(await word(), 'No answer');
    assert.deepEqual(page.complaints, []);
    assert.match(await page.value('document.querySelector("meta[http-equiv]").content'), /^default-src 'none'; script-src 'sha256-[^']+' 'wasm-unsafe-eval'; style-src 'sha256-[^']+';/);
  },

  async 'the sheet is printed'() {
    await fresh();
    const pdf = await page.pdf();
    keep('sheet.pdf', pdf);
    const text = textOf(pdf);
    for (const part of ['Holds', 'Davit socket on a deck', 'invented', 'Checks', 'For the workshop', 'For the inspector', 'Cautions', 'licensed', 'Tighten to 196 N m', 'HOLDS (the whole joint)']) {
      assert.ok(text.replace(/\s+/g, ' ').includes(part), `the sheet has no "${part}"`);
    }
    // The whole of the request, so that the answer can be told to be to it.
    const words = new Set(text.match(/[\w.]+/g));
    assert.deepEqual((await request()).match(/[\w.]+/g).filter(one => !words.has(one)), []);
    assert.match(text, /What was asked/);
    assert.doesNotMatch(text, /Load\s+Show in|if known|Remove/);
  },

  async 'without module or script nothing is said'() {
    const html = readFileSync(file, 'utf8');
    for (const [name, spoiled] of [
      ['no module', html.replace(/(id="module">)[^<]*/, '$1')],
      ['half a module', html.replace(/(id="module">)([^<]*)/, (_, head, text) => head + text.slice(0, text.length / 8 * 4))],
      ['another schema', html.replace('"$defs"', '"$def"')],
    ]) {
      writeFileSync(join(scratch, 'spoiled.html'), spoiled);
      await page.go(pathToFileURL(join(scratch, 'spoiled.html')).href);
      await page.until(STARTED, name);
      assert.match(await why(), /did not start/, name);
      await isSilent(name);
    }
    await fresh();
    await page.value('setTimeout(() => { throw new Error("spoiled"); }, 0)');
    await page.until('document.getElementById("word").textContent === "No answer"');
    await isSilent('a fault of the page');
    page.complaints.length = 0;
    await page.call('Emulation.setScriptExecutionDisabled', { value: true });
    await page.go(address);
    await isSilent('no script');
    assert.match(await why(), /has not started/);
    await page.call('Emulation.setScriptExecutionDisabled', { value: false });
  },

  async 'the word is read out when typing rests, and not at every key'() {
    await fresh();
    await page.until('document.getElementById("live").textContent.startsWith("Holds")');
    await page.value(`(() => { window.heard = []; new MutationObserver(() => window.heard.push(document.getElementById('live').textContent)).observe(document.getElementById('live'), { childList: true }); })()`);
    await page.fill('f:load.across', '1234.5 kN');
    await page.until('window.heard.length > 0');
    await new Promise(resolve => setTimeout(resolve, 1200));
    const heard = await page.value('window.heard');
    assert.equal(heard.length, 1, heard.join(' | '));
    assert.match(heard[0], /^Does not hold \(/);
  },

  async 'the keyboard reaches everything, in order, and the focus is seen'() {
    for (const [width, kind] of [[1280, 'joint'], [360, 'joint'], [360, 'connection']]) {
      await page.size(width, 800);
      await fresh(kind === 'joint' ? '' : packedBracket(whole => { whole.bolts.splice(2, 8); }));
      await page.value('document.querySelectorAll("details").forEach(one => { one.open = true; })');
      if (kind === 'joint') await page.click('draw:lengths');
      await page.call('Emulation.setFocusEmulationEnabled', { enabled: true });
      await page.value('document.querySelector(".skip").focus()');
      const expected = await page.value(`(() => {
        const seen = one => one.checkVisibility() && !one.disabled && !one.closest('[inert]');
        const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')].filter(seen)
          .filter(one => one.type !== 'radio' || one.checked);
        all.forEach((one, at) => { one.dataset.order = at; });
        return all.length; })()`);
      const reached = [];
      for (let step = 0; step < expected + 40; step++) {
        if (step > 0) await page.press('Tab');
        const at = await page.value(`(() => { const one = document.activeElement;
          if (one === document.body) return null;
          const box = one.getBoundingClientRect(), verdict = document.getElementById('verdict'), low = verdict.getBoundingClientRect().bottom;
          const style = getComputedStyle(one);
          return { order: one.dataset.order === undefined ? null : Number(one.dataset.order), id: one.id, tag: one.localName, outline: style.outlineStyle,
            covered: !verdict.contains(one) && !one.closest('.top, .skip') && box.bottom < low + 2, out: box.top >= innerHeight || box.bottom <= 0 }; })()`);
        if (!at) break;
        // Boxes that scroll are stations as well.
        if (at.order === null) continue;
        assert.notEqual(at.outline, 'none', `${at.tag} ${at.id} shows no focus`);
        assert.ok(!at.covered && !at.out, `${at.tag} ${at.id} is hidden while it has the focus, ${width} px`);
        reached.push(at.order);
      }
      assert.deepEqual(reached, [...Array(expected).keys()], `${width} px, ${kind}`);
    }
    // Each has a name.
    await page.call('Accessibility.enable');
    const { nodes } = await page.call('Accessibility.getFullAXTree');
    const nameless = nodes.filter(node => !node.ignored && node.properties?.some(({ name, value }) => name === 'focusable' && value.value) &&
      !node.name?.value && !['RootWebArea', 'generic', 'group', 'pre', 'Pre'].includes(node.role.value));
    assert.deepEqual(nameless.map(node => [node.role.value, node.backendDOMNodeId]), []);
    await page.call('Accessibility.disable');
  },

  async 'text has contrast, and nothing runs over the edge'() {
    const sizes = [['wide', 1280, 900, false], ['wide_dark', 1280, 900, true], ['narrow', 360, 740, false], ['narrow_dark', 400, 740, true]];
    for (const [kind, [screen, width, height, dark]] of ['joint', 'connection'].flatMap(kind => sizes.map(own => [kind, own]))) {
      const name = `${kind}_${screen}`;
      await page.size(width, height, dark);
      const [hole, load, size] = kind === 'joint' ? ['f:stack.plies.0.hole', 'f:load.across', '4 kN'] : ['f:joint.stack.plies.0.hole', 'f:cases.0.force_y', '-20 kN'];
      await fresh(kind === 'joint' ? '' : packedBracket());
      await page.fill(hole, '');
      await page.fill(load, '');
      await page.fill(load, size);
      await page.value('scrollTo(0, 0)');
      keep(`${name}.png`, await page.picture());
      await page.value(`document.querySelector('table').scrollIntoView()`);
      keep(`${name}_table.png`, await page.picture());
      assert.ok(await page.value('document.documentElement.scrollWidth') <= width, `${name} is too wide`);
      const poor = await page.value(`(() => {
        const canvas = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
        const cache = new Map();
        const rgb = text => { if (!cache.has(text)) { canvas.clearRect(0, 0, 1, 1); canvas.fillStyle = text; canvas.fillRect(0, 0, 1, 1); cache.set(text, [...canvas.getImageData(0, 0, 1, 1).data]); } return cache.get(text); };
        const light = ([r, g, b]) => [r, g, b].map(one => one / 255).map(one => one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4).reduce((sum, one, at) => sum + one * [0.2126, 0.7152, 0.0722][at], 0);
        const ground = one => { for (let at = one; at; at = at.parentElement) { const color = rgb(getComputedStyle(at).backgroundColor); if (color[3] === 255) return color; } return [255, 255, 255]; };
        const poor = [];
        for (const one of document.body.querySelectorAll('*')) {
          if (!one.checkVisibility() || one.disabled || ![...one.childNodes].some(node => node.nodeType === 3 && node.textContent.trim()) && !one.matches('input, select, textarea')) continue;
          const style = getComputedStyle(one), [a, b] = [light(rgb(style.color)), light(ground(one))].sort((x, y) => y - x);
          const ratio = (a + 0.05) / (b + 0.05);
          if (ratio < 4.5) poor.push(one.localName + '#' + one.id + ' ' + ratio.toFixed(2));
          if (one.matches('input:not([type=radio], [type=checkbox]), select, textarea')) {
            const [c, d] = [light(rgb(style.borderTopColor)), light(ground(one.parentElement))].sort((x, y) => y - x);
            if ((c + 0.05) / (d + 0.05) < 3) poor.push('edge of ' + one.id);
          }
        }
        return poor; })()`);
      assert.deepEqual(poor, [], name);
    }
    await page.size(1280, 900);
  },

  async 'all of the schema can be reached'() {
    for (const kind of ['joint', 'connection']) {
      await fresh(kind === 'joint' ? '' : packedBracket());
      const count = await reachable(page, kind);
      console.log(`   ${count} fields of a ${kind}`);
    }
    assert.deepEqual(page.complaints, []);
  },

  async 'a key stroke is answered at once'() {
    await fresh();
    for (const picture of ['lengths']) await page.click(`draw:${picture}`);
    const times = await page.value(`(() => { const input = document.getElementById('f:load.across'); const times = [];
      for (let round = 0; round < 120; round++) { input.value = round % 2 ? '4 kN' : '4.1 kN'; const from = performance.now();
        input.dispatchEvent(new Event('input', { bubbles: true })); document.body.offsetHeight; times.push(performance.now() - from); }
      return times.slice(20).sort((a, b) => a - b); })()`);
    const choice = await page.value(`(() => { const select = document.getElementById('f:bolt.product'); const times = [];
      for (let round = 0; round < 40; round++) { select.value = round % 2 ? 'iso_4014' : 'iso_4017'; const from = performance.now();
        select.dispatchEvent(new Event('change', { bubbles: true })); document.body.offsetHeight; times.push(performance.now() - from); }
      return times.slice(10).sort((a, b) => a - b); })()`);
    await fresh(packedBracket());
    const connection = await page.value(`(() => { const input = document.getElementById('f:cases.0.force_y'); const times = [];
      for (let round = 0; round < 60; round++) { input.value = round % 2 ? '-20 kN' : '-21 kN'; const from = performance.now();
        input.dispatchEvent(new Event('input', { bubbles: true })); document.body.offsetHeight; times.push(performance.now() - from); }
      return times.slice(10).sort((a, b) => a - b); })()`);
    const middle = list => list[list.length >> 1];
    console.log(`   a key stroke, with four pictures and the layout of the page: ${times[0].toFixed(1)} ms at best, ${middle(times).toFixed(1)} ms in the middle; a choice ${choice[0].toFixed(1)} and ${middle(choice).toFixed(1)} ms; in a connection of twelve bolts ${connection[0].toFixed(1)} and ${middle(connection).toFixed(1)} ms`);
    // The best of many, and what still passes for at once (common practice, no source): machines differ, and others work on them.
    // Of the quickest a frame of 16 ms is the mark; the printed times say how far it is.
    for (const best of [times[0], choice[0], connection[0]]) assert.ok(best < 100, `${best} ms`);
  },

  async 'native and browser answer the same, byte for byte'() {
    await fresh();
    const { count, bytes, check } = await identical(page, library);
    console.log(`   ${count} answers, ${(bytes / 1e6).toFixed(1)} MB; a check ${check.toFixed(3)} ms in the browser`);
  },
};

let failed = 0;
const only = process.env.ONLY;
for (const [name, test] of Object.entries(tests)) {
  if (only && !name.includes(only)) continue;
  page.complaints.length = 0;
  await page.size(1280, 900);
  try {
    await test();
    console.log(`ok  ${name}`);
  } catch (problem) {
    failed++;
    console.log(`FAILED  ${name}\n${problem.stack}`);
  }
}
await browser.close();
rmSync(scratch, { recursive: true });
process.exitCode = failed ? 1 : 0;
