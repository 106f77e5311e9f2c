import { describe, expect, it } from 'vitest';
import { remediesFor } from '../../index.ts';
import { askedOf, figureOf, judged, stepsOf } from '../testing/judged.ts';
import { washBook } from '../testing/wash-book.ts';
import { rangeOf } from './drain-quality.ts';

const measured = (value: string) => ({ value, standing: 'measured' });
const half = {
  bore: measured('100 mm'),
  fall: measured('1 %'),
  filling: measured('50 %'),
};
const drained = (drains: object) => washBook({ path: '/floors/0/drains', value: drains });

/** 45 L/min that run, and Torricelli for a bath of 0.5 m through 50 mm. */
const running = 0.045 / 60;
const dump = 0.62 * 0.25 * Math.PI * 0.05 ** 2 * Math.sqrt(2 * 9.80665 * 0.5);

describe('the drain', () => {
  it('must take the largest bath with what runs besides', () => {
    const { demand } = judged(washBook(), 'drainFlow TD');
    expect(demand.value! / (running + dump)).toBeCloseTo(1, 9);
    expect(figureOf(washBook(), 'drainRunning', 'TD').figure.value).toBeCloseTo(running, 12);
    // 400 L in eight hours
    expect(figureOf(washBook(), 'drainAverage', 'TD').figure.value).toBeCloseTo(running + 0.4 / 28_800, 12);
  });

  it('does not count water twice that runs on into another zone', () => {
    const book = washBook({ path: '/line/stations/0/zones/0/from', value: 'Z3' });
    expect(figureOf(book, 'drainRunning', 'TD').figure.value).toBeCloseTo(0.033 / 60, 12);
  });

  it('of 100 mm at 1 % takes 2.58 L/s half full by Manning, which is short; DN 160 is the first that carries', () => {
    const book = drained(half);
    const { have, verdict } = judged(book, 'drainFlow TD');
    // A R^(2/3) S^(1/2)/n of half a circle: 0.003927 x 0.025^(2/3) x 0.1/0.013
    expect(have.value! / ((0.003927 * 0.025 ** (2 / 3) * 0.1) / 0.013)).toBeCloseTo(1, 4);
    expect(verdict).toBe('short');
    const steps = stepsOf(book, 'drainFlow TD', 'drainBore');
    expect(steps.find((step) => step.verdict === 'carries')?.text).toBe('DN 160');
    expect(steps.find(({ text }) => text === 'DN 125')?.verdict).toBe('short');
    const falls = stepsOf(book, 'drainFlow TD', 'drainFall');
    // the flow goes with the root of the fall: (4.56/2.58)^2 = 3.12 %
    expect(falls.find((step) => step.verdict === 'carries')?.text).toBe('3.5 %');
    expect(falls.find(({ text }) => text === '3 %')?.verdict).toBe('short');
  });

  it('goes by what the site says of its own drain before bore and fall', () => {
    const book = drained({ ...half, outlets: [{ tieIn: 'TD', flow: measured('5 L/s') }] });
    expect(judged(book, 'drainFlow TD')).toMatchObject({ verdict: 'carries', have: { value: 0.005 } });
  });

  it('gets the bath at its own temperature, and the mix of what runs where the bath is taken away', () => {
    const limit = drained({ highestTemperature: '50 degC' });
    expect(judged(limit, 'drainTemperature TD')).toMatchObject({ verdict: 'short' });
    expect(judged(limit, 'drainTemperature TD').have.value).toBeCloseTo(333.15, 9);
    const collected = washBook(
      { path: '/floors/0/drains', value: { highestTemperature: '50 degC' } },
      { path: '/line/stations/0/zones/1/collected', value: true },
    );
    // (12 x 35 + 15 x 40 + 18 x 15)/45 = 28.7 degC
    expect(judged(collected, 'drainTemperature TD').have.value! - 273.15).toBeCloseTo(28.67, 0);
    expect(judged(collected, 'drainTemperature TD').verdict).toBe('carries');
    expect(askedOf(collected)).not.toContain('drainAcidity TD');
  });

  it('does not get caustic of 30 g/L, which is pH 13.9, where 6 to 10 is allowed', () => {
    const at = (acidity: string) => judged(drained({ acidity }), 'drainAcidity TD');
    expect(at('6 to 10').have.value).toBeCloseTo(14 + Math.log10(30 / 40), 2);
    expect(at('6 to 10').verdict).toBe('short');
    expect(at('6 to 10').notes.map(({ code }) => code)).toContain('DRAIN_CAUSTIC');
    expect(at('as the authority says').verdict).toBe('unknown');
    expect(judged(washBook(), 'drainAcidity TD').decides).toBe('/floors/0/drains/acidity');
    // 12 kg NaOH x 98.079/(2 x 39.997)
    expect(figureOf(washBook(), 'neutralisingAcid', 'Z2').figure.value).toBeCloseTo(14.713, 2);
  });

  it('gets a caustic bath that was brought to the highest pH allowed, and not one half a unit above', () => {
    const steps = stepsOf(drained({ acidity: '6 to 10' }), 'drainAcidity TD', 'neutralised');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    expect([steps[first]!.text, steps[first - 1]!.text]).toEqual(['pH 10', 'pH 10.5']);
    expect(steps[first - 1]!.verdict).toBe('short');
  });

  it('gets a bath thinned with nine times its water one unit of pH lower, and none of a strong one within reach', () => {
    const thin = (share: string) =>
      stepsOf(
        washBook(
          { path: '/floors/0/drains', value: { acidity: '6 to 12' } },
          { path: '/line/stations/0/zones/1/concentration', value: share },
        ),
        'drainAcidity TD',
        'thinned',
      );
    // 0.4 % is 4 g/L, 0.1 mol/L, pH 13: nine volumes of water make 0.01 mol/L, pH 12
    const steps = thin('0.4 %');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    expect([steps[first]!.value, steps[first - 1]!.value]).toEqual([9, 8]);
    expect(thin('3 %').some(({ verdict }) => verdict === 'carries')).toBe(false);
  });

  it('asks nothing of the pH where the bath is treated elsewhere', () => {
    const [taken] = remediesFor(drained({ acidity: '6 to 10' }), {
      floor: 'A',
      finding: 'drainAcidity TD',
    }).filter(({ lever }) => lever === 'bathCollected');
    expect(taken!.patch).toEqual([{ path: '/line/stations/0/zones/1/collected', value: true }]);
  });

  it('is cooler by a bath that was cooled to the limit first, and by cold water in what runs', () => {
    const hot = drained({ highestTemperature: '50 degC' });
    const cooled = stepsOf(hot, 'drainTemperature TD', 'bathCooled');
    const first = cooled.findIndex(({ verdict }) => verdict === 'carries');
    expect([cooled[first]!.text, cooled[first - 1]!.verdict]).toEqual(['50 degC', 'short']);
    const running = washBook(
      { path: '/floors/0/drains', value: { highestTemperature: '25 degC' } },
      { path: '/line/stations/0/zones/1/collected', value: true },
    );
    const tempered = stepsOf(running, 'drainTemperature TD', 'tempering');
    const least = tempered.findIndex(({ verdict }) => verdict === 'carries');
    // 45 L/min of 28.67 degC with 15 degC: 45 (28.67 - 25)/(25 - 15) = 16.5 L/min, a little less by the density
    expect(tempered[least]!.text).toBe('16.5 L/min');
    expect(tempered[least - 1]!.verdict).toBe('short');
  });

  it('reads a range of pH as people write it, and nothing else', () => {
    expect([rangeOf('6 to 9.5'), rangeOf('pH 5,5 - 10'), rangeOf('6-9')]).toEqual([
      [6, 9.5],
      [5.5, 10],
      [6, 9],
    ]);
    expect([rangeOf('below 10'), rangeOf('9 to 6'), rangeOf('6 to 40'), rangeOf('')]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});
