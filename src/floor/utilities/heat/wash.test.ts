import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Patch, readBook, tryPatches } from '../../../book/index.ts';
import { causticRuleKeys } from '../../../sheets/hygiene/caustic-rules.ts';
import { sanitisingRuleKeys } from '../../../sheets/hygiene/sanitising-rules.ts';
import type { Figure } from '../../finding.ts';
import { assessBook } from '../../index.ts';
import { askedOf, figureOf, judged, stepsOf } from '../testing/judged.ts';
import { washBook } from '../testing/wash-book.ts';
import { ruleOf } from './wash-rules.ts';
import { zonesOf } from './zones-of.ts';

const zone2 = '/line/stations/0/zones/1';
const rule = (text: string) => ({ path: `${zone2}/need`, value: { rule: text } });

describe('contact in the wash', () => {
  it('of a gated spray is N (tau - t_dead): 5 (12 - 4) = 40 s', () => {
    expect(judged(washBook(), 'washContact Z2').have.value).toBeCloseTo(40, 9);
  });

  it('of case 1 of the hygiene reference: 4 stations of 12 s, on for 8 s, are 32 s', () => {
    const book = washBook(
      { path: `${zone2}/rows`, value: 4 },
      { path: `${zone2}/dead`, op: 'remove' },
      { path: `${zone2}/sprayFraction`, value: 0.8 },
    );
    // eight of ten seconds of dwell
    expect(judged(book, 'washContact Z2').have.value).toBeCloseTo(32, 9);
  });

  it('of a soak is the stay without the emptying', () => {
    const book = washBook(
      { path: `${zone2}/soaks`, value: true },
      { path: `${zone2}/emptying`, value: '6 s' },
    );
    expect(judged(book, 'washContact Z2').have.value).toBeCloseTo(5 * 12 - 6, 9);
  });

  it('shrinks where the drive runs on 60 Hz instead of 50, by the stroke alone if a timer dwells', () => {
    const fast = { path: '/floors/0/power/frequency', value: '60 Hz' };
    expect(judged(washBook(fast), 'washContact Z2').have.value).toBeCloseTo(5 * (2 / 1.2 + 10 - 4), 9);
    const cam = washBook(fast, { path: '/line/stations/0/dwellBy', value: 'drive' });
    expect(judged(cam, 'washContact Z2').have.value).toBeCloseTo(5 * (10 - 4), 9);
  });

  it('stays longest at the agreed rate where that is slower than the washer', () => {
    // 4 bottles at 720/h are 20 s, the index alone 12 s
    expect(figureOf(washBook(), 'longestStay', 'Z2').figure.value).toBeCloseTo(5 * 20, 9);
  });
});

describe('in the line of the demo book', () => {
  const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
  if (!demo.ok) throw new Error('the demo book does not read');
  const caustic = '/line/stations/1/zones/1';
  const site = (...changes: readonly Patch[]) =>
    assessBook(tryPatches(demo.value, changes)).floors.find(({ floor }) => floor === 'LARKMOOR')!;
  const widthOf = (figure: Figure) => figure.high! - figure.low!;

  it('contact is as unsure as the index that the air of the floor makes: four dwells of it', () => {
    const floor = site({ path: `${caustic}/dead`, value: '3 s' });
    const { figure } = floor.utilities.figures.find(({ id, of }) => id === 'contact' && of === '+WASH.Z2')!;
    const index = floor.figures.washerIndex!;
    expect(figure.value! / (4 * (index.value! - 3))).toBeCloseTo(1, 6);
    // the line takes the greater move of each value for both sides, the utilities each side for itself
    const above = ({ high, value }: Figure) => high! - value!;
    expect(above(index)).toBeGreaterThan(0.01);
    expect(above(figure) / (4 * above(index))).toBeCloseTo(1, 3);
  });

  it('stays in the caustic for four cycles of a line that holds the washer, and is short by that', () => {
    const slow = { path: '/floors/1/supply/run/1/kv', value: 'Kv 5' };
    const floor = site(slow, { path: `${caustic}/longestStay`, value: '60 s' });
    const cycle = floor.figures.cycle!;
    expect(cycle.value!).toBeGreaterThan(floor.figures.washerIndex!.value!);
    const stay = floor.utilities.findings.find(({ id }) => id === 'washStay +WASH.Z2')!;
    expect(stay.have.value! / (4 * cycle.value!)).toBeCloseTo(1, 9);
    expect(stay.verdict).toBe('short');
    expect(widthOf(stay.have) / (4 * widthOf(cycle))).toBeCloseTo(1, 6);
  });

  it('leaves the longest stay open where nobody has told of the supply that may hold the washer', () => {
    const floor = site(
      { path: '/floors/1/supply', op: 'remove' },
      { path: `${caustic}/longestStay`, value: '90 s' },
    );
    expect(floor.utilities.findings.find(({ id }) => id === 'washStay +WASH.Z2')).toMatchObject({
      verdict: 'unknown',
    });
  });
});

describe('the rule of a wash', () => {
  it('is asked for where none is named, and nothing of ours stands in for it', () => {
    for (const id of ['washContact Z2', 'washTemperature Z2', 'washConcentration Z2']) {
      const found = judged(washBook(), id);
      expect([found.verdict, found.demand.value, found.decides]).toEqual([
        'unknown',
        undefined,
        '/agreement/hygiene/rule',
      ]);
    }
  });

  it('is asked for where a need has figures and no rule, or a rule that is not held and no figures', () => {
    const figures = washBook({ path: `${zone2}/need`, value: { contact: '10 s' } });
    expect(judged(figures, 'washContact Z2')).toMatchObject({
      verdict: 'unknown',
      decides: `${zone2}/need/rule`,
    });
    const stranger = washBook(rule('house rule of the dairy'));
    expect(judged(stranger, 'washContact Z2')).toMatchObject({
      verdict: 'unknown',
      decides: `${zone2}/need/rule`,
    });
  });

  it('counts with its own figures where the book names it and gives them', () => {
    const book = washBook({
      path: `${zone2}/need`,
      value: { rule: 'house rule of the dairy', contact: '39 s' },
    });
    expect(judged(book, 'washContact Z2').verdict).toBe('carries');
    expect(askedOf(book)).not.toContain('washTemperature Z2');
  });

  it('of Oregon wants 3 % caustic, 5 min and 130 degF', () => {
    const book = washBook(rule('Oregon, OAR 603-021-0720'));
    expect(judged(book, 'washContact Z2')).toMatchObject({ verdict: 'short', demand: { value: 300 } });
    expect(judged(book, 'washTemperature Z2').demand.value).toBeCloseTo(273.15 + 54.44, 1);
    expect(judged(book, 'washTemperature Z2').verdict).toBe('carries');
    expect(judged(book, 'washConcentration Z2')).toMatchObject({
      verdict: 'carries',
      demand: { value: 0.03 },
    });
  });

  it('of Connecticut counts alkali, of which three fifths must be caustic', () => {
    const weak = washBook(rule('CT 21a-142'), { path: `${zone2}/alkali`, value: '6 %' });
    // 3 of 6 % is half
    expect(judged(weak, 'washConcentration Z2').verdict).toBe('short');
    const right = washBook(rule('CT 21a-142'), { path: `${zone2}/alkali`, value: '4 %' });
    expect(judged(right, 'washConcentration Z2')).toMatchObject({
      verdict: 'carries',
      demand: { value: 0.035 },
      have: { value: 0.04 },
    });
  });

  it('of Maine states no time, and none is asked', () => {
    const asked = askedOf(washBook(rule('ME 32-1854')));
    expect(asked).not.toContain('washContact Z2');
    expect(asked).toContain('washTemperature Z2');
  });

  it('of the agreement holds for the detergent zone that names none', () => {
    const book = washBook({ path: '/agreement/hygiene', value: { rule: 'CA HSC 112080' } });
    expect(judged(book, 'washConcentration Z2').demand.value).toBe(0.025);
  });

  it('for heat is two points and no line: cases 3 of the hygiene reference', () => {
    const heat = (fahrenheit: number, minutes: number) => {
      const book = washBook(
        { path: `${zone2}/medium`, value: 'steam' },
        { path: `${zone2}/concentration`, op: 'remove' },
        { path: `${zone2}/soaks`, value: true },
        { path: `${zone2}/emptying`, value: '0 s' },
        { path: `${zone2}/temperature`, value: `${fahrenheit} degF` },
        { path: '/line/stations/0/dwell', value: `${(60 * minutes) / 5 - 2} s` },
        rule('N.J.A.C. 8:21-5.8'),
      );
      const found = ['washContact Z2', 'washTemperature Z2'].map((id) => judged(book, id).verdict);
      return found.every((verdict) => verdict === 'carries');
    };
    expect([heat(170, 15), heat(200, 5), heat(180, 10), heat(200, 4), heat(180, 15)]).toEqual([
      true,
      true,
      false,
      false,
      true,
    ]);
  });

  it('asks a chlorine spray of New Jersey for 100 ppm at 75 degF', () => {
    const book = washBook(
      { path: `${zone2}/medium`, value: 'sanitiser' },
      { path: `${zone2}/agent`, value: 'chlorine' },
      { path: `${zone2}/concentration`, value: '80 ppm' },
      { path: `${zone2}/temperature`, value: '20 degC' },
      rule('NJ 8:21-5.8'),
    );
    expect(judged(book, 'washConcentration Z2')).toMatchObject({ verdict: 'short' });
    expect(judged(book, 'washConcentration Z2').demand.value).toBeCloseTo(1e-4, 12);
    expect(judged(book, 'washTemperature Z2').verdict).toBe('short');
  });

  it('finds every key by its own text and by its number alone', () => {
    for (const key of causticRuleKeys) {
      const book = washBook(rule(key));
      expect(ruleOf(book, zonesOf(book)[1]!).held?.key).toBe(key);
    }
    for (const key of sanitisingRuleKeys) {
      const medium = key === 'LA 51-X-117' ? 'chlorine' : 'ozone';
      const book = washBook(
        { path: `${zone2}/medium`, value: key === 'CA FAC 33519' ? 'steam' : 'sanitiser' },
        { path: `${zone2}/agent`, value: medium },
        { path: `${zone2}/soaks`, value: true },
        rule(`by ${key}, as told`),
      );
      expect(ruleOf(book, zonesOf(book)[1]!).held?.key).toBe(key);
    }
  });

  it('is met by the least longer dwell, and a tenth of a second less is short', () => {
    const book = washBook({ path: `${zone2}/need`, value: { rule: 'house rule', contact: '45 s' } });
    const steps = stepsOf(book, 'washContact Z2', 'washerDwell');
    const first = steps.findIndex(({ verdict }) => verdict === 'carries');
    // 45/5 + 4 - 2 = 11 s
    expect(steps[first]!.value).toBeCloseTo(11, 9);
    expect(steps[first - 1]!.verdict).toBe('short');
  });
});

describe('rinsing', () => {
  it('leaves what two single stages leave at the shortest index', () => {
    // 30 g/L; 15 and 18 L/min for 12 s over 4 bottles are 0.75 and 0.9 L, half of which mixes with 4 mL
    const left = 30 / (1 + (0.5 * 0.75) / 0.004) / (1 + (0.5 * 0.9) / 0.004);
    expect(figureOf(washBook(), 'rinse').figure.value).toBeCloseTo(left, 9);
  });

  it('against the current leaves c0/(1 + r + r^2)', () => {
    const book = washBook({ path: '/line/stations/0/zones/2/from', value: 'Z4' });
    const r = (0.5 * 0.9) / 0.004;
    expect(figureOf(book, 'rinse').figure.value).toBeCloseTo(30 / (1 + r + r * r), 9);
  });
});
