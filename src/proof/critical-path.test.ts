import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Activity, criticalPath, plainSpan } from './critical-path.ts';
import { workingCalendar } from './working-calendar.ts';

const activity = (id: string, duration: number, after = ''): Activity => ({
  id,
  after: [...after],
  span: plainSpan(duration),
});

const rows = (activities: readonly Activity[], ids: string) => {
  const { timed } = criticalPath(activities);
  return [...ids].map((id) => {
    const { start, end, latestStart, latestEnd, slack } = timed.get(id)!;
    return [id, start, end, latestStart, latestEnd, slack];
  });
};

describe('the critical path', () => {
  /** Teaching note "Example 1", seven steps of a prototype, tables 1 and 2; public transcription, read. */
  it('of seven steps is A B D E G, 16 hours, with one hour to spare at C and F, every time as printed', () => {
    const prototype = [
      activity('A', 6),
      activity('B', 2, 'A'),
      activity('C', 2, 'A'),
      activity('D', 3, 'B'),
      activity('F', 2, 'C'),
      activity('E', 4, 'DF'),
      activity('G', 1, 'E'),
    ];
    expect(criticalPath(prototype)).toMatchObject({ end: 16, path: [...'ABDEG'] });
    expect(rows(prototype, 'ABDEGFC')).toEqual([
      ['A', 0, 6, 0, 6, 0],
      ['B', 6, 8, 6, 8, 0],
      ['D', 8, 11, 8, 11, 0],
      ['E', 11, 15, 11, 15, 0],
      ['G', 15, 16, 15, 16, 0],
      ['F', 8, 10, 9, 11, 1],
      ['C', 6, 8, 7, 9, 1],
    ]);
  });

  /** Laser scanning machine, a textbook's exercise with its printed answer: earliest times, path and 23 weeks; read. */
  it('of eight steps is B E G, 23 weeks', () => {
    const machine = [
      activity('A', 7),
      activity('B', 8),
      activity('C', 3, 'A'),
      activity('D', 1, 'A'),
      activity('E', 4, 'B'),
      activity('F', 5, 'B'),
      activity('G', 11, 'CE'),
      activity('H', 7, 'DF'),
    ];
    const { end, path, timed } = criticalPath(machine);
    expect([end, path.join('')]).toEqual([23, 'BEG']);
    expect([...'ABCDEFGH'].map((id) => [timed.get(id)!.start, timed.get(id)!.end])).toEqual([
      [0, 7],
      [0, 8],
      [7, 10],
      [7, 8],
      [8, 12],
      [8, 13],
      [12, 23],
      [13, 20],
    ]);
  });
});

/** A small plan of which each step may wait for those before it. */
const anyPlan = fc
  .array(
    fc.record({ duration: fc.integer({ min: 0, max: 9 }), before: fc.array(fc.boolean(), { maxLength: 7 }) }),
    {
      minLength: 1,
      maxLength: 8,
    },
  )
  .map((steps) =>
    steps.map(({ duration, before }, i) => ({
      id: String(i),
      duration,
      after: before.slice(0, i).flatMap((yes, k) => (yes ? [String(k)] : [])),
    })),
  );

type Step = { readonly id: string; readonly duration: number; readonly after: readonly string[] };

/** The longest of all chains, each walked by itself. */
const longest = (steps: readonly Step[]): number => {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const chains = (step: Step): readonly number[] =>
    step.after.length === 0
      ? [step.duration]
      : step.after.flatMap((id) => chains(byId.get(id)!).map((sum) => sum + step.duration));
  return Math.max(...steps.flatMap(chains));
};

const plain = (steps: readonly Step[]) =>
  criticalPath(steps.map(({ id, duration, after }) => ({ id, after, span: plainSpan(duration) })));

describe('any small plan', () => {
  it('takes as long as the longest of all its chains, and the path is one of them', () => {
    fc.assert(
      fc.property(anyPlan, (steps) => {
        const { end, path } = plain(steps);
        expect(end).toBe(longest(steps));
        const sum = path.reduce((total, id) => total + steps[Number(id)]!.duration, 0);
        expect(sum).toBe(end);
        for (const [i, id] of path.entries()) {
          if (i > 0) expect(steps[Number(id)]!.after).toContain(path[i - 1]);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is over as late when one step takes its slack longer, and later when it takes one more than that', () => {
    fc.assert(
      fc.property(anyPlan, fc.nat(), (steps, pick) => {
        const at = pick % steps.length;
        const { end, timed } = plain(steps);
        const { slack } = timed.get(String(at))!;
        const longer = (more: number): number =>
          longest(steps.map((step, i) => (i === at ? { ...step, duration: step.duration + more } : step)));
        expect([longer(slack), longer(slack + 1)]).toEqual([end, end + 1]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a working calendar', () => {
  /** Friday 16 April 2027, eight hours a day. */
  const calendar = workingCalendar({
    hours: 8 * 3600,
    from: Date.UTC(2027, 3, 16) / 86_400_000,
    weekends: false,
  });
  const hour = (days: number, hours: number): number => days * 86_400 + hours * 3600;

  it('lets work rest over night and over Saturday and Sunday', () => {
    expect(calendar.over(0, 3600)).toBe(hour(0, 9));
    expect(calendar.over(0, 8 * 3600)).toBe(hour(0, 16));
    expect(calendar.over(0, 9 * 3600)).toBe(hour(3, 9));
    expect(calendar.over(hour(0, 15), 2 * 3600)).toBe(hour(3, 9));
    expect(calendar.next(hour(1, 12))).toBe(hour(3, 8));
  });

  it('gives back the last moment at which work can begin', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 * 3600 }),
        fc.integer({ min: 0, max: 6 * 86_400 }),
        (work, start) => {
          const end = calendar.over(start, work);
          const begun = calendar.begun(end, work);
          expect(begun).toBeGreaterThanOrEqual(start);
          expect(calendar.over(begun, work)).toBe(end);
          expect(calendar.over(begun + 1, work)).toBeGreaterThan(end);
        },
      ),
      { numRuns: 300 },
    );
  });
});
