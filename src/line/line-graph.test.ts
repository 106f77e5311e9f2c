import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Stored } from '../hydraulics/stored.ts';
import { anyLine } from './any-line.arbitrary.ts';
import { cycleBars } from './cycle-bars.ts';
import { deadlocked, type EventGraph, orderOfEvents } from './event-graph.ts';
import { hourRate } from './hour-rate.ts';
import { type LineGraph, lineGraph, mostInBlock } from './line-graph.ts';
import type { LineTimes } from './line-times.ts';
import { longestMeanCycle } from './longest-mean-cycle.ts';
import { fallingSupply } from './testing/falling-supply.ts';
import { simulatedLine } from './testing/simulated-line.ts';
import { walkLine } from './walk-line.ts';
import type { Walk } from './walked-rows.ts';

/**
 * Line of the check cases, times in s. Source: recursion and list of its loops worked apart from this program, eight
 * sets of times, both ways agree (computed); 16 s and three bottles are 675 an hour (common practice).
 */
interface Case {
  readonly tm: number;
  readonly tw: number;
  readonly te: number;
  readonly tf: number;
  readonly td: number;
  readonly tx: number;
  readonly n: number;
  readonly tc: number;
  readonly q: number;
  readonly interlock: boolean;
}
const base: Case = { tm: 4, tw: 12, te: 2, tf: 8, td: 1, tx: 2, n: 3, tc: 4, q: 1, interlock: true };

const timesOf = (c: Case): LineTimes => ({
  washer: { station: 'washer', row: c.n, stroke: c.tm, dwell: c.tw },
  way: [],
  wayRoom: Number.POSITIVE_INFINITY,
  fill: {
    station: 'fill',
    lanes: c.n,
    travelIn: c.te,
    lift: 0,
    lag: 0,
    filling: c.tf,
    drip: c.td,
    lower: 0,
    clearOut: c.tx,
  },
  closing: { station: 'closing', heads: 1, perBottle: c.tc, room: c.q * c.n },
  holds: c.interlock ? [{ rule: 'H1', until: 'fill end' }] : [],
});

/** Last caps of the first sets, by the recursion of the source written out. */
const lastCaps = (c: Case, sets: number): number[] => {
  const x1: number[] = [];
  const x3: number[] = [];
  const x4: number[] = [];
  const x5: number[] = [];
  const never = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < sets; k++) {
    const washed = k === 0 ? 0 : x1[k - 1]! + c.tm + c.tw;
    x1.push(Math.max(washed, c.interlock ? (x3[k - 1] ?? never) : never));
    const x2 = Math.max(x1[k]! + c.tm, x4[k - 1] ?? never) + c.te;
    x3.push(x2 + c.tf);
    x4.push(Math.max(x3[k]! + c.td, x5[k - c.q] ?? never) + c.tx);
    x5.push(Math.max(x4[k]!, x5[k - 1] ?? never) + c.n * c.tc);
  }
  return x5;
};

/** The same, read off the event graph: each event as early as its arcs allow. */
const walkGraph = (graph: EventGraph, blocks: number): number[][] => {
  const order = orderOfEvents(graph)!;
  const at: number[][] = [];
  for (let k = 0; k < blocks; k++) {
    const now: number[] = graph.events.map(() => 0);
    at.push(now);
    for (const event of order) {
      for (const arc of graph.arcs) {
        if (arc.to !== event) continue;
        const from = at[k - arc.lag]?.[arc.from];
        if (from !== undefined) now[event] = Math.max(now[event]!, from + arc.weight);
      }
    }
  }
  return at;
};

const graphOf = (times: LineTimes): LineGraph => {
  const graph = lineGraph(times);
  if (graph === undefined) throw new Error('the block is too large');
  return graph;
};

/** A supply that gives every row the same fill. */
const constantSupply = (filling: number) => {
  const full: Stored = { drawn: 0, vessel: 0, pumping: false };
  return {
    start: full,
    rest: (stored: Stored) => stored,
    row: (stored: Stored) => ({ fillTime: filling, drawTime: filling, drawn: 0, stored }),
  };
};

const walkOf = (times: LineTimes, graph: LineGraph, duration: number): Walk =>
  walkLine(times, graph, constantSupply(times.fill!.filling), duration);

describe('the line of the check cases, to 1e-9', () => {
  const cases: readonly [name: string, times: Case, period: number, rate: number, loop: readonly string[]][] =
    [
      ['washer', base, 16, 675, ['stroke', 'dwell']],
      ['interlock', { ...base, tf: 13 }, 19, 568.421, ['stroke', 'travelIn', 'lift', 'lag', 'fill']],
      [
        'filler',
        { ...base, tf: 13, interlock: false },
        18,
        600,
        ['travelIn', 'lift', 'lag', 'fill', 'drip', 'lower', 'clearOut'],
      ],
      ['heads with room for one set', { ...base, tc: 5.5 }, 18.5, 583.784, ['clearOut', 'cap']],
      ['heads with room for two sets', { ...base, tc: 5.5, q: 2 }, 16.5, 654.545, ['cap']],
    ];

  it.each(cases)('%s: period, rate, and the loop that decides', (_, times, period, rate, loop) => {
    const graph = graphOf(timesOf(times));
    const cycle = longestMeanCycle(graph)!;
    expect(Math.abs(cycle.period - period)).toBeLessThan(1e-9);
    // printed to three decimals
    expect(Math.abs((3600 * graph.bottles) / cycle.period - rate)).toBeLessThan(5.1e-4);
    expect(cycle.loop.flatMap(({ steps }) => steps.map(({ step }) => step)).sort()).toEqual([...loop].sort());
  });

  it('closes its first four sets at 29, 45, 61 and 77 s', () => {
    expect(lastCaps(base, 4)).toEqual([29, 45, 61, 77]);
    const graph = graphOf(timesOf(base));
    const caps = walkGraph(graph, 4).map((at) => at[graph.capped[0]!]!);
    for (const [k, time] of [29, 45, 61, 77].entries()) expect(Math.abs(caps[k]! - time)).toBeLessThan(1e-9);
    const outs = walkOf(timesOf(base), graph, 40).fills.map(({ out }) => out);
    expect(outs.slice(0, 3)).toEqual([29, 45, 61]);
  });

  it.each(cases)('%s: every last cap of 200 sets is that of the recursion', (_, times) => {
    const graph = graphOf(timesOf(times));
    const expected = lastCaps(times, 200);
    const caps = walkGraph(graph, 200).map((at) => at[graph.capped[0]!]!);
    for (let k = 0; k < 200; k++) expect(Math.abs(caps[k]! - expected[k]!)).toBeLessThan(1e-9);
  });

  it('whatever the times, the recursion comes to the period of the longest loop', () => {
    const time = fc.integer({ min: 1, max: 200 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(
        fc.record({
          tm: time,
          tw: time,
          te: time,
          tf: time,
          td: time,
          tx: time,
          n: fc.integer({ min: 1, max: 6 }),
          tc: time,
          q: fc.integer({ min: 1, max: 3 }),
          interlock: fc.boolean(),
        }),
        (c) => {
          const loops = [
            c.tm + c.tw,
            c.interlock ? c.tm + c.te + c.tf : 0,
            c.te + c.tf + c.td + c.tx,
            c.n * c.tc,
            (c.tx + c.n * c.tc) / c.q,
          ];
          const { period } = longestMeanCycle(graphOf(timesOf(c)))!;
          expect(Math.abs(period - Math.max(...loops))).toBeLessThan(1e-9);
          const caps = lastCaps(c, 1206);
          // six blocks hold a whole number of turns of any loop of one, two or three blocks
          expect(Math.abs((caps[1205]! - caps[1199]!) / 6 - period)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe('machines that are simulated bottle by bottle', () => {
  it('put out every set at the moment that the graph says, rows and lanes as they may be', () => {
    let stood = 0;
    let went = 0;
    fc.assert(
      fc.property(anyLine(), (times) => {
        const graph = graphOf(times);
        const outs = simulatedLine(times, 4 * graph.fills + 8);
        if (orderOfEvents(graph) === undefined) {
          stood += 1;
          expect(deadlocked(graph).length).toBeGreaterThan(0);
          expect(outs.length).toBeLessThan(graph.fills);
          return;
        }
        went += 1;
        expect(deadlocked(graph)).toEqual([]);
        const last = [graph.takenOff, graph.capped, graph.cleared].find((events) => events.length > 0)!;
        const walked = walkGraph(graph, 4 + Math.ceil(8 / graph.fills)).flatMap((at) =>
          last.map((event) => at[event]!),
        );
        for (const [i, out] of outs.entries()) expect(Math.abs(walked[i]! - out)).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
    // both kinds must have been drawn, else the test is blind to one
    expect(stood).toBeGreaterThan(5);
    expect(went).toBeGreaterThan(100);
  });

  it('rows of four before six lanes: three indexes of 12 s give twelve bottles', () => {
    const times: LineTimes = {
      ...timesOf(base),
      washer: { station: 'washer', row: 4, stroke: 3, dwell: 9 },
      fill: { ...timesOf(base).fill!, lanes: 6 },
      closing: { station: 'closing', heads: 3, perBottle: 2, room: 12 },
      holds: [],
    };
    const graph = graphOf(times);
    expect([graph.bottles, graph.indexes, graph.fills]).toEqual([12, 3, 2]);
    expect(longestMeanCycle(graph)!.period).toBeCloseTo(36, 9);
    const outs = simulatedLine(times, 41);
    expect((outs[40]! - outs[20]!) / 20).toBeCloseTo(18, 9);
  });

  it('run at the period of the longest loop in the long run', () => {
    fc.assert(
      fc.property(anyLine({ bounded: true }), (times) => {
        const graph = graphOf(times);
        if (orderOfEvents(graph) === undefined) return;
        const cycle = longestMeanCycle(graph);
        if (cycle === undefined) return;
        const blocks = cycle.loop.reduce((sum, { lag }) => sum + lag, 0);
        const settled = 150;
        const outs = simulatedLine(times, (settled + 12 * blocks) * graph.fills);
        const gained = outs.at(-1)! - outs[outs.length - 1 - 12 * blocks * graph.fills]!;
        // a loop a hair shorter than the longest may still be dying out
        expect(Math.abs(gained / (12 * blocks) - cycle.period)).toBeLessThan(0.02 + 0.01 * cycle.period);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the walk, row by row', () => {
  it('with a fill that never changes has the period of the longest mean cycle, to 1e-9', () => {
    for (const [row, lanes] of [
      [3, 3],
      [4, 6],
      [6, 4],
      [4, 2],
    ] as const) {
      const times: LineTimes = {
        ...timesOf(base),
        washer: { station: 'washer', row, stroke: 4, dwell: 5 },
        fill: { ...timesOf(base).fill!, lanes, lag: 0.3, filling: 13 },
        closing: { station: 'closing', heads: 2, perBottle: 3, room: 2 * lanes },
      };
      const graph = graphOf(times);
      const { period } = longestMeanCycle(graph)!;
      const { fills } = walkOf(times, graph, 4000);
      const n = fills.length;
      const blocks = 20;
      const gained = fills[n - 1]!.out - fills[n - 1 - blocks * graph.fills]!.out;
      expect(Math.abs(gained / blocks - period)).toBeLessThan(1e-9);
    }
  });

  it('lets each set out when the simulated machines do', () => {
    fc.assert(
      fc.property(anyLine(), (times) => {
        const graph = graphOf(times);
        if (orderOfEvents(graph) === undefined) return;
        const outs = simulatedLine(times, 30);
        const { fills } = walkOf(times, graph, outs[19]! - outs[0]!);
        expect(fills.length).toBeGreaterThanOrEqual(20);
        for (const [i, { out }] of fills.slice(0, 30).entries()) {
          expect(Math.abs(out - outs[i]!)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('takes each fill from the supply, not from the times, and rests the tank in between', () => {
    fc.assert(
      fc.property(anyLine(), fc.double({ min: 0, max: 1, noNaN: true }), (times, slower) => {
        const graph = graphOf(times);
        if (orderOfEvents(graph) === undefined) return;
        // every row of bottles leaves the tank lower and the next one slower
        const fillTime = (set: number): number => 5 + slower * set;
        const outs = simulatedLine(times, 30, fillTime);
        const rests: number[] = [];
        const { fills } = walkLine(
          times,
          graph,
          {
            ...fallingSupply(fillTime),
            rest: (stored, seconds) => {
              rests.push(seconds);
              return stored;
            },
          },
          outs[19]! - outs[0]!,
        );
        expect(fills.length).toBeGreaterThanOrEqual(20);
        for (const [i, fill] of fills.slice(0, 30).entries()) {
          expect(Math.abs(fill.out - outs[i]!)).toBeLessThan(1e-9);
          expect(fill.fillTime).toBe(fillTime(i));
          const before = fills[i - 1];
          const rest = before === undefined ? 0 : fill.opened - before.opened - 0.9 * before.fillTime;
          expect(Math.abs(rests[i]! - rest)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('says where it stood still when a fill never ends', () => {
    const times = timesOf(base);
    const graph = graphOf(times);
    let rows = 0;
    const supply = constantSupply(8);
    const { fills, stuck } = walkLine(
      times,
      graph,
      { ...supply, row: (stored) => (++rows > 5 ? { stuck: true, lanes: ['L1'] } : supply.row(stored)) },
      3600,
    );
    expect(fills.length).toBe(5);
    // opened 6 s after its stroke, the sixth of every 16 s
    expect(stuck).toEqual({ at: 86, lanes: ['L1'] });
  });

  it('counts the bottles of an hour: 675 in the mean and in the worst set', () => {
    const times = timesOf(base);
    const walk = walkOf(times, graphOf(times), 3600);
    const { mean, worst } = hourRate(walk, 3, 3600);
    expect(mean * 3600).toBeCloseTo(675, 9);
    expect(worst * 3600).toBeCloseTo(675, 9);
  });
});

describe('the bars of a cycle', () => {
  const within = (times: LineTimes): void => {
    const graph = graphOf(times);
    if (orderOfEvents(graph) === undefined) return;
    const cycle = longestMeanCycle(graph);
    if (cycle === undefined || cycle.period < 0.01) return;
    for (const { from, to } of cycleBars(graph, cycle.period)) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeGreaterThan(from);
      expect(to).toBeLessThanOrEqual(cycle.period);
    }
  };

  it('lie in the period, whatever the line', () => {
    fc.assert(fc.property(anyLine(), within), { numRuns: 150 });
  });

  it('never show a station in two places at once', () => {
    fc.assert(
      fc.property(anyLine(), (times) => {
        const graph = graphOf(times);
        if (orderOfEvents(graph) === undefined) return;
        const cycle = longestMeanCycle(graph);
        if (cycle === undefined || cycle.period < 0.01) return;
        for (const station of ['W', 'F', 'K', 'T']) {
          const bars = cycleBars(graph, cycle.period).filter((bar) => bar.station === station);
          for (let i = 1; i < bars.length; i++) {
            expect(bars[i]!.from).toBeGreaterThanOrEqual(bars[i - 1]!.to - 1e-6);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('add up to the work of each station, and with its waits to the whole period', () => {
    fc.assert(
      fc.property(anyLine({ bounded: true }), (times) => {
        const graph = graphOf(times);
        const cycle = longestMeanCycle(graph);
        if (orderOfEvents(graph) === undefined || cycle === undefined || cycle.period < 0.01) return;
        const { washer, fill, closing, takeOff } = times;
        const total = (station: string, state: 'works' | 'waits'): number =>
          cycleBars(graph, cycle.period)
            .filter((bar) => bar.station === station && bar.state === state)
            .reduce((sum, { from, to }) => sum + to - from, 0);
        const { station: _, lanes, ...parts } = fill!;
        const work: Record<string, number> = {
          W: graph.indexes * (washer!.stroke + washer!.dwell),
          F: graph.fills * Object.values(parts).reduce((sum, seconds) => sum + seconds, 0),
        };
        if (closing !== undefined) {
          work.K = graph.fills * Math.ceil(lanes / closing.heads) * closing.perBottle;
        }
        if (takeOff !== undefined) work.T = (graph.fills * lanes) / takeOff.rate;
        for (const [station, seconds] of Object.entries(work)) {
          // bars under 1e-9 s are left out
          expect(Math.abs(total(station, 'works') - seconds)).toBeLessThan(1e-6);
          expect(Math.abs(seconds + total(station, 'waits') - cycle.period)).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('show the washer of the check case held for 3 s by the fill, and the fill waiting for bottles', () => {
    const graph = graphOf(timesOf({ ...base, tf: 13 }));
    const bars = cycleBars(graph, 19);
    const waits = bars.filter(({ state }) => state === 'waits');
    expect(waits.find(({ station }) => station === 'washer')).toEqual({
      station: 'washer',
      state: 'waits',
      what: 'H1',
      waitsFor: 'fill',
      from: 16,
      to: 19,
    });
    // 2 + 13 + 1 + 2 s of work from 4 s on: clear of bottles at 22 s, that is 3 s, until the stroke ends at 4 s
    expect(waits.find(({ station }) => station === 'fill')).toMatchObject({
      what: 'bottles',
      waitsFor: 'washer',
      from: 3,
      to: 4,
    });
  });
});

describe('a block', () => {
  it('is the least number of bottles that is whole rows and whole fills', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), (row, lanes) => {
        const times = timesOf({ ...base, n: lanes });
        const graph = graphOf({ ...times, washer: { ...times.washer!, row } });
        let bottles = row;
        while (bottles % lanes !== 0) bottles += row;
        expect([graph.bottles, graph.indexes * row, graph.fills * lanes]).toEqual([
          bottles,
          bottles,
          bottles,
        ]);
      }),
    );
  });

  it(`of more than ${mostInBlock} indexes or fills is refused`, () => {
    const times = timesOf({ ...base, n: 67 });
    expect(lineGraph({ ...times, washer: { ...times.washer!, row: 64 } })).toBeUndefined();
  });

  it('without a fill station takes the washer straight to the heads', () => {
    const { fill: _, ...times } = timesOf({ ...base, tc: 6 });
    const graph = graphOf(times);
    expect(longestMeanCycle(graph)!.period).toBeCloseTo(18, 9);
    // stroke 4 s and three caps of 6 s
    expect(walkGraph(graph, 1)[0]![graph.capped[0]!]).toBeCloseTo(22, 9);
  });
});

describe('laws of the line', () => {
  const periodOf = (times: LineTimes): number => {
    const graph = graphOf(times);
    return (longestMeanCycle(graph)?.period ?? 0) / graph.bottles;
  };

  it('times that are all twice as long halve the rate', () => {
    fc.assert(
      fc.property(anyLine(), (times) => {
        if (orderOfEvents(graphOf(times)) === undefined) return;
        const { washer, fill, closing, takeOff } = times;
        const { station, lanes, ...parts } = fill!;
        const twice = Object.fromEntries(
          Object.entries(parts).map(([name, seconds]) => [name, 2 * seconds]),
        ) as typeof parts;
        const slow: LineTimes = {
          ...times,
          washer: { ...washer!, stroke: 2 * washer!.stroke, dwell: 2 * washer!.dwell },
          way: times.way.map((piece) => ({ ...piece, seconds: 2 * piece.seconds })),
          fill: { station, lanes, ...twice },
          ...(closing === undefined ? {} : { closing: { ...closing, perBottle: 2 * closing.perBottle } }),
          ...(takeOff === undefined ? {} : { takeOff: { ...takeOff, rate: takeOff.rate / 2 } }),
        };
        expect(Math.abs(periodOf(slow) - 2 * periodOf(times))).toBeLessThan(1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('more room, a dropped hold or a shorter fill never slows the line', () => {
    fc.assert(
      fc.property(anyLine(), fc.integer({ min: 0, max: 30 }), (times, room) => {
        if (orderOfEvents(graphOf(times)) === undefined) return;
        const before = periodOf(times) + 1e-9;
        const { fill, closing, takeOff } = times;
        expect(periodOf({ ...times, wayRoom: times.wayRoom + room })).toBeLessThanOrEqual(before);
        expect(periodOf({ ...times, holds: times.holds.slice(1) })).toBeLessThanOrEqual(before);
        expect(periodOf({ ...times, fill: { ...fill!, filling: 0.9 * fill!.filling } })).toBeLessThanOrEqual(
          before,
        );
        if (closing !== undefined) {
          expect(
            periodOf({ ...times, closing: { ...closing, room: closing.room + room } }),
          ).toBeLessThanOrEqual(before);
        }
        if (takeOff !== undefined) {
          expect(
            periodOf({ ...times, takeOff: { ...takeOff, room: takeOff.room + room } }),
          ).toBeLessThanOrEqual(before);
        }
      }),
      { numRuns: 200 },
    );
  });
});
