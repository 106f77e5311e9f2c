import { describe, expect, it } from 'vitest';
import type { Patch } from '../../../book/index.ts';
import { figureOf, judged, stepsOf } from '../testing/judged.ts';
import { washBook } from '../testing/wash-book.ts';

const measured = (value: string) => ({ value, standing: 'measured' });
const room = (field: string, value: unknown) => ({ path: `/floors/0/room/${field}`, value });
const route = (...pieces: readonly object[]) =>
  room(
    'route',
    pieces.map((piece, i) => ({ tag: `R${i}`, ...piece })),
  );

describe('a section as it stands', () => {
  // acceptance reference, case 19: 2400 kg on four feet of 80 mm are 1.1706 MPa, and 4/3 of it where one hangs free
  it('of 2000 kg with 400 L in its bath presses 1.56 MPa under the hardest of four feet', () => {
    const book = washBook(room('slab', { bearing: measured('2 MPa'), point: measured('10 kN') }));
    expect(judged(book, 'slabPressure S1').have.value! / ((1.1706e6 * 4) / 3)).toBeCloseTo(1, 3);
    expect(judged(book, 'slabPressure S1').verdict).toBe('carries');
    expect(judged(book, 'slabPoint S1').have.value).toBeCloseTo((2400 * 9.80665) / 3, 6);
  });

  it('stands on the least larger foot, and the next smaller stays short', () => {
    const book = washBook(room('slab', { bearing: measured('1 MPa') }));
    const steps = stepsOf(book, 'slabPressure S1', 'footArea');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    // 7845 N on 1 MPa are 7845 mm2, between 7100 and 8000 of R20
    expect(steps[first]!.value).toBeCloseTo(8e-3, 9);
    expect(steps[first - 1]).toMatchObject({ verdict: 'short' });
    expect(steps[first - 1]!.value).toBeCloseTo(7.1e-3, 9);
  });

  it('without its feet is unknown, and says which answer is missing', () => {
    const book = washBook(
      { path: '/line/sections/0/feet', op: 'remove' },
      room('slab', { point: '10 kN' }),
      room('ceiling', '4 m'),
    );
    expect(judged(book, 'slabPoint S1')).toMatchObject({
      verdict: 'unknown',
      decides: '/line/sections/0/feet',
    });
    expect(judged(book, 'roomHeight S1').verdict).toBe('carries');
  });
});

describe('the way in', () => {
  const door = (width: string, height = '3 m') => ({
    kind: 'door',
    name: 'hall door',
    width: measured(width),
    height: measured(height),
  });

  it('must be as wide as the section and 50 mm on each side at its narrowest', () => {
    const wide = washBook(route(door('1.31 m'), { kind: 'corridor', width: measured('2 m') }));
    expect(judged(wide, 'routeWidth S1')).toMatchObject({ verdict: 'carries', said: { have: 'hall door' } });
    expect(judged(wide, 'routeWidth S1').demand.value).toBeCloseTo(1.3, 12);
    expect(judged(washBook(route(door('1.29 m'))), 'routeWidth S1').verdict).toBe('short');
  });

  it('must be as high as the section on its gear: 2 + 0.12 + 0.05 m; lower skates help', () => {
    const book = washBook(route(door('2 m', '2.14 m')));
    expect(judged(book, 'routeHeight S1').demand.value).toBeCloseTo(2.17, 12);
    expect(judged(book, 'routeHeight S1').verdict).toBe('short');
    const steps = stepsOf(book, 'routeHeight S1', 'gear');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    expect(steps[first]!.value).toBeLessThanOrEqual(0.09);
    expect(steps[first - 1]!.value).toBeGreaterThan(0.09);
  });

  it('is open while a door has no size, unless another is too narrow already', () => {
    const open = washBook(route(door('2 m'), { kind: 'door' }));
    expect(judged(open, 'routeWidth S1')).toMatchObject({
      verdict: 'unknown',
      decides: '/floors/0/room/route/1/width',
    });
    expect(judged(washBook(route(door('1 m'), { kind: 'door' })), 'routeWidth S1').verdict).toBe('short');
    expect(judged(washBook(), 'routeWidth S1')).toMatchObject({
      verdict: 'unknown',
      decides: '/floors/0/room/route',
    });
  });

  it('turns a section where the two corridors let it round: 2.957 m at 2 m each', () => {
    // at 45 degrees (2 x 2 sin 45 - 1.3)/(sin 45)^2 less the clearance at both ends
    const longest = (4 * Math.SQRT1_2 - 1.3) / 0.5 - 0.1;
    const turn = (width: string) =>
      judged(washBook(route({ kind: 'turn', width: measured(width) })), 'routeTurn S1');
    expect(turn('2 m').have.value).toBeCloseTo(longest, 9);
    expect(turn('2 m').verdict).toBe('short');
    expect(turn('2.1 m').verdict).toBe('carries');
  });

  it('bears the section with its gear, and its wheels where one of them hangs free', () => {
    const book = washBook(
      route({ kind: 'crane', mass: '2050 kg' }, { kind: 'floor', bearing: measured('3 MPa') }),
    );
    expect(judged(book, 'routeMass S1')).toMatchObject({ verdict: 'short', demand: { value: 2100 } });
    // 2100 kg on three of four wheels of 30 by 70 mm
    const pressure = (2100 * 9.80665) / 3 / (0.03 * 0.07);
    expect(judged(book, 'routeBearing S1').demand.value! / pressure).toBeCloseTo(1, 9);
    expect(judged(book, 'routeBearing S1').verdict).toBe('short');
  });

  it('rides in a lift that takes it with gear and rider, 2000 + 100 + 75 kg, and has room on all sides', () => {
    const lift = (mass: string, depth: string | undefined) =>
      washBook(
        route({
          kind: 'lift',
          mass: measured(mass),
          width: measured('1.35 m'),
          height: measured('2.3 m'),
          car: {
            ...(depth === undefined ? {} : { depth: measured(depth) }),
            width: measured('1.6 m'),
            height: measured('2.4 m'),
          },
        }),
      );
    const fits = lift('2200 kg', '3.2 m');
    expect(judged(fits, 'liftLoad S1').have.value).toBeCloseTo(2175 / 2200, 12);
    expect(judged(fits, 'liftLoad S1').verdict).toBe('carries');
    // 1.35 - 1.2 - 2 x 0.05 beside it; 3.2 - 3 - 0.1 along it; 2.3 - 2.12 - 0.05 above it
    expect(judged(fits, 'liftCar S1').have.value).toBeCloseTo(0.05, 12);
    expect(judged(lift('2200 kg', '3.05 m'), 'liftCar S1')).toMatchObject({ verdict: 'short' });
    expect(judged(lift('2150 kg', '3.2 m'), 'liftLoad S1').verdict).toBe('short');
    const open = lift('2200 kg', undefined);
    expect(judged(open, 'liftCar S1')).toMatchObject({
      verdict: 'unknown',
      decides: '/floors/0/room/route/0/car/depth',
    });
    expect(judged(open, 'liftLoad S1').verdict).toBe('carries');
  });

  describe('on a slope', () => {
    const gear = (track: string, z = '1.08 m'): readonly Patch[] => [
      { path: '/line/sections/0/gear/base', value: '2.4 m' },
      { path: '/line/sections/0/gear/track', value: track },
      { path: '/line/sections/0/centre', value: { x: '1.5 m', y: '0.6 m', z } },
    ];
    const ramp = (slope: string) => route({ kind: 'ramp', slope });

    it('tips where its centre of gravity passes the wheels: 0.4 m beside and 1.2 m up at one in three', () => {
      const book = washBook(ramp('10 %'), ...gear('0.8 m'));
      expect(judged(book, 'routeTipping S1').have.value).toBeCloseTo(0.3, 12);
      expect(judged(book, 'routeTipping S1').verdict).toBe('carries');
      expect(figureOf(book, 'tipAngle', 'S1').figure.value).toBeCloseTo(Math.atan(1 / 3), 12);
      // m g d/H with its top at 2.12 m
      expect(figureOf(book, 'tipPush', 'S1').figure.value).toBeCloseTo((2000 * 9.80665 * 0.4) / 2.12, 6);
      expect(judged(book, 'routeTipping S1').notes.map(({ code }) => code)).toContain('TIPPING_MOVER');
    });

    it('is short beyond half of that, and on wheels beside its centre whatever the slope', () => {
      expect(judged(washBook(ramp('18 %'), ...gear('0.8 m')), 'routeTipping S1').verdict).toBe('short');
      const outside = washBook(ramp('1 %'), ...gear('0.8 m'), {
        path: '/line/sections/0/centre/y',
        value: '1.1 m',
      });
      expect(judged(outside, 'routeTipping S1').verdict).toBe('short');
    });

    it('stands on wheels that are wide enough, and on none narrower: 2 x 1.2 x 18 %/50 % = 0.864 m', () => {
      const steps = stepsOf(washBook(ramp('18 %'), ...gear('0.8 m')), 'routeTipping S1', 'gearStand');
      const first = steps.findIndex(({ verdict }) => verdict === 'carries');
      expect(steps[first]!.value).toBeCloseTo(0.9, 12);
      expect(steps[first - 1]!).toMatchObject({ verdict: 'short' });
    });

    it('is asked where its centre of gravity lies, and how wide its gear stands', () => {
      expect(judged(washBook(ramp('5 %')), 'routeTipping S1')).toMatchObject({
        verdict: 'unknown',
        decides: '/line/sections/0/gear/base',
      });
    });
  });

  it('pulls m g (s + f)/sqrt(1 + s^2) up its steepest ramp', () => {
    const book = washBook(route({ kind: 'ramp', slope: '2 %' }, { kind: 'ramp', slope: '5 %' }));
    expect(figureOf(book, 'rampPull', 'S1').figure.value).toBeCloseTo(
      (2000 * 9.80665 * 0.07) / Math.sqrt(1 + 0.05 ** 2),
      6,
    );
  });
});

describe('the room', () => {
  it('is as long and wide as the line with its free way: 4.6 by 2.8 m', () => {
    const book = washBook(room('length', measured('4.5 m')), room('width', measured('3 m')));
    expect(judged(book, 'roomLength')).toMatchObject({ verdict: 'short' });
    expect(judged(book, 'roomLength').demand.value).toBeCloseTo(4.6, 12);
    expect(judged(book, 'roomWidth').demand.value).toBeCloseTo(2.8, 12);
    expect(judged(book, 'roomWidth').verdict).toBe('carries');
  });

  it('gets the heat of the motor and of the bath, and its steam', () => {
    // 1 kW at 80 %; table T6 of the hygiene reference at 140 degF: 160 Btu/(h ft2) of surface and of bare walls
    const heat = 1250 + 3.15459 * 160 * 3;
    expect(figureOf(washBook(), 'roomHeat').figure.value! / heat).toBeCloseTo(1, 2);
    // 660 Btu/(h ft2) of evaporation over 2357.7 kJ/kg at 60 degC, steam table
    expect(figureOf(washBook(), 'roomMoisture').figure.value! / ((3.15459 * 660) / 2_357_700)).toBeCloseTo(
      1,
      2,
    );
  });

  it('is asked how damp the air outside is, where moisture must be carried away', () => {
    expect(figureOf(washBook(), 'ventilationAir').figure.missing).toContain(
      '/floors/0/room/outside/temperature',
    );
  });
});
