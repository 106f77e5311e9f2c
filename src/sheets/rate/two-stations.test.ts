import fc from 'fast-check';
import { expect, it } from 'vitest';
import { twoStationsByRow } from './two-stations-by-row.ts';
import { twoStationsInTime } from './two-stations-in-time.ts';
import { twoStationsWithRoom } from './two-stations-with-room.ts';

/** Shares of time of a chain's states, by elimination; `moves` gives where a state goes and with what chance. */
const settled = (
  states: number,
  moves: (from: number) => readonly (readonly [number, number])[],
): number[] => {
  const rows = Array.from({ length: states }, () => new Array<number>(states + 1).fill(0));
  for (let from = 0; from < states; from++) {
    rows[from]![from]! -= 1;
    for (const [to, chance] of moves(from)) rows[to]![from]! += chance;
  }
  rows[states - 1] = new Array<number>(states + 1).fill(1);
  for (let k = 0; k < states; k++) {
    let pivot = k;
    for (let i = k; i < states; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    for (let i = 0; i < states; i++) {
      if (i === k) continue;
      const factor = rows[i]![k]! / rows[k]![k]!;
      for (let j = k; j <= states; j++) rows[i]![j]! -= factor * rows[k]![j]!;
    }
  }
  return rows.map((row, k) => row[states]! / row[k]!);
};

interface Line {
  readonly stopFirst: number;
  readonly clearFirst: number;
  readonly stopSecond: number;
  readonly clearSecond: number;
  readonly room: number;
}

/** Efficiency out of the rules alone: an idle station does not stop, stations change first, then the room. */
const byChain = (line: Line): { efficiency: number; level: number } => {
  const { room } = line;
  const indexOf = (level: number, first: number, second: number) => 4 * level + 2 * first + second;
  const next = (up: number, idle: boolean, stop: number, clear: number): readonly [number, number][] => {
    if (up === 0) {
      return [
        [1, clear],
        [0, 1 - clear],
      ];
    }
    return idle
      ? [[1, 1]]
      : [
          [1, 1 - stop],
          [0, stop],
        ];
  };
  const shares = settled(4 * (room + 1), (from) => {
    const level = from >> 2;
    const full = level === room;
    const empty = level === 0;
    const firsts = next((from >> 1) & 1, full, line.stopFirst, line.clearFirst);
    const seconds = next(from & 1, empty, line.stopSecond, line.clearSecond);
    return firsts.flatMap(([first, p]) =>
      seconds.map(([second, q]) => {
        const put = full ? 0 : first;
        const taken = empty ? 0 : second;
        return [indexOf(level + put - taken, first, second), p * q] as const;
      }),
    );
  });
  return {
    efficiency: shares.reduce((sum, share, i) => sum + (i >= 4 && (i & 1) === 1 ? share : 0), 0),
    level: shares.reduce((sum, share, i) => sum + (i >> 2) * share, 0),
  };
};

const chance = (max: number) => fc.double({ min: 0.005, max, noNaN: true });
const lines: fc.Arbitrary<Line> = fc.record({
  stopFirst: chance(0.3),
  clearFirst: chance(0.95),
  stopSecond: chance(0.3),
  clearSecond: chance(0.95),
  room: fc.integer({ min: 4, max: 14 }),
});

it('any two stations give what the chain of their states gives', () => {
  fc.assert(
    fc.property(lines, (line) => {
      const [sheet, chain] = [twoStationsWithRoom(line), byChain(line)];
      expect(sheet.efficiency).toBeCloseTo(chain.efficiency, 9);
      expect(sheet.level).toBeCloseTo(chain.level, 7);
    }),
    { numRuns: 60 },
  );
});

it('what the stations do not work they stand, starve or are blocked', () => {
  fc.assert(
    fc.property(lines, (line) => {
      const { efficiency, starved, blocked } = twoStationsWithRoom(line);
      // a station works as long as it is up when it may: r/(r + p) of the time in which it is not idle
      const own = (stop: number, clear: number) => clear / (clear + stop);
      expect(efficiency).toBeCloseTo((1 - blocked) * own(line.stopFirst, line.clearFirst), 9);
      expect(efficiency).toBeCloseTo((1 - starved) * own(line.stopSecond, line.clearSecond), 9);
    }),
  );
});

it('more room brings more, never more than endless room', () => {
  fc.assert(
    fc.property(lines, (line) => {
      const [small, large] = [line, { ...line, room: 3 * line.room }].map(twoStationsWithRoom);
      expect(large!.efficiency).toBeGreaterThanOrEqual(small!.efficiency - 1e-12);
      expect(large!.efficiency).toBeLessThanOrEqual(large!.endlessRoom + 1e-12);
    }),
  );
});

it('room for ten thousand leaves nothing of the buffer to gain', () => {
  const { efficiency, endlessRoom } = twoStationsWithRoom({
    stopFirst: 0.02,
    clearFirst: 0.1,
    stopSecond: 0.01,
    clearSecond: 0.2,
    room: 10_000,
  });
  expect(efficiency).toBeCloseTo(endlessRoom, 12);
});

it('by times: no room and endless room are the ends', () => {
  const line = { betweenStops: 1800, clearing: 90, rate: 0.1875 };
  expect(twoStationsInTime({ ...line, room: 0 }).efficiency).toBeCloseTo(1 / 1.1, 12);
  const far = twoStationsInTime({ ...line, room: 1e9 });
  expect(far.efficiency).toBeCloseTo(far.endlessRoom, 5);
});

it('by times is the limit of by cycles that are cut ever shorter', () => {
  const off = (cut: number): number => {
    const cycles = twoStationsWithRoom({
      stopFirst: 0.01 / cut,
      clearFirst: 0.1 / cut,
      stopSecond: 0.01 / cut,
      clearSecond: 0.1 / cut,
      room: 20 * cut,
    });
    return (
      twoStationsInTime({ betweenStops: 100, clearing: 10, rate: 1, room: 20 }).efficiency - cycles.efficiency
    );
  };
  expect(Math.abs(off(400))).toBeLessThan(3e-6);
  // halved with the cycle: no offset is left
  expect(off(200) / off(400)).toBeCloseTo(2, 1);
});

it('row by row: any two stations give what the chain of their room gives', () => {
  const ready = fc.double({ min: 0.05, max: 0.98, noNaN: true });
  fc.assert(
    fc.property(ready, ready, fc.integer({ min: 1, max: 12 }), (readyFirst, readySecond, room) => {
      const shares = settled(room + 1, (level) =>
        [
          [0, 0, (1 - readyFirst) * (1 - readySecond)],
          [0, 1, (1 - readyFirst) * readySecond],
          [1, 0, readyFirst * (1 - readySecond)],
          [1, 1, readyFirst * readySecond],
        ].map(([first, second, odds]) => {
          const taken = level > 0 ? second! : 0;
          const put = level < room || taken === 1 ? first! : 0;
          return [level + put - taken, odds!] as const;
        }),
      );
      const sheet = twoStationsByRow({ readyFirst, readySecond, room });
      expect(sheet.efficiency).toBeCloseTo(readySecond * (1 - shares[0]!), 10);
      expect(sheet.blocked).toBeCloseTo(readyFirst * (1 - readySecond) * shares[room]!, 10);
    }),
  );
});

it('row by row: stations almost alike give what stations alike give', () => {
  const alike = twoStationsByRow({ readyFirst: 0.9, readySecond: 0.9, room: 5 });
  const almost = twoStationsByRow({ readyFirst: 0.9, readySecond: 0.9 + 1e-12, room: 5 });
  expect(almost.efficiency).toBeCloseTo(alike.efficiency, 11);
});
