import { describe, expect, it } from 'vitest';
import { type Patch, patchBook } from '../../book/index.ts';
import { runShifts, shiftFigures } from '../../line/shift/index.ts';
import { assessBook } from '../index.ts';
import { bindShift } from './bind-shift.ts';
import { demoBook, larkmoor, oxbow, patched, stationPath, withoutChance } from './testing/demo-shift.ts';

const fill = stationPath('+FILL');
const cap = stationPath('+CAP');

describe('a floor as a line for a shift', () => {
  it.each([oxbow, larkmoor])('runs without stops as the assessment says, floor %i', (floor) => {
    const { line, runningRate, duration, stops } = bindShift(patched(...withoutChance), floor);
    const said = assessBook(demoBook).floors[floor]!.figures.runningRate!.value!;
    expect(runningRate).toBeCloseTo(said, 12);
    expect(stops).toBe('none');
    const { good } = shiftFigures(line!, runShifts(line!, { seed: 1, first: 0, shifts: 1 }));
    // the slowest of four lanes that start anywhere between two pulses is a little slower than of four in the middle
    expect(good.mean).toBeGreaterThan(0.995 * said * duration);
    expect(good.mean).toBeLessThanOrEqual(said * duration + 4);
  });

  it('runs down its tank as the hour that is walked row by row does', () => {
    const patches: readonly Patch[] = [
      ...withoutChance,
      { path: '/floors/1/supply/source/makeUp', value: '2 L/min' },
      { path: '/floors/1/supply/source/area', value: '3 m2' },
      { path: '/agreement/shift', value: '1 h' },
    ];
    const book = patched(...patches);
    const { line } = bindShift(book, larkmoor);
    expect(line!.fill!.supply).toBeDefined();
    const { good, drawnMost } = shiftFigures(line!, runShifts(line!, { seed: 1, first: 0, shifts: 1 }));
    const { figures } = assessBook(book).floors[larkmoor]!;
    const walked = figures.hourRate!.value!;
    expect(walked).toBeLessThan(0.99 * figures.runningRate!.value!);
    // the same pulses as above, and a set that is not out yet when the hour ends
    expect(Math.abs(good.mean / 3600 / walked - 1)).toBeLessThan(0.006);
    expect(drawnMost.mean).toBeGreaterThan(1);
  });

  it('says no bottles where a station is silent about its stops, but still the rate', () => {
    const silent = bindShift(patched({ path: `${fill}/stops` }, { path: `${cap}/stops` }), larkmoor);
    expect(silent.line).toBeUndefined();
    expect(silent.stops).toBeUndefined();
    expect(silent.missing).toEqual([`${fill}/stops`, `${cap}/stops`]);
    expect(silent.runningRate).toBeCloseTo(bindShift(demoBook, larkmoor).runningRate!, 12);
    const vague = bindShift(patched({ path: `${fill}/stops/0/clear` }), larkmoor);
    expect(vague.line).toBeUndefined();
    expect(vague.missing).toEqual([`${fill}/stops/0/clear`]);
  });

  it('takes what a floor says of a station instead of what the line says', () => {
    const here = patched({ path: '/floors/1/stops', value: [{ station: '+FILL', stops: [] }] });
    expect(bindShift(here, larkmoor).line!.fill!.stops).toEqual([]);
    expect(bindShift(here, oxbow).line!.fill!.stops).toHaveLength(2);
  });

  it('knows stops of a log from declared ones by how they are known', () => {
    expect(bindShift(demoBook, larkmoor).stops).toBe('declared');
    const logged = patched(...withoutChance, {
      path: `${fill}/stops`,
      value: [
        {
          tag: 'STOP-1',
          between: { value: '50 min', standing: 'measured' },
          clear: { value: '40 s', standing: 'measured' },
          owner: 'machine',
        },
      ],
    });
    expect(bindShift(logged, larkmoor).stops).toBe('logged');
  });

  it('lets a stop device strike the stations of what it acts on, and all where it names none', () => {
    const { lineStops } = bindShift(demoBook, larkmoor).line!;
    expect(lineStops.find(({ cause }) => cause === '-S1')).toMatchObject({
      stations: ['+WASH', '+CONV', '+FILL'],
      between: 40 * 3600,
      clear: 360,
      owner: 'people',
    });
    const { line } = bindShift(patched({ path: '/line/stopDevices/0/effects' }), larkmoor);
    expect(line!.lineStops[0]!.stations).toHaveLength(7);
  });

  it('takes a row of the cause-and-effect table for a hold rule', () => {
    const interlocked = patched(
      { path: '/line/holdRules', value: [] },
      {
        path: '/line/interlocks',
        value: [
          {
            tag: 'IL1',
            causes: [{ on: '+FILL', state: 'filling' }],
            effects: [{ on: '-M1', effect: 'may not index' }],
          },
        ],
      },
    );
    expect(bindShift(interlocked, larkmoor).line!.holds).toEqual([{ rule: 'IL1', until: 'fill end' }]);
  });
});

describe('rows of the cause-and-effect table between other stations', () => {
  const row = (on: string, state: string, held: string, rest: object = {}) => [
    { tag: 'IL1', causes: [{ on, state, ...rest }], effects: [{ on: held, effect: 'waits' }] },
  ];
  const boundBy = (value: object) => bindShift(patched({ path: '/line/interlocks', value }), larkmoor);
  const [rule] = ['IL1'];

  it('hold by what lies behind: full, blocked, stopped, at work', () => {
    const ofRow = (...of: Parameters<typeof row>) =>
      boundBy(row(...of)).line!.holds.filter((hold) => hold.rule === rule);
    expect(ofRow('+TAKE', 'full', '-M1')).toEqual([{ rule, by: 'takeOff', until: 'room' }]);
    expect(ofRow('+CAP', 'Blocked', '+WASH')).toEqual([{ rule, by: 'closing', until: 'way out' }]);
    expect(ofRow('+CAP', 'stopped', '+FILL')).toEqual([
      { rule, holds: 'fill', by: 'closing', until: 'running' },
    ]);
    expect(ofRow('+TAKE', 'busy', '+CAP')).toEqual([
      { rule, holds: 'closing', by: 'takeOff', until: 'release' },
    ]);
  });

  it('are named where they are not followed, or where the running rate does not know them', () => {
    expect(boundBy(row('+WASH', 'running', '+FILL')).unfollowed).toEqual([rule]);
    expect(boundBy(row('+FILL', 'filling', '+WASH', { for: '3 s' })).unfollowed).toEqual([rule]);
    expect(boundBy(row('+FILL', 'dreaming', '+WASH')).unfollowed).toEqual([rule]);
    expect(boundBy(row('+LOAD', 'empty', '+FILL')).unfollowed).toEqual([rule]);
    expect(boundBy(row('+TAKE', 'full', '-M1'))).toMatchObject({ unfollowed: [], notInRate: [rule] });
    // a lamp holds no bottle
    expect(boundBy(row('+CAP', 'stopped', '-B21')).unfollowed).toEqual([]);
  });

  it('let a set wait for the heads in the exact period too', () => {
    const free = boundBy([]);
    const held = boundBy(row('+CAP', 'running', '+WASH'));
    expect(held.period!).toBeGreaterThan(free.period!);
    expect(held.line!.holds).toContainEqual({ rule, by: 'closing', until: 'release' });
  });

  it('never let the line go on where a station waits while what it feeds is empty', () => {
    const { line, problems } = boundBy(row('+FILL', 'empty', '-M1'));
    expect(line).toBeUndefined();
    expect(problems).toEqual([
      {
        code: 'SHIFT_HOLD_EMPTY',
        path: '/line/interlocks/0',
        parts: { rule, station: '+WASH', by: '+FILL' },
      },
    ]);
  });
});

describe('a line that can not run', () => {
  const codes = (...patches: readonly Patch[]): readonly string[] =>
    bindShift(patched(...patches), larkmoor).problems.map(({ code }) => code);

  it('has stations that hold each other', () => {
    const rules = [
      { tag: 'HR1', holds: '+WASH', while: '+FILL' },
      { tag: 'HR2', holds: '+FILL', while: '+WASH' },
    ];
    const { problems, line } = bindShift(patched({ path: '/line/holdRules', value: rules }), larkmoor);
    expect(line).toBeUndefined();
    expect(problems).toEqual([
      {
        code: 'SHIFT_HOLDS_CIRCLE',
        path: '/line/holdRules/0',
        parts: { rules: 'HR1, HR2', stations: '+WASH → +FILL → +WASH' },
      },
    ]);
  });

  it('has a station with no way out, no room, one sensor for two: all at once', () => {
    const take = stationPath('+TAKE');
    expect(
      codes(
        { path: `${take}/after`, value: ['+FILL'] },
        { path: `${cap}/room`, value: 0 },
        { path: `${cap}/chute/lowSensor`, value: '-B21' },
      ),
    ).toEqual(['SHIFT_BRANCHES', 'SHIFT_ENDS_EARLY', 'SHIFT_ROOM_ZERO', 'SHIFT_ONE_SENSOR']);
  });

  it('has events that wait for each other', () => {
    const { problems } = bindShift(
      patched(
        { path: `${stationPath('+WASH')}/row`, value: 2 },
        { path: `${stationPath('+CONV')}/capacity`, value: 2 },
      ),
      larkmoor,
    );
    expect(problems).toMatchObject([{ code: 'SHIFT_DEADLOCK' }]);
    expect(String(problems[0]!.parts!.loop)).toMatch(/stroke .*fill start/);
  });

  it('is no book where sensors are swapped, nothing clears a stop, or nothing is taken off', () => {
    const refused = (...patches: readonly Patch[]): readonly string[] => {
      const result = patchBook(demoBook, patches);
      return result.ok ? [] : result.problems.map(({ code, path }) => `${code} ${path}`);
    };
    expect(
      refused(
        { path: `${cap}/chute/capsBelowHigh`, value: 10 },
        { path: `${fill}/stops/0/clear`, value: '0 s' },
        { path: `${stationPath('+TAKE')}/rate`, value: '0 bottles/h' },
        { path: `${cap}/rejected`, value: '120 %' },
      ).toSorted(),
    ).toEqual([
      `BOOK_NOT_LESS ${cap}/chute/capsBelowLow`,
      `BOOK_OUT_OF_RANGE ${fill}/stops/0/clear`,
      `BOOK_OUT_OF_RANGE ${cap}/rejected`,
      `BOOK_OUT_OF_RANGE ${stationPath('+TAKE')}/rate`,
    ]);
  });
});
