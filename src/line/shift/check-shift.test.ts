import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMessage, partsOf } from '../../text/index.ts';
import { anyShiftLine } from './any-shift-line.arbitrary.ts';
import { checkShift } from './check-shift.ts';
import type { ShiftLine } from './shift-line.ts';
import { ShiftMachine } from './shift-machine.ts';
import { shiftOfTimes } from './shift-of-times.ts';
import { shiftProblemText } from './shift-problems.text.ts';
import { shiftProblems } from './shift-problems.ts';

const times = {
  washer: { station: '+WASH', row: 4, stroke: 1.8, dwell: 10.2 },
  way: [{ station: '+CONV', step: 'convey', seconds: 1 }],
  wayRoom: 4,
  fill: {
    station: '+FILL',
    lanes: 4,
    travelIn: 1,
    lift: 0.5,
    lag: 0,
    filling: 9,
    drip: 0.4,
    lower: 0.4,
    clearOut: 0.8,
  },
  closing: { station: '+CAP', heads: 1, perBottle: 2.4, room: 8 },
  takeOff: { station: '+TAKE', rate: 0.42, room: 48 },
  holds: [{ rule: 'H1', until: 'release' as const }],
};
const line = shiftOfTimes(times, 3600);
const chute = { station: '+SORT', low: 20, high: 80, start: 80, rate: 0.5, runUp: 2 };
const found = (broken: Partial<ShiftLine>) =>
  checkShift({ ...line, ...broken }).map(({ code, path }) => `${code} ${path}`);

describe('a line before it is run', () => {
  it('that is whole has nothing against it', () => {
    expect(found({})).toEqual([]);
  });

  it.each<[string, Partial<ShiftLine>, readonly string[]]>([
    [
      'no room between stations',
      { wayRoom: 0, closing: { ...line.closing!, room: 0 } },
      ['SHIFT_ROOM_ZERO /wayRoom', 'SHIFT_ROOM_ZERO /closing/room'],
    ],
    [
      'a take-off that takes nothing',
      { takeOff: { ...line.takeOff!, perBottle: Number.POSITIVE_INFINITY } },
      ['SHIFT_NO_WAY_OUT /takeOff/perBottle'],
    ],
    [
      'a stop that is cleared in no time, and one that never ends to strike',
      {
        fill: {
          ...line.fill!,
          stops: [
            { cause: 'a', between: 100, clear: 0, owner: 'machine' },
            { cause: 'a', between: 0, clear: 5, owner: 'machine' },
          ],
        },
      },
      [
        'SHIFT_CLEAR_ZERO /fill/stops/0/clear',
        'SHIFT_CAUSE_TWICE /fill/stops/1/cause',
        'SHIFT_BETWEEN_ZERO /fill/stops/1/between',
      ],
    ],
    [
      'sensors that are swapped',
      { closing: { ...line.closing!, chute: { ...chute, low: 80, high: 20 } } },
      ['SHIFT_SENSORS_SWAPPED /closing/chute/high'],
    ],
    [
      'a chute smaller than a turn of the heads, and a sorter that stands still',
      { closing: { ...line.closing!, heads: 4, chute: { ...chute, low: 1, high: 3, rate: 0 } } },
      ['SHIFT_CHUTE_SMALL /closing/chute/high', 'SHIFT_SORTER_STILL /closing/chute/rate'],
    ],
    [
      'shares outside 0 to 1',
      {
        closing: { ...line.closing!, rejected: 1.5 },
        discharge: { station: '+SETUP', seconds: 0.4, fallen: -0.1 },
      },
      ['SHIFT_SHARE /discharge/fallen', 'SHIFT_SHARE /closing/rejected'],
    ],
    [
      'a stop of the line at a station that is not there',
      { lineStops: [{ cause: 'guard', stations: ['+OVEN'], between: 900, clear: 60, owner: 'people' }] },
      ['SHIFT_STATION_UNKNOWN /lineStops/0/stations/0'],
    ],
    [
      'a washer that indexes in no time',
      { washer: { ...line.washer!, stroke: 0, dwell: 0 } },
      ['SHIFT_NO_TIME '],
    ],
  ])('%s', (_, broken, expected) => {
    expect(found(broken)).toEqual(expected);
  });

  it('whose hold waits for a fill that is not there', () => {
    const { fill: _, ...without } = line;
    expect(checkShift(without).map(({ code }) => code)).toContain('SHIFT_HOLD_WITHOUT_STATION');
  });

  it('that can never move names the states that wait for each other', () => {
    // three bottles a row, four lanes and room for four: the second row never fits
    const [problem] = checkShift({ ...line, washer: { ...line.washer!, row: 3 } });
    expect(problem).toMatchObject({ code: 'SHIFT_DEADLOCK' });
    expect(problem!.parts!.loop).toBe(
      '+WASH stroke 2 (room on the way) → +FILL fill start 1 → +WASH stroke 2 (room on the way)',
    );
  });

  it('whose gaps could leave a set without its last bottle wants room for a row and a set', () => {
    const gaps: Partial<ShiftLine> = {
      washer: { ...line.washer!, row: 6 },
      wayRoom: 8,
      discharge: { station: '+SETUP', seconds: 0.4, fallen: 0.01 },
    };
    expect(found(gaps)).toEqual(['SHIFT_ROOM_FOR_SETS /wayRoom']);
    expect(found({ ...gaps, wayRoom: 9 })).toEqual([]);
  });

  it('runs to its end where nothing is found, whatever the line', () => {
    let ran = 0;
    fc.assert(
      fc.property(anyShiftLine(), fc.integer({ min: 0, max: 40 }), (any, wayRoom) => {
        const narrow = { ...any, wayRoom };
        if (checkShift(narrow).length > 0) return;
        ran += 1;
        new ShiftMachine(narrow).run(1, 0);
      }),
      { numRuns: 200 },
    );
    expect(ran).toBeGreaterThan(60);
  });
});

const sources = readdirSync(import.meta.dirname)
  .filter((name) => /^(?!shift-problems).*(?<!\.test)\.ts$/.test(name))
  .map((name) => readFileSync(join(import.meta.dirname, name), 'utf8'))
  .join('\n');

describe('every problem of a shift', () => {
  it.each(Object.entries(shiftProblems))(
    '%s has words that want nothing but what is listed, and is raised',
    (code, parts) => {
      const text = shiftProblemText.en[code as keyof typeof shiftProblems];
      const wanted = partsOf(parseMessage(text)).filter((name) => name !== 'path');
      expect(parts).toEqual(expect.arrayContaining([...wanted]));
      expect(text).toMatch(/[.?]$/);
      expect(sources).toContain(`'${code}'`);
    },
  );
});
