import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Kind, kinds } from './kinds.ts';
import { parseEntry } from './parse-entry.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { Problem } from './problem.ts';
import { quantityProblemText } from './problems.text.ts';
import { type QuantityProblemCode, quantityProblems } from './problems.ts';
import { readEntry } from './read-entry.ts';
import { unitsByKind } from './units-by-kind.ts';

const allKinds = Object.keys(kinds) as Kind[];
const codes = Object.keys(quantityProblems) as QuantityProblemCode[];
const at = { path: '/x' };

/** One input that provokes each problem. */
const provoked: Readonly<Record<QuantityProblemCode, readonly [given: unknown, kind: Kind]>> = {
  QUANTITY_UNREADABLE: ['about so', 'length'],
  QUANTITY_UNIT_MISSING: ['5', 'length'],
  QUANTITY_UNIT_UNKNOWN: ['5 parsnips', 'length'],
  QUANTITY_WRONG_KIND: ['5 kg', 'length'],
  QUANTITY_GAUGE_FOR_ABSOLUTE: ['5 psig', 'absolutePressure'],
  QUANTITY_ABSOLUTE_FOR_GAUGE: ['5 psia', 'gaugePressure'],
  QUANTITY_NOT_FINITE: ['1e999 m', 'length'],
  QUANTITY_AMBIGUOUS_NUMBER: ['1,050 m', 'length'],
  QUANTITY_BELOW_ABSOLUTE_ZERO: ['-1 K', 'temperature'],
  QUANTITY_BELOW_VACUUM: ['-1 bar', 'absolutePressure'],
  QUANTITY_RANGE_REVERSED: ['3 to 2 m', 'length'],
  QUANTITY_SPREAD_NEGATIVE: ['3 ± -2 m', 'length'],
  QUANTITY_SPREAD_TWICE: [{ value: '3 ± 2 m', spread: '1 m' }, 'length'],
  QUANTITY_SPREAD_ON_RANGE: [{ value: ['2 m', '3 m'], spread: '1 m' }, 'length'],
  QUANTITY_FORM: [[], 'length'],
  QUANTITY_STANDING: [{ value: '3 m', standing: 'sure' }, 'length'],
};

/** Whether a problem carries what the list says that its sentence needs. */
const expectComplete = (problem: Problem): void => {
  expect(codes).toContain(problem.code);
  for (const part of quantityProblems[problem.code as QuantityProblemCode]) {
    const there = part === 'given' || part === 'allowed' ? problem[part] : problem.parts?.[part];
    expect(there, `${problem.code} without ${part}`).toBeDefined();
  }
};

describe('the listed problems', () => {
  it.each(codes)('%s is raised, with every part that its sentence needs', (code) => {
    const [given, kind] = provoked[code];
    const result = readEntry(given, kind, at);
    const problems = result.ok ? [] : result.problems;
    expect(problems.map((each) => each.code)).toContain(code);
    problems.forEach(expectComplete);
  });
  it('have a sentence each, which names its parts and the path and no others', () => {
    expect(Object.keys(quantityProblemText.en).sort()).toEqual([...codes].sort());
    for (const code of codes) {
      const named = [...quantityProblemText.en[code].matchAll(/\{(\w+)\}/g)].map((match) => match[1]);
      expect([...new Set(named)].sort(), code).toEqual(['path', ...quantityProblems[code]].sort());
    }
  });
});

describe('whatever comes', () => {
  const pieces = fc.constantFrom(
    '1',
    '05',
    '050',
    '000',
    '.',
    ',',
    ' ',
    '\u202f',
    "'",
    '"',
    '-',
    '−',
    '–',
    '+',
    '±',
    '+-',
    ' to ',
    '..',
    '/',
    '½',
    '⁄',
    'e',
    'e9',
    '×10',
    '⁻',
    '³',
    '^',
    '(',
    ')',
    '%',
    'bar',
    'psi',
    '(g)',
    'abs',
    'm',
    'ft',
    'in',
    'gal',
    'Kv',
    'K',
    'degC',
    'NL/min',
    'ANR',
    '/h',
    'Infinity',
    'NaN',
    '__proto__',
    'constructor',
    '\u0000',
    '\ud800',
    '😀',
    '١',
  );
  const texts = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary' }),
    fc.array(pieces, { maxLength: 12 }).map((each) => each.join('')),
  );
  const anyKind = fc.constantFrom(...allKinds);
  const finite = (value: number | undefined): boolean => value === undefined || Number.isFinite(value);

  it('text is read to a finite value in a unit of the kind, or refused with a listed problem', () => {
    fc.assert(
      fc.property(
        texts,
        anyKind,
        fc.constantFrom(undefined, 'en', 'de', 'xx-not-one'),
        (text, kind, locale) => {
          const result = parseQuantity(text, kind, { ...at, locale });
          if (result.ok) {
            expect(Number.isFinite(result.value.value)).toBe(true);
            expect(unitsByKind[kind].some(({ id }) => id === result.value.unit)).toBe(true);
          } else result.problems.forEach(expectComplete);
          const entry = parseEntry(text, kind, { ...at, locale });
          if (entry.ok)
            expect(
              [entry.value.value, entry.value.low, entry.value.high, entry.value.spread].every(finite),
            ).toBe(true);
          else entry.problems.forEach(expectComplete);
        },
      ),
      { numRuns: 5000 },
    );
  });
  it('a value of any form is read in order low, value, high, or refused with a listed problem', () => {
    const given = fc.oneof(
      fc.anything({ maxDepth: 4 }),
      fc.record(
        {
          value: fc.oneof(texts, fc.tuple(texts, texts), fc.anything()),
          spread: fc.oneof(texts, fc.anything()),
          standing: fc.oneof(fc.constantFrom('measured', 'stated', 'assumed'), fc.anything()),
        },
        { requiredKeys: [] },
      ),
    );
    fc.assert(
      fc.property(given, anyKind, (value, kind) => {
        const result = readEntry(value, kind, at);
        if (!result.ok) {
          expect(result.problems.length).toBeGreaterThan(0);
          result.problems.forEach(expectComplete);
        } else {
          expect(
            [result.value.low, result.value.value, result.value.high, result.value.sd].every(finite),
          ).toBe(true);
          expect(result.value.low).toBeLessThanOrEqual(result.value.value);
          expect(result.value.value).toBeLessThanOrEqual(result.value.high);
        }
      }),
      { numRuns: 5000 },
    );
  });
  it('a form nested a hundred thousand deep, or holding itself, is refused', () => {
    let deep: unknown = 'x';
    for (let i = 0; i < 100_000; i += 1) deep = { value: [deep] };
    const round: Record<string, unknown> = {};
    round.value = round;
    for (const given of [deep, round, { value: deep }]) expect(readEntry(given, 'length', at).ok).toBe(false);
  });
});
