import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { storeProblemText } from './problems.text.ts';
import { storeProblems } from './problems.ts';

const folder = new URL('.', import.meta.url);
const source = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && !/^problems\.|\.test\.ts$/.test(name))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .join('\n');

it('every problem that the code names is listed, and every listed one is named by the code', () => {
  const named = new Set([...source.matchAll(/'(STORE_[A-Z_]+)'/g)].map((found) => found[1]));
  expect([...named].sort()).toEqual(Object.keys(storeProblems).sort());
});

it('every sentence uses the parts that its problem carries, all of them', () => {
  for (const [code, parts] of Object.entries(storeProblems)) {
    const sentence = storeProblemText.en[code as keyof typeof storeProblems];
    const used = new Set([...sentence.matchAll(/\{(\w+)\}/g)].map((found) => found[1]));
    used.delete('path');
    expect([...used].sort(), code).toEqual([...parts].sort());
    expect(sentence, code).toMatch(/[.]$/);
  }
});
