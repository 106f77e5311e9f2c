import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { archiveProblemText } from './problems.text.ts';
import { archiveProblems } from './problems.ts';

const folder = new URL('.', import.meta.url);
const source = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && !/^problems\.|\.test\.ts$/.test(name))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .join('\n');

it('every problem that the code names is listed, and every listed one is named by the code', () => {
  const named = new Set([...source.matchAll(/'(ARCHIVE_[A-Z_]+)'/g)].map((found) => found[1]));
  expect([...named].sort()).toEqual(Object.keys(archiveProblems).sort());
});

it('every sentence uses the parts that its problem carries, all of them', () => {
  for (const [code, parts] of Object.entries(archiveProblems)) {
    const sentence = archiveProblemText.en[code as keyof typeof archiveProblems];
    const used = [...sentence.matchAll(/\{(\w+)\}/g)]
      .map((found) => found[1])
      .filter((part) => part !== 'path');
    expect([...new Set(used)].sort(), code).toEqual([...parts].sort());
    expect(sentence, code).toMatch(/[.]$/);
  }
});
