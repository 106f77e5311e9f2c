import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockOn } from './clocked.ts';
import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';
import { namesSource, nothingStands, standingOf, standOn, triedIn } from './standing.ts';
import { triedChecks } from './testing/tried-checks.ts';

/** What counts by its definition, looked up in the whole set. */
const byDefinition = (records: readonly Envelope[]): readonly Envelope[] => {
  const { moments } = clockOn(records);
  const { current } = currentRecords(records);
  const isLast = (one: Envelope): boolean =>
    current.every(
      (other) =>
        triedIn(other) !== triedIn(one) ||
        moments.get(other.id)! - moments.get(one.id)! < 0 ||
        (moments.get(other.id) === moments.get(one.id) && byText(other.id, one.id) <= 0),
    );
  return records.filter(
    (one) => triedIn(one) === undefined || (current.includes(one) && (isLast(one) || namesSource(one))),
  );
};

/** Parts of a list in its order. */
const divided = (records: readonly Envelope[], at: readonly number[]): readonly (readonly Envelope[])[] => {
  const cuts = [...at.map((one) => one % (records.length + 1)).sort((a, b) => a - b), records.length];
  return cuts.map((cut, i) => records.slice(cuts[i - 1] ?? 0, cut));
};

describe('what counts of records', () => {
  it('is of the tries of each check the last that nothing replaces, and every other record', () => {
    fc.assert(
      fc.property(triedChecks('b', 30), (records) => {
        expect(standingOf(records).records).toEqual(byDefinition(records));
      }),
    );
  });

  it('is the same however they came in parts, unless it says that it wants those that it let go of', () => {
    let wanting = 0;
    fc.assert(
      fc.property(triedChecks('b', 30), fc.array(fc.nat(40), { maxLength: 5 }), (records, at) => {
        const inParts = divided(records, at).reduce(standOn, nothingStands);
        if (inParts.isWanting) wanting += 1;
        else expect(inParts).toEqual(standingOf(records));
        // what the chains are at is known all the same
        expect([inParts.ends, inParts.doubts]).toEqual([
          standingOf(records).ends,
          standingOf(records).doubts,
        ]);
      }),
    );
    expect(wanting).toBeLessThan(50);
  });

  it('stays where a correction comes behind everything, and is wanting once the last try is taken back', () => {
    const [first, second, ...rest] = fc.sample(
      triedChecks('b', 30).filter((all) => all.filter((one) => triedIn(one) === triedIn(all[0]!)).length > 2),
      { numRuns: 1, seed: 7 },
    )[0]!;
    const all = [first!, second!, ...rest];
    const known = standingOf(all);
    const last = known.records.findLast((one) => triedIn(one) !== undefined && !namesSource(one))!;
    const later = { ...last, id: 'later', writer: 'other', sequence: 0, supersedes: last.id };
    const corrected = { ...later, deviceTime: '2027-12-01T00:00:00Z' };
    expect(standOn(known, [corrected]).isWanting).toBe(false);
    const back = { ...corrected, kind: 'note', version: 1, body: { text: 'wrong', by: 'the engineer' } };
    expect(standOn(known, [back]).isWanting).toBe(true);
  });
});
