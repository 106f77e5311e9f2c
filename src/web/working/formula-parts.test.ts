import { expect, it } from 'vitest';
import { registry, sheetEntries } from '../../sheets/registry.ts';
import { formulaParts } from './formula-parts.ts';

it('a formula goes on before a relation or a sum, behind a comma and where a wide space parts it', () => {
  expect(formulaParts('a = b + c - d, \\quad e = -f')).toEqual([
    ['a', '{}= b', '{}+ c', '{}- d,'],
    ['e', '{}= -f'],
  ]);
  expect(formulaParts('I = 1.25\\, I \\text{ for one motor, else } I')).toEqual([
    ['I', '{}= 1.25\\, I', '{}\\text{ for one motor, else } I'],
  ]);
});

it('nothing is cut inside of a bracket, a fraction, an index or a root', () => {
  for (const tex of [
    '\\frac{a + b}{c = d}',
    '\\left( a + b \\right)',
    '\\min ( a, b + c )',
    'x^{a - b}_{c + 1}',
    '\\sqrt{a + b}',
    '\\left. a + b \\right|',
  ]) {
    expect(formulaParts(tex)).toEqual([[tex]]);
  }
});

it('no formula of a sheet loses a sign, and each piece closes what it opens', () => {
  expect(registry.size).toBeGreaterThan(100);
  const bare = (tex: string) => tex.replaceAll(/\\q?quad|\s|\{\}/g, '');
  const open = (tex: string) => (tex.match(/\\left\b|(?<!\\)\{/g) ?? []).length;
  const closed = (tex: string) => (tex.match(/\\right\b|(?<!\\)\}/g) ?? []).length;
  for (const line of sheetEntries.flatMap(({ sheet }) => sheet.formula)) {
    const pieces = formulaParts(line).flat();
    expect(bare(pieces.join(''))).toBe(bare(line));
    for (const piece of pieces) expect([piece, open(piece)]).toEqual([piece, closed(piece)]);
  }
});
