import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { makeCatalogue, sharedWords } from '../../text/index.ts';
import { assessBook } from '../assess-book.ts';

const { has } = makeCatalogue(sharedWords);

const books = [
  'src/book/demo/flagon-line.json',
  ...readdirSync('examples')
    .filter((name) => name.endsWith('.json'))
    .map((name) => `examples/${name}`),
].flatMap((path) => {
  const read = readBook(readFileSync(path, 'utf8'));
  return read.ok ? [read.value] : [];
});
const floors = books.flatMap((book) => assessBook(book).floors);
const findings = floors.flatMap((floor) => floor.utilities.findings);
const figures = floors.flatMap((floor) => floor.utilities.figures);

const absent = (keys: readonly string[]) => [...new Set(keys)].filter((key) => !has(key));

describe('the words of the utilities', () => {
  it('name every question of the demo book and the examples, what it asks and what it has', () => {
    expect(findings.length).toBeGreaterThan(0);
    expect(
      absent(
        findings.flatMap(({ question, utility }) => [
          `utility.question.${question}`,
          `utility.asks.${question}`,
          `utility.has.${question}`,
          `utility.${utility}`,
          `utility.caution.${utility}`,
        ]),
      ),
    ).toEqual([]);
  });
  it('name every figure', () => {
    expect(absent(figures.map(({ id }) => `utility.figure.${id.split(' ')[0]}`))).toEqual([]);
  });
  it('make a sentence of every note that a question may leave', () => {
    const sources = readdirSync('src/floor/utilities', { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
      .map((name) => readFileSync(`src/floor/utilities/${name}`, 'utf8'));
    const codes = sources.flatMap((text) =>
      [...text.matchAll(/\.note\('([A-Z_]+)'/g)].map(([, code]) => code!),
    );
    expect(codes.length).toBeGreaterThan(5);
    expect(absent(codes)).toEqual([]);
  });
  it('name every lever, with its answer and without', () => {
    const levers = findings.flatMap((finding) => finding.levers);
    expect(absent(levers.flatMap((id) => [`lever.${id}`, `lever.alone.${id}`]))).toEqual([]);
  });
});
