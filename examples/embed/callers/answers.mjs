// Prints the bytes of many answers of the module, as answers.py does of the native library: both must be the same.
import { readFileSync } from 'node:fs';
import { open, Refusal } from './shankline.mjs';

const beside = new URL('bracket.json', import.meta.url);
const data = name => readFileSync(name === 'bracket.json' ? beside : new URL(`../../data/${name}`, import.meta.url), 'utf8');
const shankline = await open(readFileSync(process.argv[2]));
for (const line of readFileSync(new URL('requests.txt', import.meta.url), 'utf8').split('\n')) {
  if (!line) continue;
  const [question, request] = line.split('\t');
  const text = request.replace(/@(\w+\.json)/g, (_, name) => data(name));
  let answer;
  try {
    answer = shankline.askText(question, text);
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    answer = problem.text;
  }
  process.stdout.write(`${line}\n${answer}\n`);
}
