import { describe, expect, it } from 'vitest';
import type { Patch } from '../book/index.ts';
import { demoWith, floorOf, proofOf, recorded, type Said } from './testing/demo-proof.ts';

const wait = (state: string, more: object = {}, at?: string): Said => ({
  kind: 'wait',
  version: 1,
  body: { wait: 'W-CAPS', state, by: 'the plant manager', ...more },
  ...(at === undefined ? {} : { at }),
});

const waits = [
  { tag: 'W-CAPS', what: 'caps of the second lot', kind: 'caps', before: 'product', duration: '3 day' },
  {
    tag: 'W-PERMIT',
    what: 'permit to let caustic go',
    kind: 'permit',
    before: 'accepted',
    duration: '60 day',
  },
];

const without = (...patches: readonly Patch[]) => demoWith({ path: '/waits', value: undefined }, ...patches);
const still = without();
const withWaits = demoWith({ path: '/waits', value: waits });
const daysOf = (said: readonly Said[], book = withWaits) =>
  floorOf(proofOf(book, recorded(said)), 'LARKMOOR').days;
const stepOf = (days: ReturnType<typeof daysOf>, of: string) => days.steps.find((one) => one.of === of)!;
const note: Said = { kind: 'note', version: 1, body: { text: 'begun', by: 'the engineer' } };

describe('the plan of days', () => {
  const days = floorOf(proofOf(still), 'LARKMOOR').days;
  const checks = days.steps.filter(({ sort }) => sort === 'check');

  it('holds every check that is not settled once, one after the other for a crew of one, in working hours', () => {
    expect(checks).toHaveLength(floorOf(proofOf(still), 'LARKMOOR').checks.length);
    for (const [i, step] of checks.entries()) {
      const before = checks[i - 1];
      if (before !== undefined) expect(step.start).toBeGreaterThanOrEqual(before.end);
      expect(step.start % 86_400).toBeGreaterThanOrEqual(8 * 3600);
      expect((step.end - 1) % 86_400).toBeLessThan(16 * 3600);
    }
  });

  it('begins on the day of the visit, a Monday, and leaves out Saturday and Sunday', () => {
    expect([days.from, checks[0]?.from]).toEqual(['2027-04-19', '2027-04-19']);
    // 19 April 2027 is a Monday: that week's end are the 24th and the 25th
    expect(checks.map(({ from }) => from)).not.toContain('2027-04-24');
    expect(checks.map(({ from }) => from)).not.toContain('2027-04-25');
  });

  it('waits for the laboratory before the hand-over, and says so on its path', () => {
    const late = stepOf(days, 'rinseResidue +WASH.Z4');
    const result = days.steps.find(({ sort }) => sort === 'result')!;
    expect(result).toMatchObject({ of: late.of, usual: true, start: late.end });
    const training = stepOf(days, 'training');
    expect(training.start).toBeGreaterThanOrEqual(result.end);
    expect(days.path).toContainEqual({ sort: 'result', of: late.of });
  });

  it('is shorter with a crew of two, and never shorter than what the longest check takes', () => {
    const two = daysOf([note], without({ path: '/floors/1/work', value: { crew: 2 } }));
    expect(two.end).toBeLessThan(days.end);
    expect(two.work).toBe(days.work);
    expect(stepOf(two, 'training').start).toBeGreaterThanOrEqual(
      two.steps.find(({ sort }) => sort === 'result')!.end,
    );
  });

  it('takes the duration that the book says, else one of common practice, marked', () => {
    const own = daysOf(
      [note],
      without({ path: '/line/checks', value: [{ tag: 'training', duration: '2 h' }] }),
    );
    const { start, end, usual } = stepOf(own, 'training');
    expect([end - start <= 86_400, usual]).toEqual([true, false]);
    expect(stepOf(days, 'training').usual).toBe(true);
    expect(days.work - own.work).toBe(2 * 3600);
  });

  it('names no day where the book and the caller name none', () => {
    const bare = daysOf([note], without({ path: '/about/dates', value: undefined }));
    expect([bare.from, bare.day, stepOf(bare, 'training').from]).toEqual([undefined, undefined, undefined]);
    expect(bare.end).toBeGreaterThan(0);
  });
});

describe('a wait', () => {
  it('that ends after everything else moves the signature, and one with days to spare does not', () => {
    const days = daysOf([note]);
    expect(days.moving).toEqual(['W-PERMIT']);
    expect(days.path).toEqual([{ sort: 'wait', of: 'W-PERMIT' }]);
    expect(days.end).toBe(60 * 86_400);
    const { slack } = stepOf(days, 'W-CAPS');
    const late = daysOf([
      wait('asked', { due: new Date(Date.UTC(2027, 3, 21) + 1000 * slack).toISOString().slice(0, 10) }),
    ]);
    // by its slack later it ends everything no later; by a day more it does
    expect(late.end).toBe(days.end);
  });

  it('moves the end by a day with a day more than its slack', () => {
    const caps = (due: string) =>
      daysOf([wait('asked', { due })], demoWith({ path: '/waits', value: waits.slice(0, 1) }));
    const one = caps('2027-05-10');
    expect(one.moving).toEqual(['W-CAPS']);
    expect(caps('2027-05-11').end - one.end).toBe(86_400);
    expect(caps('2027-04-19').moving).toEqual([]);
  });

  it('holds back its stage until it is granted, and is gone then', () => {
    const asked = daysOf([wait('asked', { due: '2027-05-10' })]);
    expect(stepOf(asked, 'fillLevel -Y11').start).toBeGreaterThanOrEqual(22 * 86_400);
    expect(stepOf(asked, 'fillLevel -Y11').from).toBe('2027-05-11');
    const here = daysOf([wait('asked', { due: '2027-05-10' }), wait('delivered')]);
    expect(here.steps.some(({ of }) => of === 'W-CAPS')).toBe(false);
    expect(stepOf(here, 'fillLevel -Y11').start).toBeLessThan(stepOf(asked, 'fillLevel -Y11').start);
  });

  it('is counted from the day on which it was asked for', () => {
    const since = (on: string) =>
      stepOf(
        daysOf([wait('asked', { on })], demoWith({ path: '/waits', value: waits.slice(0, 1) })),
        'W-CAPS',
      ).end;
    expect([since('2027-04-17'), since('2027-04-01')]).toEqual([86_400, 0]);
  });

  it('of which nobody says how long it takes is told, and one whose day is past', () => {
    const open = daysOf(
      [note],
      demoWith({
        path: '/waits',
        value: [
          { tag: 'W-1', what: 'interpreter', before: 'handover' },
          { tag: 'W-2', what: 'drain permit', due: '2027-04-01' },
        ],
      }),
    );
    expect([open.untimed, open.overdue]).toEqual([['W-1'], ['W-2']]);
  });

  it('stands as its last record says, on the floor that waits alone', () => {
    const state = (said: readonly Said[]) => proofOf(withWaits, recorded(said)).waits[0]!;
    expect(state([note])).toMatchObject({ wait: 'W-CAPS', state: 'open', floor: 'LARKMOOR' });
    expect(state([wait('asked', { due: '2027-04-20' }), wait('refused', { why: 'no stock' })])).toMatchObject(
      {
        state: 'refused',
        why: 'no stock',
        due: '2027-04-20',
      },
    );
    expect(floorOf(proofOf(withWaits), 'OXBOW').days.steps.some(({ sort }) => sort === 'wait')).toBe(false);
  });

  it('that the book does not have is told, not dropped', () => {
    const { problems } = proofOf(
      withWaits,
      recorded([{ ...wait('asked'), body: { wait: 'W-9', state: 'asked', by: 'x', floor: 'NOWHERE' } }]),
    );
    expect(problems.map(({ code }) => code)).toEqual(['PROOF_WAIT_UNKNOWN', 'PROOF_FLOOR_UNKNOWN']);
  });
});

describe('a clock that was set back a year', () => {
  it('turns no chain round: the later record counts, and the doubt is told', () => {
    const { waits: stand, doubts } = proofOf(
      withWaits,
      recorded([
        wait('asked', {}, '2027-04-19T09:00:00Z'),
        wait('delivered', {}, '2026-04-19T10:00:00Z'),
        wait('refused', {}, '2026-04-19T10:05:00Z'),
      ]),
    );
    expect(stand[0]?.state).toBe('refused');
    expect(doubts.map(({ code, given }) => [code, given])).toEqual([
      ['PROOF_CLOCK_BACK', '2026-04-19T10:00:00Z'],
      ['PROOF_CLOCK_BACK', '2026-04-19T10:05:00Z'],
    ]);
  });
});
