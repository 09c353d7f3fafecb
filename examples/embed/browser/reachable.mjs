// Whether each field of the schema can be reached in the form: every choice is made, every list gets an item.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { idOf, readSchema } from './schema.mjs';

/** `of` is the kind of the form; the joint in a connection is looked through as a joint by itself. */
export async function reachable(page, of) {
  const schema = readSchema(JSON.parse(readFileSync(new URL(`../../data/${of}.schema.json`, import.meta.url))));
  let count = 0;
  const isThere = id => page.value(`document.getElementById(${JSON.stringify(id)}) !== null`);
  /** The answer is not wanted here, and clicks of a person would be slower than this. */
  async function explore(path, node, required) {
    const id = idOf(path);
    const { kind, at } = schema.plain(node);
    if (path.length > 0) {
      count++;
      assert.ok(await isThere(id), `${path.join('.')} has no field`);
    }
    if (kind === 'object' && path[0] === 'joint') return;
    if (kind === 'object') {
      if (path.length > 0 && !required && await isThere(`${id}:is`)) await page.choose(`${id}:is`, 'is');
      for (const [key, inner] of Object.entries(at.properties)) await explore([...path, key], inner, at.required?.includes(key));
    } else if (kind === 'list') {
      if (!await isThere(idOf([...path, 0]))) await page.click(`${id}:add`);
      await explore([...path, 0], at.items, true);
    } else if (kind === 'choice') {
      for (const option of schema.options(node)) {
        await page.choose(id, option.key);
        if (option.tag) await explore([...path, option.tag], option.node, true);
        if (option.own) for (const [key, inner] of Object.entries(schema.plain(option.node).at.properties)) {
          await explore([...path, key], inner, schema.plain(option.node).at.required?.includes(key));
        }
      }
    }
  }
  await explore([], schema.root, true);
  return count;
}
