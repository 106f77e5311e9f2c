import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { anyShiftLine } from './any-shift-line.arbitrary.ts';
import { CalmPass } from './calm-pass.ts';
import { meanOf } from './sampled.ts';
import type { FallingSupply, ShiftLine } from './shift-line.ts';
import { ShiftMachine } from './shift-machine.ts';

const seeds = fc.integer({ min: 0, max: 1e9 });

interface Ground {
  readonly ways: 'accumulate' | 'stand';
  readonly supply: FallingSupply | null;
}

const anyGround: fc.Arbitrary<Ground> = fc.record({
  ways: fc.constantFrom('accumulate' as const, 'stand' as const),
  supply: fc.option(
    fc.record({
      drawn: fc.constant([0, 0.05, 0.2]),
      seconds: fc.double({ min: 0, max: 4, noNaN: true }).map((most) => [0, 0.3 * most, most]),
      perBottle: fc.constant(0.001),
      makeUp: fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
      usable: fc.constantFrom(0.15, Number.POSITIVE_INFINITY),
    }),
  ),
});

/** The line with rows that are sets and times that do not vary, but for the fill. */
const steady = (line: ShiftLine, { ways, supply }: Ground): ShiftLine => {
  const { load, washer, closing, takeOff, fill } = line;
  return {
    ...line,
    core: 'washer',
    ...(load === undefined ? {} : { load: { ...load, seconds: meanOf(load.seconds) } }),
    washer: { ...washer!, row: fill!.lanes },
    wayRoom: Math.max(line.wayRoom, fill!.lanes),
    conveyors: line.conveyors.map((piece) => ({ ...piece, accumulates: ways === 'accumulate' })),
    fill: { ...fill!, ...(supply === null ? {} : { supply }) },
    closing: {
      station: 'K',
      heads: 1,
      room: 2 * fill!.lanes,
      transit: 1,
      rejected: 0.01,
      ...closing,
      perBottle: closing === undefined ? 1 : meanOf(closing.perBottle),
    },
    takeOff: {
      station: 'T',
      by: 'operator',
      room: 3 * fill!.lanes,
      transit: 2,
      ...takeOff,
      perBottle: takeOff === undefined ? 1 : meanOf(takeOff.perBottle),
    },
  };
};

const moments = {
  rows: ['put', 'loaded', 'stroke', 'whyStroke', 'strokeFor', 'stroked', 'ready', 'out', 'fallen', 'arrived'],
  sets: [
    'bottles',
    'rejected',
    'row',
    'start',
    'opened',
    'filled',
    'released',
    'cleared',
    'capped',
    'left',
    'taken',
  ],
} as const;

/** s in a shift of some thousand: the same seconds, added up in another order */
const rounding = 1e-8;

const near = (found: Float64Array, expected: Float64Array): void => {
  expect(found.length).toBe(expected.length);
  found.forEach((value, i) => {
    if (value !== expected[i])
      expect(Math.abs(value - expected[i]!)).toBeLessThan(rounding * (1 + Math.abs(value)));
  });
};

/** Compared in a loop: a matcher walks through every element many times slower. */
const same = (found: Float64Array, expected: Float64Array, count: number): void => {
  for (let i = 0; i < count; i++) if (!Object.is(found[i], expected[i])) expect(found[i]).toBe(expected[i]);
};

describe('rows to which nothing happens, passed many at once', () => {
  it('have the same moments to the last bit, the same bottles, and the same accounts, as row by row', () => {
    const pass = vi.spyOn(CalmPass.prototype, 'pass');
    let rows = 0;
    fc.assert(
      fc.property(anyShiftLine(), anyGround, seeds, (any, ground, seed) => {
        const line = steady(any, ground);
        const machine = new ShiftMachine(line);
        const plain = new ShiftMachine(line, { rowByRow: true });
        // the second shift begins on what the first left in memory
        for (const shift of [0, 1]) {
          machine.run(seed, shift);
          plain.run(seed, shift);
          expect(machine.rowCount).toBe(plain.rowCount);
          expect(machine.setCount).toBe(plain.setCount);
          expect(machine.counts).toEqual(plain.counts);
          for (const name of moments.rows) {
            const { rows } = machine.events;
            same(rows[name], plain.events.rows[name], machine.rowCount);
          }
          for (const name of moments.sets) {
            const { sets } = machine.events;
            same(sets[name], plain.events.sets[name], machine.setCount);
          }
          near(machine.clocks.spent, plain.clocks.spent);
          near(machine.clocks.strikes, plain.clocks.strikes);
          near(machine.clocks.stood, plain.clocks.stood);
          near(machine.core.spent, plain.core.spent);
          near(machine.waiting, plain.waiting);
          expect(machine.drawnMost).toBe(plain.drawnMost);
          expect(machine.ranDry).toEqual(plain.ranDry);
          near(machine.contacts!.sums, plain.contacts!.sums);
          rows += machine.rowCount;
        }
      }),
      { numRuns: 40 },
    );
    const calm = pass.mock.results.reduce((sum, { value }, i) => sum + value - pass.mock.calls[i]![0], 0);
    // enough of them that what is held together here is not one with itself
    expect(calm).toBeGreaterThan(0.1 * rows);
    pass.mockRestore();
  });
});
