import { describe, expect, it } from 'vitest';
import type { Kind } from './kinds.ts';
import { parseQuantity } from './parse-quantity.ts';

const read = (text: string, kind: Kind, locale?: string) => parseQuantity(text, kind, { path: '/x', locale });
const siOf = (text: string, kind: Kind, locale?: string): number => {
  const result = read(text, kind, locale);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0]?.code}`);
  return result.value.value;
};
const unitOf = (text: string, kind: Kind): string => {
  const result = read(text, kind);
  return result.ok ? result.value.unit : (result.problems[0]?.code ?? '');
};
const problemOf = (text: string, kind: Kind, locale?: string) => {
  const result = read(text, kind, locale);
  return result.ok ? undefined : result.problems[0];
};
/** Values in these tables are factors of NIST SP 811 or definitions; the factors themselves are held in their own test. */
const psi = 6894.757293168361;

describe('pressures', () => {
  it.each([
    ['80 psi', 80 * psi, 'psig'],
    ['80psig', 80 * psi, 'psig'],
    ['80 psi(g)', 80 * psi, 'psig'],
    ['5.5 bar', 550000, 'bar(g)'],
    ['5.5 bar(g)', 550000, 'bar(g)'],
    ['5.5 barg', 550000, 'bar(g)'],
    ['5.5 bar g', 550000, 'bar(g)'],
    ['5.5 bar gauge', 550000, 'bar(g)'],
    ['5.5 BAR(G)', 550000, 'bar(g)'],
    ['350 kPa', 350000, 'kPa(g)'],
    ['0.4 MPa', 400000, 'MPa(g)'],
    ['5 kgf/cm²', 490332.5, 'kgf/cm2(g)'],
    ['2 mH₂O', 19613.3, 'mH2O(g)'],
    ['−0.2 bar', -20000, 'bar(g)'],
  ])('%s is a gauge pressure where one is asked', (text, value, unit) => {
    expect(siOf(text, 'gaugePressure')).toBeCloseTo(value, 6);
    expect(unitOf(text, 'gaugePressure')).toBe(unit);
  });
  it.each([
    ['0.4 MPa abs', 400000],
    ['4 bar(a)', 400000],
    ['4 bara', 400000],
    ['4 bar', 400000],
    ['14.696 psia', 14.696 * psi],
    ['1 atm', 101325],
    ['760 mmHg', 101325.0144354],
  ])('%s is an absolute pressure where one is asked', (text, value) => {
    expect(siOf(text, 'absolutePressure')).toBeCloseTo(value, 6);
  });
  it('never takes a marked pressure for the other reference', () => {
    for (const text of ['5 psig', '5 barg', '5 bar(g)', '5 kPa gauge']) {
      expect(unitOf(text, 'absolutePressure')).toBe('QUANTITY_GAUGE_FOR_ABSOLUTE');
    }
    for (const text of ['5 psia', '5 bara', '5 bar(a)', '0.4 MPa abs', '1 atm']) {
      expect(unitOf(text, 'gaugePressure')).toBe('QUANTITY_ABSOLUTE_FOR_GAUGE');
    }
  });
  it('takes only a bare unit for a difference', () => {
    expect(siOf('0.3 bar', 'pressureDifference')).toBe(30000);
    expect(unitOf('0.3 bar(g)', 'pressureDifference')).toBe('QUANTITY_WRONG_KIND');
    expect(unitOf('5 psia', 'pressureDifference')).toBe('QUANTITY_WRONG_KIND');
  });
  it('never turns a milli into a mega by a slip of the shift key', () => {
    expect(unitOf('5 mPa', 'gaugePressure')).toBe('QUANTITY_UNIT_UNKNOWN');
    expect(unitOf('5 MM', 'length')).toBe('QUANTITY_UNIT_UNKNOWN');
    expect(siOf('5 mW', 'power')).toBe(0.005);
    expect(siOf('5 MW', 'power')).toBe(5e6);
    expect(siOf('2 mΩ', 'resistance')).toBe(0.002);
    expect(siOf('2 MΩ', 'resistance')).toBe(2e6);
  });
});

describe('gallons', () => {
  it.each([
    ['12 gal', 'volume', 'US gal', 12 * 0.003785411784],
    ['12 US gal', 'volume', 'US gal', 12 * 0.003785411784],
    ['12 gal (US)', 'volume', 'US gal', 12 * 0.003785411784],
    ['12 imp gal', 'volume', 'imp gal', 12 * 0.00454609],
    ['12 gal (imp)', 'volume', 'imp gal', 12 * 0.00454609],
    ['12 UK gal', 'volume', 'imp gal', 12 * 0.00454609],
    ['12 gal/min', 'volumeFlow', 'US gal/min', (12 * 0.003785411784) / 60],
    ['12 gpm', 'volumeFlow', 'US gal/min', (12 * 0.003785411784) / 60],
    ['12 imp gpm', 'volumeFlow', 'imp gal/min', (12 * 0.00454609) / 60],
    ['12 gpm (imp)', 'volumeFlow', 'imp gal/min', (12 * 0.00454609) / 60],
    ['100 pulses/gal', 'pulseDensity', '/US gal', 100 / 0.003785411784],
  ] as const)('%s as %s is in %s', (text, kind, unit, value) => {
    expect(unitOf(text, kind)).toBe(unit);
    expect(siOf(text, kind) / value).toBeCloseTo(1, 14);
  });
});

describe('air', () => {
  it('names the reference that a bare normal unit means', () => {
    expect(unitOf('120 NL/min', 'normalAirFlow')).toBe('NL/min (DIN 1343)');
    expect(unitOf('3 Nm3/h', 'normalAirFlow')).toBe('Nm3/h (DIN 1343)');
    expect(unitOf('4 scfm', 'normalAirFlow')).toBe('scfm (CAGI)');
    expect(unitOf('2 NL', 'normalAirVolume')).toBe('NL (DIN 1343)');
  });
  it('reads the reference where it stands', () => {
    for (const text of [
      '120 NL/min (ANR)',
      '120 NL/min ANR',
      '120 L/min (ANR)',
      '120 l/min ANR',
      '2 dm3/s ANR',
    ]) {
      expect(siOf(text, 'normalAirFlow')).toBeCloseTo(0.002, 15);
    }
    expect(unitOf('4 scfm (60 °F)', 'normalAirFlow')).toBe('scfm (60 degF)');
    expect(unitOf('4 scfm (14.7 psia, 68 °F)', 'normalAirFlow')).toBe('scfm (14.7 psia 68 degF)');
  });
  it('never takes an actual flow for a normal one, nor the other way', () => {
    expect(problemOf('120 L/min', 'normalAirFlow')).toMatchObject({ code: 'QUANTITY_WRONG_KIND' });
    expect(problemOf('120 NL/min', 'actualAirFlow')).toMatchObject({
      code: 'QUANTITY_WRONG_KIND',
      parts: { of: 'normalAirFlow', asked: 'actualAirFlow', unit: 'NL/min' },
    });
    expect(problemOf('120 NL/min', 'volumeFlow')).toMatchObject({ code: 'QUANTITY_WRONG_KIND' });
    expect(siOf('120 L/min', 'actualAirFlow')).toBe(0.002);
  });
});

describe('other kinds', () => {
  it.each([
    ['Kv 1.2', 'flowCoefficient', 1.2],
    ['Kv = 1.2', 'flowCoefficient', 1.2],
    ['1.2 Kv', 'flowCoefficient', 1.2],
    ['1.2 m3/h', 'flowCoefficient', 1.2],
    ['412 /L', 'pulseDensity', 412000],
    ['412/L', 'pulseDensity', 412000],
    ['412 pulses/L', 'pulseDensity', 412000],
    ['412 imp/L', 'pulseDensity', 412000],
    ['1.56 pulses/mL', 'pulseDensity', 1560000],
    ['K 412/L', 'pulseDensity', 412000],
    ['1050 bottles/h', 'rate', 1050 / 3600],
    ['1 050 bottles per hour', 'rate', 1050 / 3600],
    ['17.5 /min', 'rate', 17.5 / 60],
    ['1050/h', 'rate', 1050 / 3600],
    ['50 Hz', 'frequency', 50],
    ['1450 rpm', 'rotationalSpeed', 1450 / 60],
    ['1450 /min', 'rotationalSpeed', 1450 / 60],
    ['1450 min⁻¹', 'rotationalSpeed', 1450 / 60],
    ['2 %', 'massFraction', 0.02],
    ['0.8', 'ratio', 0.8],
    ['80 %', 'ratio', 0.8],
    ['80%', 'ratio', 0.8],
    ['65 %', 'relativeHumidity', 0.65],
    ['65 % rh', 'relativeHumidity', 0.65],
    ['2.5 N m', 'torque', 2.5],
    ['2.5 N·m', 'torque', 2.5],
    ['2.5 Nm', 'torque', 2.5],
    ['20 lbf in', 'torque', 2.259696580552334],
    ['20 in-lb', 'torque', 2.259696580552334],
    ['60 degF', 'temperature', 288.7055555555556],
    ['60 °F', 'temperature', 288.7055555555556],
    ['12 °C', 'temperature', 285.15],
    ['12 degC', 'temperature', 285.15],
    ['12℃', 'temperature', 285.15],
    ['285 K', 'temperature', 285],
    ['10 K', 'temperatureDifference', 10],
    ['18 degF', 'temperatureDifference', 10],
    ['2 L', 'volume', 0.002],
    ['2 l', 'volume', 0.002],
    ['2 dm³', 'volume', 0.002],
    ['4.5 µm', 'length', 4.5e-6],
    ['4.5 um', 'length', 4.5e-6],
    ['1.1 mPa·s', 'dynamicViscosity', 0.0011],
    ['1.1 cP', 'dynamicViscosity', 0.0011],
    ['1 cSt', 'kinematicViscosity', 1e-6],
    ['1 mm²/s', 'kinematicViscosity', 1e-6],
    ['500 µS/cm', 'conductivity', 0.05],
    ['1.045 g/mL', 'density', 1045],
    ['5 hp', 'power', 3728.4993579113507],
    ['10 kVA', 'apparentPower', 10000],
    ['90 deg', 'angle', Math.PI / 2],
    ['90°', 'angle', Math.PI / 2],
    ['4', 'count', 4],
  ] as const)('%s as %s', (text, kind, value) => {
    expect(siOf(text, kind) / value).toBeCloseTo(1, 14);
  });
  it('wants a unit where a bare number would leave the scale open', () => {
    for (const kind of ['massFraction', 'relativeHumidity', 'gaugePressure', 'length'] as const) {
      expect(unitOf('2', kind)).toBe('QUANTITY_UNIT_MISSING');
    }
  });
});

describe('fractions and two-part values', () => {
  it.each([
    ['1 1/2 in', 38.1],
    ['1-1/2"', 38.1],
    ['1-1/2 in', 38.1],
    ['3/4 in', 19.05],
    ['1½ in', 38.1],
    ['1 ½″', 38.1],
    ['1⁄2 in', 12.7],
    ['-1 1/2 in', -38.1],
    ['1 3/64 in', 26.590625],
    ['1 125/128 in', 50.2046875],
    ['5 ft 3 in', 1600.2],
    ['5\' 3 1/2"', 1612.9],
    ['5\'-3 1/2"', 1612.9],
    ['-5 ft 3 in', -1600.2],
    ['-0 ft 3 in', -76.2],
    ['1 m 5 cm', 1050],
  ])('%s', (text, millimetres) => {
    expect(siOf(text, 'length') * 1000).toBeCloseTo(millimetres, 9);
  });
  it('reads hours and minutes, pounds and ounces', () => {
    expect(siOf('1 h 30 min', 'time')).toBe(5400);
    expect(siOf('2 lb 8 oz', 'mass')).toBeCloseTo(2.5 * 0.45359237, 15);
  });
  it('refuses what is none', () => {
    for (const text of [
      '5 in 3 ft',
      '1/0 in',
      '1 1/2 1/2 in',
      '1 50 in',
      '5.5 ft 3 in',
      '3/4/5 in',
      '5 ft -3 in',
    ]) {
      expect(read(text, 'length').ok, text).toBe(false);
    }
  });
});

describe('number forms', () => {
  it.each([
    ['2,5 m', 2.5],
    ['2,50 m', 2.5],
    ['0,125 m', 0.125],
    ['1 050 m', 1050],
    ['1\u202f050 m', 1050],
    ['1\u2009050 m', 1050],
    ['1\u00a0050 m', 1050],
    ["1'050 m", 1050],
    ['1’050,5 m', 1050.5],
    ['1 050,5 m', 1050.5],
    ['1 050.25 m', 1050.25],
    ['1 050 000 m', 1050000],
    ['1.050,5 m', 1050.5],
    ['1,050.5 m', 1050.5],
    ['1,050,000 m', 1050000],
    ['1.050.000 m', 1050000],
    ['12345,678 m', 12345.678],
    ['1.045 m', 1.045],
    ['.5 m', 0.5],
    [',5 m', 0.5],
    ['+5 m', 5],
    ['−5 m', -5],
    ['- 5 m', -5],
    ['1e5 m', 1e5],
    ['1E5 m', 1e5],
    ['0.5e-3 m', 0.0005],
    ['0.5e−3 m', 0.0005],
    ['1.2×10⁻³ m', 0.0012],
    ['1.2 x 10^-3 m', 0.0012],
    ['1.2·10³ m', 1200],
  ])('%s', (text, value) => {
    expect(siOf(text, 'length')).toBe(value);
  });
  it('refuses a comma before exactly three digits, and says both readings', () => {
    expect(problemOf('1,050 m', 'length')).toEqual({
      code: 'QUANTITY_AMBIGUOUS_NUMBER',
      path: '/x',
      given: '1,050 m',
      allowed: ['1050', '1.050'],
    });
  });
  it('reads it by the language of the typist where that is known', () => {
    expect(siOf('1,050 m', 'length', 'en')).toBe(1050);
    expect(siOf('1,050 m', 'length', 'de')).toBe(1.05);
    expect(siOf('1.045 m', 'length', 'en')).toBe(1.045);
    expect(problemOf('1.045 m', 'length', 'de')).toMatchObject({
      code: 'QUANTITY_AMBIGUOUS_NUMBER',
      allowed: ['1045', '1,045'],
    });
    expect(siOf('1.04 m', 'length', 'de')).toBe(1.04);
  });
  it.each([
    '1.2.3 m',
    '1,2,3 m',
    '1,05,000 m',
    '1 050 12 m',
    '1..2 m',
    '--5 m',
    'e5 m',
    '.m',
    'NaN m',
    'Infinity m',
  ])('refuses %s', (text) => {
    expect(read(text, 'length').ok).toBe(false);
  });
  it('counts the digits that were typed', () => {
    const digits = (text: string) => {
      const result = read(text, 'length');
      return result.ok ? result.value.digits : 0;
    };
    expect([digits('2.50 m'), digits('0.0864 m'), digits('1 050 m'), digits('0 m'), digits('1e5 m')]).toEqual(
      [3, 3, 4, 1, 1],
    );
  });
});

describe('a refused text', () => {
  it('is told with where, what came, what it is a unit of and what would do', () => {
    expect(problemOf('5.5 kg', 'gaugePressure')).toMatchObject({
      code: 'QUANTITY_WRONG_KIND',
      path: '/x',
      given: '5.5 kg',
      parts: { unit: 'kg', of: 'mass', asked: 'gaugePressure' },
    });
    expect(problemOf('5.5 kg', 'gaugePressure')?.allowed).toContain('bar(g)');
  });
  it('is never echoed at length', () => {
    const given = problemOf('9'.repeat(100_000), 'length')?.given;
    expect(String(given).length).toBeLessThan(200);
  });
  it('says so below absolute zero, below vacuum and beyond the largest number', () => {
    expect(unitOf('-300 degC', 'temperature')).toBe('QUANTITY_BELOW_ABSOLUTE_ZERO');
    expect(unitOf('-1 bar', 'absolutePressure')).toBe('QUANTITY_BELOW_VACUUM');
    expect(unitOf('1e999 m', 'length')).toBe('QUANTITY_NOT_FINITE');
    expect(siOf('-273.15 degC', 'temperature')).toBe(0);
  });
});
