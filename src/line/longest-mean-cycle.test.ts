import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLine } from './any-line.arbitrary.ts';
import { type Arc, type EventGraph, orderOfEvents } from './event-graph.ts';
import { lineGraph } from './line-graph.ts';
import { longestMeanCycle } from './longest-mean-cycle.ts';
import { regularTimes } from './regular-times.ts';

const arcOf = (from: number, to: number, weight: number, lag: number): Arc => ({
  from,
  to,
  weight,
  lag,
  steps: [],
});

const never = Number.NEGATIVE_INFINITY;

/** A matrix of max-plus algebra: entry i, j is the weight of the arc from j to i, one block back. */
const graphOfMatrix = (matrix: readonly (readonly number[])[]): EventGraph => ({
  events: matrix.map((_, i) => `${i + 1}`),
  arcs: matrix.flatMap((row, to) =>
    row.flatMap((weight, from) => (weight === never ? [] : [arcOf(from, to, weight, 1)])),
  ),
});

/** Every loop that visits no event twice, by walking; the greatest ratio of weight to lag, or nothing. */
const greatestRatio = ({ events, arcs }: EventGraph): number | undefined => {
  let greatest: number | undefined;
  const follow = (
    start: number,
    at: number,
    seen: ReadonlySet<number>,
    weight: number,
    lag: number,
  ): void => {
    for (const arc of arcs) {
      if (arc.from !== at) continue;
      const sum = weight + arc.weight;
      const back = lag + arc.lag;
      if (arc.to === start) greatest = Math.max(greatest ?? never, sum / back);
      // each loop once, from its lowest event
      else if (arc.to > start && !seen.has(arc.to)) {
        follow(start, arc.to, new Set([...seen, arc.to]), sum, back);
      }
    }
  };
  for (const start of events.keys()) follow(start, start, new Set([start]), 0, 0);
  return greatest;
};

/** Karp's theorem, for arcs that all look one block back, from a start that reaches every event. */
const karp = ({ events, arcs }: EventGraph): number => {
  const n = events.length;
  const longest: number[][] = [events.map(() => 0)];
  for (let k = 1; k <= n; k++) {
    longest.push(
      events.map((_, to) =>
        Math.max(
          never,
          ...arcs.filter((arc) => arc.to === to).map((arc) => longest[k - 1]![arc.from]! + arc.weight),
        ),
      ),
    );
  }
  let greatest = never;
  for (let i = 0; i < n; i++) {
    if (longest[n]![i] === never) continue;
    const ratios = longest.slice(0, n).map((walk, k) => (longest[n]![i]! - walk[i]!) / (n - k));
    greatest = Math.max(greatest, Math.min(...ratios));
  }
  return greatest;
};

const randomGraph = (weight: fc.Arbitrary<number>, mostLag: number): fc.Arbitrary<EventGraph> =>
  fc.integer({ min: 1, max: 6 }).chain((n) =>
    fc
      .array(
        fc.tuple(fc.nat(n - 1), fc.nat(n - 1), weight, fc.integer({ min: 1, max: mostLag }), fc.boolean()),
        { maxLength: 14 },
      )
      .map((drawn) => ({
        events: Array.from({ length: n }, (_, i) => `${i}`),
        // within a block only onward, so that nothing waits for itself
        arcs: drawn.map(([from, to, w, lag, inBlock]) =>
          arcOf(from, to, w, inBlock && from < to && mostLag > 1 ? 0 : lag),
        ),
      })),
  );

describe('published examples', () => {
  it('help page of a max-plus toolbox after Heidergott, Olsder and van der Woude 2006 (read): 17', () => {
    const cycle = longestMeanCycle(
      graphOfMatrix([
        [4, 10, 5, 1, 6],
        [6, 7, 13, 10, 3],
        [7, 12, never, never, 16],
        [6, 10, 8, 5, 4],
        [11, 9, 18, 8, 2],
      ]),
    )!;
    expect(cycle.period).toBe(17);
    expect(cycle.loop.map(({ weight }) => weight).sort()).toEqual([16, 18]);
  });

  it('two events, by hand: (7 + 2)/2 = 4.5', () => {
    expect(
      longestMeanCycle(
        graphOfMatrix([
          [3, 7],
          [2, 4],
        ]),
      )!.period,
    ).toBe(4.5);
  });

  it('railway of two stations, Max Plus at Work, chapter 0 (memory): a train every 4', () => {
    expect(
      longestMeanCycle(
        graphOfMatrix([
          [2, 5],
          [3, 3],
        ]),
      )!.period,
    ).toBe(4);
  });
});

describe('the longest mean cycle', () => {
  const seconds = fc.double({ min: 0, max: 100, noNaN: true });

  it('is the greatest of all loops, found one by one', () => {
    let longer = 0;
    fc.assert(
      fc.property(randomGraph(seconds, 3), (graph) => {
        const expected = greatestRatio(graph);
        const cycle = longestMeanCycle(graph);
        expect(cycle === undefined).toBe(expected === undefined);
        if (cycle === undefined || expected === undefined) return;
        if (cycle.loop.length > 1) longer += 1;
        expect(Math.abs(cycle.period - expected)).toBeLessThan(1e-9);
      }),
      { numRuns: 1000 },
    );
    // graphs whose longest loop is one event waiting for itself would prove little
    expect(longer).toBeGreaterThan(100);
  });

  it('is that of a closed chain of arcs, each once', () => {
    fc.assert(
      fc.property(randomGraph(seconds, 3), (graph) => {
        const cycle = longestMeanCycle(graph);
        if (cycle === undefined) return;
        const { loop } = cycle;
        for (const [i, arc] of loop.entries()) {
          expect(graph.arcs).toContain(arc);
          expect(loop[(i + 1) % loop.length]!.from).toBe(arc.to);
        }
        expect(new Set(loop.map(({ to }) => to)).size).toBe(loop.length);
        const weight = loop.reduce((sum, arc) => sum + arc.weight, 0);
        const lag = loop.reduce((sum, arc) => sum + arc.lag, 0);
        expect(cycle.period).toBeCloseTo(weight / lag, 12);
      }),
      { numRuns: 300 },
    );
  });

  it("is that of Karp's theorem where every arc looks one block back", () => {
    fc.assert(
      fc.property(randomGraph(seconds, 1), (graph) => {
        const cycle = longestMeanCycle(graph);
        const expected = karp(graph);
        expect(cycle === undefined).toBe(expected === never);
        if (cycle === undefined) return;
        expect(Math.abs(cycle.period - expected)).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('is the slope of the recursion in the long run', () => {
    fc.assert(
      fc.property(randomGraph(fc.integer({ min: 0, max: 20 }), 2), (graph) => {
        const cycle = longestMeanCycle(graph);
        if (cycle === undefined) return;
        const order = orderOfEvents(graph)!;
        // loops of up to twelve blocks: with whole numbers the recursion repeats itself after these many
        const turn = 27720;
        const from = 2000;
        const all: number[][] = [];
        for (let k = 0; k <= from + turn; k++) {
          const now: number[] = graph.events.map(() => 0);
          all.push(now);
          for (const event of order) {
            for (const arc of graph.arcs) {
              if (arc.to !== event) continue;
              const back = all[k - arc.lag]?.[arc.from];
              if (back !== undefined) now[event] = Math.max(now[event]!, back + arc.weight);
            }
          }
        }
        const gained = Math.max(...all[from + turn]!) - Math.max(...all[from]!);
        expect(Math.abs(gained / turn - cycle.period)).toBeLessThan(1e-9);
      }),
      { numRuns: 15 },
    );
  });

  it('does not exist where nothing comes round, nor where events of one block wait for each other', () => {
    const events = ['a', 'b'];
    expect(longestMeanCycle({ events, arcs: [arcOf(0, 1, 5, 0)] })).toBeUndefined();
    expect(longestMeanCycle({ events: [], arcs: [] })).toBeUndefined();
    const deadlock = { events, arcs: [arcOf(0, 1, 5, 0), arcOf(1, 0, 5, 0)] };
    expect(longestMeanCycle(deadlock)).toBeUndefined();
    expect(orderOfEvents(deadlock)).toBeUndefined();
  });
});

describe('the regular regime', () => {
  it('satisfies the recursion: each event at the last of its arcs, one period after its like', () => {
    fc.assert(
      fc.property(anyLine({ bounded: true }), (times) => {
        const graph = lineGraph(times)!;
        const cycle = longestMeanCycle(graph);
        if (cycle === undefined || !(cycle.period > 0)) return;
        const at = regularTimes(graph, cycle.period)!;
        for (const event of graph.events.keys()) {
          const arrivals = graph.arcs
            .filter((arc) => arc.to === event)
            .map((arc) => at[arc.from]! + arc.weight - cycle.period * arc.lag);
          expect(Math.abs(at[event]! - Math.max(...arrivals))).toBeLessThan(1e-7);
        }
        expect(at[0]).toBe(0);
      }),
      { numRuns: 300 },
    );
  });

  it('never lets an event happen before what it waits for, unlimited room or not', () => {
    fc.assert(
      fc.property(anyLine(), (times) => {
        const graph = lineGraph(times)!;
        const cycle = longestMeanCycle(graph);
        if (orderOfEvents(graph) === undefined || cycle === undefined || !(cycle.period > 0.01)) return;
        const at = regularTimes(graph, cycle.period)!;
        for (const arc of graph.arcs) {
          expect(at[arc.to]! - at[arc.from]!).toBeGreaterThan(arc.weight - cycle.period * arc.lag - 1e-7);
        }
      }),
      { numRuns: 300 },
    );
  });
});
