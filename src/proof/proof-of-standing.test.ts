import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessBook } from '../floor/index.ts';
import { nothingStands, type Standing, standingOf, standOn } from '../record/standing.ts';
import { type BookProof, proofOfBook, proofOfRecords } from './proof-of-book.ts';
import { checkOf, demo, floorOf, proofOf, recorded, type Said, triedOn } from './testing/demo-proof.ts';

const assessment = assessBook(demo);
const floor = 'LARKMOOR';
const site = floorOf(proofOf(demo), floor);
const ids = ['fillLevel -Y11', 'rate FLAGON-2L', 'bond J-2', 'count FLAGON-2L'] as const;

const run: Said = {
  kind: 'run',
  version: 2,
  body: {
    floor,
    from: '2027-03-08T08:00:00Z',
    to: '2027-03-08T09:00:00Z',
    bottles: 1060,
    bottlesIn: 1060,
    by: 'the engineer',
    basis: [],
    conditions: [],
    stops: [],
  },
};

interface Step {
  readonly act: 'try' | 'correct' | 'take back' | 'punch';
  readonly id: (typeof ids)[number];
  readonly of: number;
  readonly minute: number;
  readonly good: boolean;
  readonly byRun: boolean;
}

const steps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.record<Step>({
    act: fc.constantFrom('try', 'try', 'try', 'correct', 'take back', 'punch'),
    id: fc.constantFrom(...ids),
    of: fc.nat(30),
    minute: fc.nat(400),
    good: fc.boolean(),
    byRun: fc.boolean(),
  }),
  { minLength: 8, maxLength: 16, size: 'max' },
);

const told = (all: readonly Step[]): readonly Said[] => {
  const out: Said[] = [run];
  const tries: string[] = [];
  for (const { act, id, of, minute, good, byRun } of all) {
    const at = new Date(Date.parse('2027-03-08T09:00:00Z') + 60_000 * minute).toISOString();
    const meant = tries[of % Math.max(1, tries.length)];
    const when = { at, ...(meant === undefined || act === 'try' ? {} : { supersedes: meant }) };
    if (act === 'punch') {
      const body = {
        point: `P-${of % 3}`,
        text: 'a guard is loose',
        state: good ? 'closed' : 'open',
        by: 'x',
      };
      out.push({ kind: 'punch', version: 1, body, at });
    } else if (act === 'take back') {
      out.push({ kind: 'note', version: 1, body: { text: 'wrong', by: 'x' }, ...when });
    } else {
      const { check } = checkOf(site, id);
      const more =
        byRun && id !== 'bond J-2' && id !== 'fillLevel -Y11'
          ? { from: 'r0' }
          : check.limits.length > 0
            ? { readings: [good ? '0.01 ohm' : '9 ohm'] }
            : { seen: good };
      tries.push(`r${out.length}`);
      out.push({ ...triedOn(demo, floor, check, more), ...when });
    }
  }
  return out;
};

/** A proof without the tries before those that count, which the page asks for when somebody looks. */
const bare = (proof: BookProof) => ({
  ...proof,
  floors: proof.floors.map((one) => ({
    ...one,
    checks: one.checks.map(({ earlier: _, ...check }) => check),
  })),
});

describe('a proof over what counts', () => {
  it('is the proof over all records, in whatever parts they came', () => {
    fc.assert(
      fc.property(steps, fc.nat(20), (all, cut) => {
        const records = recorded(told(all));
        const whole = bare(proofOfBook(demo, assessment, records));
        const over = (standing: Standing) => bare(proofOfRecords(demo, assessment, standing));
        const standing = standingOf(records);
        expect(over(standing)).toEqual(whole);
        const parts = standOn(standOn(nothingStands, records.slice(0, cut)), records.slice(cut));
        // of what is the same the proof is the same
        if (!parts.isWanting && !isDeepStrictEqual(parts, standing)) expect(over(parts)).toEqual(whole);
      }),
      { numRuns: 12 },
    );
  });
});

it('a floor is worked out for who looks at it, the floor that the line was built on alone', () => {
  const asked = new Set<string>();
  const floors = assessment.floors.map((one) =>
    Object.create(one, {
      utilities: {
        get: () => {
          asked.add(one.floor);
          return one.utilities;
        },
      },
    }),
  );
  const proof = proofOfBook(demo, { ...assessment, floors });
  expect([...asked]).toEqual([]);
  expect(floorOf(proof, 'OXBOW').progress).toEqual(floorOf(proofOf(demo), 'OXBOW').progress);
  expect([...asked]).toEqual(['OXBOW']);
  expect(site.carryOver.length).toBeGreaterThan(0);
  expect(floorOf(proof, floor).carryOver).toEqual(site.carryOver);
  expect([...asked]).toEqual(['OXBOW', floor]);
});
