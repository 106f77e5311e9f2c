import fc from 'fast-check';
import type { Field, Sheet } from './frame.ts';

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
export const anyInputs = (sheet: Sheet): fc.Arbitrary<Record<string, unknown>> => {
  const fields = Object.entries(sheet.inputs);
  const record = fc.record(Object.fromEntries(fields.map(([name, field]) => [name, accepted(field)])));
  return fc.tuple(record, fc.nat(9)).map(([inputs, odds]) => {
    if (odds === 0) return inputs;
    const lists = Object.entries(inputs).filter((pair): pair is [string, number[]] => Array.isArray(pair[1]));
    const shortest = Math.min(...lists.map(([, list]) => list.length));
    return { ...inputs, ...Object.fromEntries(lists.map(([name, list]) => [name, list.slice(0, shortest)])) };
  });
};
