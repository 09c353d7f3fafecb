// Makes the page: builds the module for a browser and packs everything into one file that opens from anywhere.
//     node build.mjs [PAGE.html] [MODULE.wasm]      the module is built if none is given
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const here = dirname(fileURLToPath(import.meta.url));
const read = name => readFileSync(resolve(here, name), 'utf8');
const page = resolve(process.argv[2] ?? resolve(here, 'out/shankline.html'));

/** The scripts, each after those it imports. */
const SCRIPTS = ['../callers/shankline.mjs', 'dom.mjs', 'schema.mjs', 'layout.mjs', 'units.mjs', 'link.mjs', 'form.mjs', 'answer.mjs', 'connection.mjs', 'main.mjs'];
const DEMONSTRATIONS = {
  joint: ['../../data/davit_socket.json', '../../data/seesaw_pivot.json', '../../data/winch_foot.json'],
  connection: ['../callers/bracket.json'],
};

/** The schema is a file beside the examples, and the page shows no tables: the module is without both. */
function built() {
  const module = resolve(mkdtempSync(resolve(tmpdir(), 'module-')), 'shankline.wasm');
  execFileSync(resolve(here, '../wasm.sh'), [module], { stdio: 'inherit' });
  return module;
}

/** One script of all: nothing is renamed, so that two of a name are an error of the browser and of `node --check`. */
function bundled() {
  const own = name => read(name)
    .replace(/^import [^;]*;\n/gm, '')
    .replace(/^export (?=const |function |async |class )/gm, '');
  const text = SCRIPTS.map(own).join('\n');
  if (/^(import|export) /m.test(text)) throw new Error('an import or export is left over');
  if (text.includes('</script')) throw new Error('a script ends inside');
  return text;
}

const hashed = text => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const data = (id, value) => `<script type="application/json" id="${id}">${JSON.stringify(value).replaceAll('<', '\\u003c')}</script>\n`;

const module = gzipSync(readFileSync(process.argv[3] ?? built()), { level: 9 });
const style = read('style.css');
const script = bundled();
// Nothing is fetched, nothing but this one script runs, and pictures come from the module.
const policy = `default-src 'none'; script-src ${hashed(script)} 'wasm-unsafe-eval'; style-src ${hashed(style)}; img-src data:; base-uri 'none'; form-action 'none'`;

const parts = {
  POLICY: `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
  STYLE: `<style>${style}</style>`,
  SCRIPT: data('schema', JSON.parse(read('../../data/connection.schema.json'))) +
    data('demonstrations', Object.fromEntries(Object.entries(DEMONSTRATIONS).map(([kind, names]) => [kind, names.map(name => JSON.parse(read(name)))]))) +
    `<script type="application/gzip" id="module">${module.toString('base64')}</script>\n<script type="module">${script}</script>`,
};
const html = read('index.html')
  .replace(/<!-- build\.mjs .*-->\n/, '')
  .replace(/<!-- (POLICY|STYLE|SCRIPT) -->/g, (_, name) => parts[name]);
mkdirSync(dirname(page), { recursive: true });
writeFileSync(page, html);
console.log(`${page}: ${(html.length / 1000).toFixed(0)} kB, of which the module ${(module.length / 1000).toFixed(0)} kB compressed`);
