import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kinds } from '../quantity/kinds.ts';
import { type Field, runSheet, type Sheet, type Value } from './frame.ts';
import { sheetProblemText } from './problems.text.ts';
import { sheetEntries } from './registry.ts';

/** Numbers inside the bounds of a field: even ones, ones close to a bound, and the bounds themselves. */
const numberWithin = (low: number, high: number, open: boolean): fc.Arbitrary<number> => {
  const clip = (n: number): number => Math.min(high, Math.max(low, n));
  const least = open ? low + Math.max(Number.MIN_VALUE, Math.abs(low) * Number.EPSILON) : low;
  const even = fc.double({ min: least, max: high, noNaN: true });
  // decades over the lower bound, so that small pipes come as often as large ones
  const decades = fc
    .double({ min: -12, max: Math.log10(Math.max(1e-11, high - low)), noNaN: true })
    .map((e) => Math.max(least, clip((low > 0 && low > 1e-12 ? low : 0) + 10 ** e)));
  return fc.oneof(
    decades,
    even,
    fc.constantFrom(least, high, clip(Math.max(least, 0)), clip(Math.max(least, 1))),
  );
};

const accepted = (field: Field): fc.Arbitrary<unknown> => {
  if (field.type === 'choice') return fc.constantFrom(...field.options);
  const low = field.least ?? field.above ?? -Number.MAX_VALUE;
  const high = field.most ?? Number.MAX_VALUE;
  const one = numberWithin(low, high, field.above !== undefined && field.least === undefined);
  return field.type === 'list' ? fc.array(one, { minLength: field.fewest ?? 1, maxLength: 6 }) : one;
};

/** Inputs that every field of a sheet accepts, odd as they may be together; lists of one length, mostly. */
const anyInputs = (sheet: Sheet): fc.Arbitrary<Record<string, unknown>> => {
  const fields = Object.entries(sheet.inputs);
  const record = fc.record(Object.fromEntries(fields.map(([name, field]) => [name, accepted(field)])));
  return fc.tuple(record, fc.nat(9)).map(([inputs, odds]) => {
    if (odds === 0) return inputs;
    const lists = Object.entries(inputs).filter((pair): pair is [string, number[]] => Array.isArray(pair[1]));
    const shortest = Math.min(...lists.map(([, list]) => list.length));
    return { ...inputs, ...Object.fromEntries(lists.map(([name, list]) => [name, list.slice(0, shortest)])) };
  });
};

const finite = (value: Value): boolean =>
  typeof value === 'string' || [value].flat().every((n) => Number.isFinite(n));

const runs = 200;

describe.each(sheetEntries.map((entry) => ({ id: entry.sheet.id, entry })))('$id', ({ entry }) => {
  const { sheet, text, cases } = entry;

  it('has a word for every field, in every language', () => {
    for (const words of Object.values(text)) {
      expect(words.title).not.toBe('');
      expect(words.about).not.toBe('');
      expect(Object.keys(words.inputs).sort()).toEqual(Object.keys(sheet.inputs).sort());
      expect(Object.keys(words.outputs).sort()).toEqual(Object.keys(sheet.outputs).sort());
      expect(Object.values({ ...words.inputs, ...words.outputs }).filter((word) => word === '')).toEqual([]);
    }
  });

  it('has a sentence for every note and a word for every option', () => {
    for (const words of Object.values(text)) {
      const codes = [...new Set(sheet.limits.map((limit) => limit.code))].sort();
      expect(Object.keys(words.notes).sort()).toEqual(codes);
      for (const [name, field] of Object.entries(sheet.inputs)) {
        if (field.type !== 'choice') continue;
        expect(Object.keys(words.options?.[name] ?? {}).sort()).toEqual([...field.options].sort());
      }
    }
  });

  it('has a formula, a source, and kinds that the tool knows', () => {
    expect(sheet.formula.length).toBeGreaterThan(0);
    expect(sheet.sources.length).toBeGreaterThan(0);
    for (const field of [...Object.values(sheet.inputs), ...Object.values(sheet.outputs)]) {
      if (field.type !== 'choice') expect(Object.keys(kinds)).toContain(field.kind);
    }
  });

  it('gives finite figures or a problem with words, never throws, for whatever its fields accept', () => {
    const problems = new Set<string>();
    let computed = 0;
    fc.assert(
      fc.property(anyInputs(sheet), (inputs) => {
        const run = runSheet(sheet, inputs);
        if (!run.ok) {
          for (const { code } of run.problems) problems.add(code);
          // what the generator makes lies inside every field, so a field must not complain
          return run.problems.length > 0 && run.problems.every(({ code }) => code !== 'SHEET_RANGE');
        }
        computed += 1;
        return (
          Object.keys(run.value.outputs).sort().join() === Object.keys(sheet.outputs).sort().join() &&
          Object.values(run.value.outputs).every(finite)
        );
      }),
      { numRuns: runs },
    );
    // a sheet that refused everything would pass unseen
    expect(computed).toBeGreaterThan(runs / 100);
    const known = [...Object.keys(text.en.problems ?? {}), ...Object.keys(sheetProblemText.en)];
    expect([...problems].filter((code) => !known.includes(code))).toEqual([]);
  });

  it('gives the same figures when it is asked twice', () => {
    for (const { inputs } of cases) expect(runSheet(sheet, inputs)).toEqual(runSheet(sheet, inputs));
  });
});

it('every sheet has its own id, discipline before name', () => {
  const ids = sheetEntries.map(({ sheet }) => sheet.id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+\/[a-z0-9-]+$/);
});

it('one code says the same sentence in every sheet', () => {
  const said = new Map<string, string>();
  for (const { text } of sheetEntries) {
    for (const [code, sentence] of Object.entries({ ...text.en.notes, ...text.en.problems })) {
      expect(said.get(code) ?? sentence).toBe(sentence);
      said.set(code, sentence);
    }
  }
});
