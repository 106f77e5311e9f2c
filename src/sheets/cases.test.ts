import { describe, expect, it } from 'vitest';
import { caseResult } from './case-result.ts';
import { evidence } from './evidence.ts';
import { registry, sheetEntries } from './registry.ts';

describe.each(sheetEntries.map((entry) => ({ id: entry.sheet.id, entry })))('$id', ({ entry }) => {
  it('has at least one case from outside', () => {
    expect(entry.cases.length).toBeGreaterThan(0);
  });

  it.each(entry.cases.map((sheetCase) => ({ name: sheetCase.name, sheetCase })))('$name', ({ sheetCase }) => {
    const result = caseResult(entry, sheetCase);
    expect(result.problems).toEqual([]);
    expect(result.figures.length).toBeGreaterThan(0);
    expect(result.figures.filter((figure) => !figure.within)).toEqual([]);
    expect(result.notesMissing).toEqual([]);
  });

  it('names the place of every source and the reason of every tolerance', () => {
    for (const { source, tolerance } of entry.cases) {
      expect(source.title).not.toBe('');
      expect(source.place ?? source.edition).toBeTruthy();
      expect(tolerance.reason).not.toBe('');
      expect((tolerance.relative ?? 0) + (tolerance.absolute ?? 0)).toBeGreaterThan(0);
    }
  });
});

it('a case that is off by more than its tolerance is found', () => {
  const entry = registry.get('water/pipe-velocity')!;
  const wrong = { ...entry.cases[0]!, outputs: { velocity: 1.19 } };
  expect(caseResult(entry, wrong).figures.map(({ within }) => within)).toEqual([false]);
  const refused = { ...entry.cases[0]!, inputs: { flow: 1, bore: 0 } };
  expect(caseResult(entry, refused).problems).toEqual(['SHEET_RANGE']);
  expect(caseResult(entry, refused).figures.map(({ within }) => within)).toEqual([false]);
});

it('a case whose word is another one is found', () => {
  const entry = registry.get('air/water-class')!;
  const first = entry.cases[0]!;
  expect(caseResult(entry, first).figures.map(({ within }) => within)).toEqual([true]);
  const wrong = { ...first, outputs: { waterClass: 'X' } };
  expect(caseResult(entry, wrong).figures.map(({ within }) => within)).toEqual([false]);
});

it('the page of evidence is the one that these cases make', async () => {
  await expect(evidence(sheetEntries)).toMatchFileSnapshot('../../docs/evidence.md');
});
