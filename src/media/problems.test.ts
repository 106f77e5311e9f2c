import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { mediaProblemText } from './problems.text.ts';
import { mediaProblems } from './problems.ts';

const folder = new URL('.', import.meta.url);
const source = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && !/^problems\.|\.test\.ts$/.test(name))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .join('\n');

it('every problem that the code names is listed, and every listed one is named by the code', () => {
  const named = new Set([...source.matchAll(/'(MEDIA_[A-Z_]+)'/g)].map((found) => found[1]));
  expect([...named].sort()).toEqual(Object.keys(mediaProblems).sort());
});

it('every sentence uses the parts that its problem carries, all of them', () => {
  for (const [code, parts] of Object.entries(mediaProblems)) {
    const sentence = mediaProblemText.en[code as keyof typeof mediaProblems];
    const used = [...sentence.matchAll(/\{(\w+)\}/g)].map((found) => found[1]);
    expect([...new Set(used)].sort(), code).toEqual([...parts].sort());
    expect(sentence, code).toMatch(/[.]$/);
  }
});
