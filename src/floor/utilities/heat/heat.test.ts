import { describe, expect, it } from 'vitest';
import { askedOf, figureOf, judged, stepsOf } from '../testing/judged.ts';
import { washBook } from '../testing/wash-book.ts';

const zone2 = '/line/stations/0/zones/1';
/** 720 bottles an hour. */
const rate = 0.2;

describe('heat of the washer', () => {
  it('adds up bottles, what they carry, surface and walls as by hand', () => {
    // bottles 0.2/s x 0.5 kg x 820 J/(kg K) x 25 K; carried 0.2/s x 4 mL x 994 kg/m3 x 4.18 kJ/(kg K) x 25 K
    const bottles = rate * 0.5 * 820 * 25;
    const carried = rate * 4e-6 * 994 * 4180 * 25;
    // hygiene reference, table T6, 140 degF: 820 Btu/(h ft2) of an open surface, 160 of a bare wall
    const lost = 3.15459 * (820 * 1 + 160 * 2);
    const { demand, have, verdict } = judged(washBook(), 'washHeat Z2');
    expect(demand.value! / (bottles + carried + lost)).toBeCloseTo(1, 2);
    // elements for 480 V on 400 V: 24 kW x (400/480)^2
    expect(have.value).toBeCloseTo(24_000 * (400 / 480) ** 2, 6);
    expect(verdict).toBe('carries');
    expect(figureOf(washBook(), 'bottleHeat', 'Z2').figure.value).toBeCloseTo(bottles, 6);
  });

  it('is short where the heater is, and the next preferred size down stays short', () => {
    const book = washBook({ path: '/line/heaters/0/power', value: '4 kW' });
    expect(judged(book, 'washHeat Z2').verdict).toBe('short');
    const steps = stepsOf(book, 'washHeat Z2', 'heaterPower');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    expect(first).toBeGreaterThan(0);
    expect(steps[first - 1]!.verdict).toBe('short');
    // 5.7 kW are asked at 400 V: 5.72 x 1.44 = 8.2 kW on the plate, so 9 and not 8 of R20
    expect(steps[first]!.text).toBe('9 kW');
  });

  it('warms 400 L from 15 to 60 degC without losses in the time of the energy balance', () => {
    const bare = washBook(
      { path: `${zone2}/surface`, op: 'remove' },
      { path: `${zone2}/walls`, op: 'remove' },
      { path: '/line/heaters/0/voltage', value: '400 V' },
      // the reference's 13.92 kW for 400 L from 15 to 60 degC in 1.5 h
      { path: '/line/heaters/0/power', value: '13.92 kW' },
    );
    expect(judged(bare, 'heatUp Z2').have.value! / 5400).toBeCloseTo(1, 3);
    expect(judged(bare, 'heatUp Z2').verdict).toBe('carries');
    const hurried = washBook({ path: '/agreement/heatUp', value: '20 min' });
    expect(judged(hurried, 'heatUp Z2').verdict).toBe('short');
  });

  it('is short where the losses take all the power, however long one waits', () => {
    const book = washBook(
      { path: '/line/heaters/0/power', value: '2 kW' },
      { path: '/agreement/heatUp', value: '1000 h' },
    );
    expect(judged(book, 'heatUp Z2').verdict).toBe('short');
  });

  it('shows the time to warm up as a figure where none was agreed', () => {
    const book = washBook({ path: '/agreement/heatUp', op: 'remove' });
    expect(askedOf(book)).not.toContain('heatUp Z2');
    expect(figureOf(book, 'heatUpTime', 'Z2').figure.value).toBeGreaterThan(3600);
  });

  it('does not let elements for 400 V run on 480 V', () => {
    const book = washBook({ path: '/line/heaters/0/voltage', value: '400 V' });
    expect(judged(book, 'heaterVoltage E').verdict).toBe('carries');
    const over = washBook(
      { path: '/line/heaters/0/voltage', value: '400 V' },
      { path: '/floors/0/power/voltage', value: { value: '480 V', standing: 'measured' } },
    );
    expect(judged(over, 'heaterVoltage E').have.value).toBeCloseTo(1.2, 9);
    expect(judged(over, 'heaterVoltage E').verdict).toBe('short');
  });

  it('asks steam for the load over its latent heat', () => {
    const book = washBook(
      { path: '/line/heaters/0/kind', value: 'steam' },
      {
        path: '/floors/0/heat',
        value: { steam: { pressure: { value: '2 bar', standing: 'measured' }, flow: '20 kg/h' } },
      },
    );
    const load = figureOf(book, 'heatLoad').figure.value!;
    // h_fg at 2 bar gauge 2163.0 kJ/kg, hygiene reference T7
    expect(judged(book, 'steamFlow').demand.value! / (load / 2_163_000)).toBeCloseTo(1, 3);
  });

  it('asks heating water for the load over what it gives from 80 to 60 degC', () => {
    const book = washBook(
      { path: '/line/heaters/0/kind', value: 'hot water' },
      {
        path: '/floors/0/heat',
        value: { hotWater: { supply: '80 degC', return: '60 degC', flow: '10 L/min' } },
      },
    );
    const load = figureOf(book, 'heatLoad').figure.value!;
    // 971.8 kg/m3 at 80 degC, 4.19 kJ/(kg K) between the two
    expect(judged(book, 'heatingWaterFlow').demand.value! / (load / (4190 * 20 * 971.8))).toBeCloseTo(1, 2);
  });
});

describe('the bottle in the washer', () => {
  it('steps 15, 25, 20 and 25 K from room to zone to zone, and 5 K to the product', () => {
    const steps = ['Z1', 'Z2', 'Z3', 'Z4', 'FILL'].map(
      (of) => judged(washBook(), `thermalStep ${of}`).have.value!,
    );
    expect(steps.map((step) => Number(step.toFixed(6)))).toEqual([15, 25, 20, 25, 5]);
  });

  it('is held against what the book says, else against a marked 35 K of glass', () => {
    const plain = judged(washBook(), 'thermalStep Z2');
    expect([plain.demand.value, plain.demand.assumed]).toEqual([35, ['/line/formats/0/thermalStep']]);
    const said = washBook({ path: '/line/formats/0/thermalStep', value: '20 K' });
    expect(judged(said, 'thermalStep Z2').verdict).toBe('short');
    expect(judged(said, 'thermalStep Z1').verdict).toBe('carries');
  });

  it('of one-way PET is too hot at 60 degC, of returnable PET just not', () => {
    const pet = (returnable: boolean) =>
      washBook(
        { path: '/line/formats/0/material', value: 'PET' },
        { path: '/line/formats/0/returnable', value: returnable },
      );
    expect(judged(pet(true), 'bottleTemperature').verdict).toBe('carries');
    expect(judged(pet(false), 'bottleTemperature').verdict).toBe('short');
  });

  it('of a material that is not held is asked for, and the rest stands', () => {
    const book = washBook({ path: '/line/formats/0/material', value: 'aluminium' });
    const heat = judged(book, 'washHeat Z2');
    expect([heat.verdict, heat.decides]).toEqual(['unknown', '/line/formats/0/material']);
    expect(heat.notes.map(({ code }) => code)).toContain('MATERIAL_NO_HEAT');
    expect(judged(book, 'heatUp Z2').verdict).toBe('carries');
  });
});
