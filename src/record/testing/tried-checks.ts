import fc from 'fast-check';
import { appendRecord, type Chain, startChain } from '../append-record.ts';
import type { Envelope } from '../envelope.ts';

/** What one device does next. */
interface Step {
  readonly writer: number;
  readonly act: 'try' | 'try of a run' | 'correct' | 'take back' | 'note';
  readonly check: number;
  /** Which of the tries so far is meant. */
  readonly of: number;
  /** Minutes by which its clock went on, or back. */
  readonly minutes: number;
}

const start = Date.parse('2027-03-08T09:00:00Z');

const bodyOf = ({ act, check }: Step): unknown => {
  if (act === 'note' || act === 'take back') return { text: act, by: 'the engineer' };
  const from = act === 'try of a run' ? { from: 'run-1' } : {};
  return { check: `check-${check}`, floor: 'OXBOW', by: 'the engineer', basis: [], seen: true, ...from };
};

const recordsOf = (book: string, steps: readonly Step[]): readonly Envelope[] => {
  const chains = new Map<number, { readonly chain: Chain; readonly at: number }>();
  const tries: string[] = [];
  return steps.map((step, i) => {
    const { writer, act, of, minutes } = step;
    const before = chains.get(writer) ?? { chain: startChain(book, `tablet-${writer}`), at: start };
    const at = before.at + 60_000 * minutes;
    const meant = tries[of % Math.max(1, tries.length)];
    const replaces = (act === 'correct' || act === 'take back') && meant !== undefined;
    const kind = act === 'note' || act === 'take back' ? 'note' : 'check';
    // ids that are not in the order of their making
    const id = `r${(i * 7919) % 10_007}`;
    const done = appendRecord(before.chain, {
      id,
      revision: 1,
      kind,
      version: kind === 'check' ? 2 : 1,
      deviceTime: new Date(at).toISOString(),
      ...(replaces ? { supersedes: meant } : {}),
      body: bodyOf(step),
    });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    if (kind === 'check') tries.push(id);
    chains.set(writer, { chain: done.value.chain, at });
    return done.value.record;
  });
};

/** Sets of records in which three devices try, correct and take back, with clocks that go as they like. */
export const triedChecks = (book: string, most: number): fc.Arbitrary<readonly Envelope[]> =>
  fc
    .array(
      fc.record<Step>({
        writer: fc.nat(2),
        act: fc.constantFrom('try', 'try', 'try of a run', 'correct', 'take back', 'note'),
        check: fc.nat(3),
        of: fc.nat(50),
        minutes: fc.constantFrom(-100, -1, 0, 0, 1, 5, 70),
      }),
      { maxLength: most, size: 'max' },
    )
    .map((steps) => recordsOf(book, steps));
