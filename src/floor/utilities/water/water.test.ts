import { describe, expect, it } from 'vitest';
import { askedOf, figureOf, judged, stepsOf } from '../testing/judged.ts';
import { washBook } from '../testing/wash-book.ts';

const litresAMinute = 1 / 60_000;
const water = '/floors/0/water';
const measured = (value: string) => ({ value, standing: 'measured' });

/** A main of 4 bar that keeps 3 bar at 60 L/min, 3 m up; the tie-in lies 1 m up. */
const main = [
  { path: `${water}/pressure`, op: 'remove' },
  { path: `${water}/flow`, op: 'remove' },
  {
    path: `${water}/source`,
    value: {
      kind: 'main',
      static: measured('4 bar'),
      residual: measured('3 bar'),
      testFlow: measured('60 L/min'),
      exponent: 2,
      height: measured('3 m'),
    },
  },
] as const;

describe('fresh water', () => {
  it('of a tie-in is that of all zones that it feeds, hot apart from cold', () => {
    const book = washBook();
    expect(judged(book, 'waterFlow TW').demand.value).toBeCloseTo(30 * litresAMinute, 12);
    expect(judged(book, 'waterFlow TW').verdict).toBe('carries');
    expect(judged(book, 'hotWaterFlow TH').demand.value).toBeCloseTo(15 * litresAMinute, 12);
    // 45 L/min over 12 bottles a minute
    expect(figureOf(book, 'waterPerBottle').figure.value).toBeCloseTo(0.045 / 12, 12);
  });

  it('that runs on from another zone is not drawn twice', () => {
    const book = washBook({ path: '/line/stations/0/zones/0/from', value: 'Z4' });
    expect(judged(book, 'waterFlow TW').demand.value).toBeCloseTo(18 * litresAMinute, 12);
  });

  it('is short where the site gives less, and the next preferred flow down stays short', () => {
    const book = washBook({ path: `${water}/flow`, value: measured('20 L/min') });
    expect(judged(book, 'waterFlow TW').verdict).toBe('short');
    const steps = stepsOf(book, 'waterFlow TW', 'waterFlow');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    // 28 is the last of R20 under 30 L/min
    expect(steps[first - 1]).toMatchObject({ text: '28 L/min', verdict: 'short' });
  });

  it('asks hot water for the hottest zone that it feeds', () => {
    expect(judged(washBook(), 'hotWaterTemperature TH').demand.value).toBeCloseTo(313.15, 9);
  });

  it('keeps the pressure of the main at its draw, with height, run and backflow device as by hand', () => {
    const book = washBook(...main, {
      path: `${water}/run`,
      value: [{ kind: 'constant', loss: measured('0.5 bar') }],
    });
    // (4 - 1 (30/60)^2 - 0.5) bar and 2 m of water of 999.1 kg/m3
    const byHand = 1e5 * (4 - 0.25 - 0.5) + 999.1 * 9.80665 * 2;
    expect(judged(book, 'waterPressure TW').have.value! / byHand).toBeCloseTo(1, 5);
    expect(askedOf(book)).not.toContain('waterFlow TW');
  });

  it('takes what such devices are remembered to take where a device has no stated loss, and marks it', () => {
    const book = washBook(...main, { path: `${water}/backflow`, value: 'reduced-pressure device' });
    const { have } = judged(book, 'waterPressure TW');
    expect(have.value! / (1e5 * (4 - 0.25 - 1) + 999.1 * 9.80665 * 2)).toBeCloseTo(1, 5);
    expect(have.assumed).toContain(`${water}/backflowLoss`);
  });

  it('carries through the least wider pipe, and the next narrower stays short', () => {
    const book = washBook(...main, {
      path: `${water}/run`,
      value: [
        {
          kind: 'pipe',
          bore: measured('12.7 mm'),
          length: measured('40 m'),
          material: 'commercial steel',
        },
      ],
    });
    expect(judged(book, 'waterPressure TW').verdict).toBe('short');
    const steps = stepsOf(book, 'waterPressure TW', 'waterBore');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    expect(steps[first]!.text).toBe('3/4');
    expect(steps[first - 1]!.verdict).toBe('short');
  });

  it('without a readable main leaves the other answers standing', () => {
    const book = washBook(...main, { path: `${water}/source/residual`, value: measured('5 bar') });
    const broken = judged(book, 'waterPressure TW');
    expect(broken.verdict).toBe('unknown');
    expect(broken.refusals.map(({ sheet }) => sheet)).toContain('water/main-supply');
    expect(broken.decides).toBe(`${water}/source/residual`);
    expect(judged(book, 'hotWaterTemperature TH').verdict).toBe('carries');
  });

  it('is protected against flowing back by what is said to be fitted, or nobody said', () => {
    expect(judged(washBook(), 'backflow TW')).toMatchObject({
      verdict: 'unknown',
      decides: `${water}/backflow`,
    });
    const none = washBook({ path: `${water}/backflow`, value: 'none' });
    expect(judged(none, 'backflow TW').verdict).toBe('short');
    const fitted = washBook({ path: `${water}/backflow`, value: 'double check valve' });
    expect(judged(fitted, 'backflow TW')).toMatchObject({
      verdict: 'carries',
      said: { have: 'double check valve' },
    });
  });
});

describe('what is in the water', () => {
  const conductivity = (value: string, own?: string) =>
    judged(
      washBook(
        { path: '/line/products/0/conductivity', value: measured(value) },
        ...(own === undefined
          ? []
          : [{ path: '/line/stations/1/lanes/0/meter/leastConductivity', value: measured(own) }]),
      ),
      'meterConductivity',
    );

  it('counts in a magnetic meter from 20 uS/cm on, not under 5, and between them the maker is asked', () => {
    expect(conductivity('100 uS/cm').verdict).toBe('carries');
    expect(conductivity('3 uS/cm').verdict).toBe('short');
    expect(conductivity('10 uS/cm')).toMatchObject({
      verdict: 'unknown',
      decides: '/line/stations/1/lanes/0/meter/leastConductivity',
    });
  });

  it("goes by the meter's own limit where the book has it", () => {
    expect(conductivity('10 uS/cm', '8 uS/cm').verdict).toBe('carries');
    expect(conductivity('10 uS/cm', '50 uS/cm').verdict).toBe('short');
  });

  it('is held against a hardness only where the line names one: 14 degrees are 249.9 mg/L', () => {
    expect(askedOf(washBook())).not.toContain('waterHardness');
    const at = (value: string) =>
      judged(
        washBook(
          { path: '/line/stations/0/highestHardness', value: '14 dH' },
          { path: `${water}/hardness`, value: measured(value) },
        ),
        'waterHardness',
      ).verdict;
    expect([at('249.5 mg/L'), at('250.2 mg/L')]).toEqual(['carries', 'short']);
  });

  it('carries without a remark, and asks first where iron or chlorine is high or not known', () => {
    const all = [
      { path: `${water}/iron`, value: '0.1 mg/L' },
      { path: `${water}/chlorine`, value: '0.3 mg/L' },
      { path: `${water}/hardness`, value: '80 mg/L' },
    ];
    expect(judged(washBook(...all), 'siteWater').verdict).toBe('carries');
    expect(judged(washBook(...all.slice(1)), 'siteWater')).toMatchObject({
      verdict: 'unknown',
      decides: `${water}/iron`,
    });
    const rusty = washBook(...all, { path: `${water}/iron`, value: '0.5 mg/L' });
    expect(judged(rusty, 'siteWater')).toMatchObject({ verdict: 'unknown', said: { have: 'ask first' } });
  });

  it('flushes ten times the volume of the pipes: 20 m of one inch take 101.3 L', () => {
    const book = washBook({
      path: `${water}/run`,
      value: [{ kind: 'pipe', bore: '25.4 mm', length: '20 m' }],
    });
    expect(figureOf(book, 'flushing').figure.value).toBeCloseTo(0.10134, 5);
    // at 60 L/min
    expect(figureOf(book, 'flushingTime').figure.value).toBeCloseTo(101.34, 2);
  });
});
