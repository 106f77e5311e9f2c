import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fillProblemText } from './fill.text.ts';
import { fillProblems } from './problems.ts';

const folder = new URL('.', import.meta.url);
const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !/(^|\/)problems\.ts$|\.(test|text)\.ts$/.test(name))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .join('\n');

it('every problem that the code names is listed, and every listed one is named by the code', () => {
  const named = new Set([...source.matchAll(/'(FILL_[A-Z_]+)'/g)].map((found) => found[1]));
  expect([...named].sort()).toEqual(Object.keys(fillProblems).sort());
});

it('every sentence uses the parts that its problem carries, all of them', () => {
  for (const [code, parts] of Object.entries(fillProblems)) {
    const sentence = fillProblemText.en[code as keyof typeof fillProblems];
    const used = new Set([...sentence.matchAll(/\{(\w+)\}/g)].map((found) => found[1]));
    used.delete('path');
    expect([...used].sort(), code).toEqual([...parts].sort());
    expect(sentence, code).toMatch(/[.]$/);
  }
});
