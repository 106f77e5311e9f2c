import makeUnit from 'unitmath';
import { describe, expect, it } from 'vitest';
import { airReferences } from './air-reference.ts';
import { fromSi, toSi } from './convert.ts';
import { type Kind, kinds, si } from './kinds.ts';
import { nistCases } from './nist.cases.ts';
import { unitsByKind } from './units-by-kind.ts';

const allKinds = Object.keys(kinds) as Kind[];
const factorOf = (kind: Kind, id: string): number => {
  const unit = unitsByKind[kind].find((each) => each.id === id);
  if (unit === undefined) throw new Error(`${kind} has no ${id}`);
  return unit.times / unit.over;
};
const relative = (a: number, b: number): number => Math.abs(a - b) / Math.abs(b);

describe('NIST SP 811 (2008), appendix B', () => {
  for (const { kind, unit, printed, exact, mark } of nistCases) {
    it(`${unit} as ${kind} is ${printed} (${mark})`, () => {
      const [mantissa = '', power = '0'] = printed.split('E');
      // a printed value is rounded, so the true one lies within half a unit of its last digit; a true value that
      // ends in 5 lies on that edge
      const half = 0.5 * 10 ** (Number(power) - (mantissa.split('.')[1] ?? '').length);
      const allowed = exact ? 2e-16 * Number(printed) : half * (1 + 1e-6);
      expect(Math.abs(factorOf(kind, unit) - Number(printed))).toBeLessThanOrEqual(allowed);
    });
  }
});

const pressures = {
  bar: 'bar',
  mbar: 'mbar',
  Pa: 'Pa',
  hPa: 'hPa',
  kPa: 'kPa',
  MPa: 'MPa',
  psi: 'psi',
  mmHg: 'mmHg',
  'kgf/cm2': '9.80665 N/cm^2',
  mH2O: '9.80665 kN/m^2',
  mmH2O: '9.80665 N/m^2',
  inH2O: '0.0980665 mbar in/mm',
  ftH2O: '0.0980665 mbar ft/mm',
  inHg: 'mmHg in/mm',
};
const pressuresMarked = (mark: string): Record<string, string> =>
  Object.fromEntries(
    Object.entries(pressures).map(([id, is]) => [id === 'psi' ? `psi${mark}` : `${id}(${mark})`, is]),
  );
const impGal = '4.54609 L';
const flows = {
  'm3/h': 'm^3/h',
  'm3/min': 'm^3/min',
  'm3/s': 'm^3/s',
  'L/min': 'L/min',
  'L/s': 'L/s',
  'L/h': 'L/h',
  'ft3/min': 'ft^3/min',
  'ft3/s': 'ft^3/s',
};

/** Each unit as another library spells it: its own unit where it has one, a definition where it has none. */
const oracle: Partial<Record<Kind, Readonly<Record<string, string>>>> = {
  length: { m: 'm', mm: 'mm', cm: 'cm', um: 'um', km: 'km', in: 'in', ft: 'ft', yd: 'yd' },
  area: { m2: 'm^2', cm2: 'cm^2', mm2: 'mm^2', in2: 'in^2', ft2: 'ft^2' },
  volume: {
    m3: 'm^3',
    L: 'L',
    mL: 'mL',
    cL: 'cL',
    hL: 'hL',
    'US gal': 'gal',
    'imp gal': impGal,
    'US qt': 'qt',
    'US pt': 'pt',
    'US fl oz': 'floz',
    'imp pt': '0.56826125 L',
    'imp fl oz': '28.4130625 mL',
    in3: 'in^3',
    ft3: 'ft^3',
  },
  mass: { kg: 'kg', g: 'g', mg: 'mg', t: 'tonne', lb: 'lbm', oz: 'oz', 'US ton': 'ton' },
  time: { s: 's', ms: 'ms', us: 'us', min: 'min', h: 'h', d: 'day' },
  lifetime: { y: '365 day', h: 'h', d: 'day' },
  angle: { deg: 'deg', rad: 'rad', mrad: 'mrad', rev: '360 deg' },
  velocity: {
    'm/s': 'm/s',
    'mm/s': 'mm/s',
    'cm/s': 'cm/s',
    'm/min': 'm/min',
    'km/h': 'km/h',
    'ft/s': 'ft/s',
    'ft/min': 'ft/min',
    'in/s': 'in/s',
    'in/min': 'in/min',
    'mi/h': 'mi/h',
  },
  acceleration: { 'm/s2': 'm/s^2', 'ft/s2': 'ft/s^2', gn: '9.80665 m/s^2' },
  frequency: { Hz: 'Hz', kHz: 'kHz', mHz: 'mHz' },
  rotationalSpeed: { rpm: 'min^-1', 'rev/s': 's^-1' },
  failureRate: { '/h': 'h^-1', FIT: '1e-9 h^-1' },
  rate: { '/h': 'h^-1', '/min': 'min^-1', '/s': 's^-1', '/d': 'day^-1' },
  startRate: { '/h': 'h^-1', '/min': 'min^-1', '/s': 's^-1', '/d': 'day^-1' },
  temperatureDifference: { K: 'K', degC: 'K', degF: 'degR' },
  gaugePressure: pressuresMarked('g'),
  absolutePressure: { ...pressuresMarked('a'), atm: 'atm' },
  pressureDifference: pressures,
  elasticModulus: { GPa: 'GPa', MPa: 'MPa', kPa: 'kPa', Pa: 'Pa', bar: 'bar', psi: 'psi', ksi: '1000 psi' },
  volumeFlow: {
    ...flows,
    'hL/h': 'hL/h',
    'mL/s': 'mL/s',
    'mL/min': 'mL/min',
    'US gal/min': 'gal/min',
    'US gal/h': 'gal/h',
    'US gal/d': 'gal/day',
    'imp gal/min': `${impGal}/min`,
    'imp gal/h': `${impGal}/h`,
  },
  actualAirFlow: flows,
  massFlow: {
    'kg/s': 'kg/s',
    'kg/min': 'kg/min',
    'kg/h': 'kg/h',
    'g/s': 'g/s',
    'g/min': 'g/min',
    't/h': 'tonne/h',
    'lb/s': 'lbm/s',
    'lb/min': 'lbm/min',
    'lb/h': 'lbm/h',
  },
  density: {
    'kg/m3': 'kg/m^3',
    'kg/L': 'kg/L',
    'g/mL': 'g/mL',
    'g/L': 'g/L',
    'lb/ft3': 'lbm/ft^3',
    'lb/US gal': 'lbm/gal',
    'lb/imp gal': '0.2199692482990878 lbm/L',
  },
  linearDensity: { 'kg/m': 'kg/m', 'g/m': 'g/m', 'lb/ft': 'lbm/ft', 'lb/in': 'lbm/in' },
  dynamicViscosity: {
    'mPa s': 'mPa s',
    'Pa s': 'Pa s',
    cP: 'mPa s',
    P: '0.1 Pa s',
    'uPa s': 'uPa s',
    'lb/(ft s)': 'lbm ft^-1 s^-1',
    'lbf s/ft2': 'lbf s/ft^2',
  },
  kinematicViscosity: { 'mm2/s': 'mm^2/s', 'm2/s': 'm^2/s', cSt: 'mm^2/s', St: 'cm^2/s', 'ft2/s': 'ft^2/s' },
  pulseDensity: {
    '/L': 'L^-1',
    '/mL': 'mL^-1',
    '/m3': 'm^-3',
    '/US gal': 'gal^-1',
    '/imp gal': '0.2199692482990878 L^-1',
  },
  force: { N: 'N', daN: 'daN', kN: 'kN', MN: 'MN', lbf: 'lbf', kgf: '9.80665 N', ozf: '0.0625 lbf' },
  torque: {
    'N m': 'N m',
    'N cm': 'N cm',
    'N mm': 'N mm',
    'kN m': 'kN m',
    'lbf in': 'lbf in',
    'lbf ft': 'lbf ft',
    'ozf in': '0.0625 lbf in',
    'kgf m': '9.80665 N m',
    'kgf cm': '9.80665 N cm',
  },
  energy: { kWh: 'kWh', Wh: 'Wh', MWh: 'MWh', J: 'J', kJ: 'kJ', MJ: 'MJ', Btu: 'BTU', 'ft lbf': 'ft lbf' },
  power: {
    kW: 'kW',
    W: 'W',
    mW: 'mW',
    MW: 'MW',
    hp: 'hp',
    PS: '735.49875 W',
    'Btu/h': 'BTU/h',
    'ft lbf/s': 'ft lbf/s',
  },
  heatFlow: { kW: 'kW', W: 'W', MW: 'MW', 'Btu/h': 'BTU/h', MBH: '1000 BTU/h' },
  heatFlux: { 'W/m2': 'W/m^2', 'kW/m2': 'kW/m^2', 'Btu/(h ft2)': 'BTU h^-1 ft^-2' },
  heatTransfer: { 'W/K': 'W/K', 'kW/K': 'kW/K', 'Btu/(h degF)': 'BTU h^-1 degR^-1' },
  surfaceCoefficient: {
    'W/(m2 K)': 'W m^-2 K^-1',
    'kW/(m2 K)': 'kW m^-2 K^-1',
    'Btu/(h ft2 degF)': 'BTU h^-1 ft^-2 degR^-1',
  },
  thermalConductivity: { 'W/(m K)': 'W m^-1 K^-1', 'Btu/(h ft degF)': 'BTU h^-1 ft^-1 degR^-1' },
  specificHeat: {
    'kJ/(kg K)': 'kJ kg^-1 K^-1',
    'J/(kg K)': 'J kg^-1 K^-1',
    'Btu/(lb degF)': 'BTU lbm^-1 degR^-1',
  },
  specificEnergy: { 'kJ/kg': 'kJ/kg', 'J/kg': 'J/kg', 'MJ/kg': 'MJ/kg', 'Btu/lb': 'BTU/lbm' },
  bearingPressure: {
    kPa: 'kPa',
    MPa: 'MPa',
    Pa: 'Pa',
    psi: 'psi',
    psf: 'lbf/ft^2',
    'kgf/cm2': '9.80665 N/cm^2',
    'kip/in2': '1000 psi',
  },
  waterHardness: {
    'mg/L CaCO3': 'mg/L',
    // a grain is 64.79891 mg
    'gr/US gal': '64.79891 mg/gal',
    fH: '10 mg/L',
    'gr/imp gal': '14.253767523300242 mg/L',
  },
  apparentPower: { kVA: 'kVA', VA: 'VA', MVA: 'MVA' },
  voltage: { V: 'V', kV: 'kV', mV: 'mV' },
  current: { A: 'A', mA: 'mA', kA: 'kA' },
  resistance: { ohm: 'ohm', mohm: 'mohm', kohm: 'kohm', Mohm: 'Mohm', Gohm: 'Gohm' },
  sonicConductance: {
    'dm3/(s bar)': '1 L s^-1 bar^-1',
    'L/(min bar)': '1 L min^-1 bar^-1',
    'm3/(s Pa)': '1 m^3 s^-1 Pa^-1',
    'ft3/(min psi)': '1 ft^3 min^-1 psi^-1',
  },
  massConcentration: {
    'g/m3': 'g/m^3',
    'mg/m3': 'mg/m^3',
    'kg/m3': 'kg/m^3',
    'gr/ft3': '64.79891 mg/ft^3',
  },
  numberConcentration: { '/m3': 'm^-3', '/L': 'L^-1', '/ft3': 'ft^-3' },
  soluteConcentration: {
    'mg/L': 'mg/L',
    'g/L': 'g/L',
    'ug/L': 'ug/L',
    '% w/v': '10 g/L',
    'oz/US gal': '0.0625 lbm/gal',
    'lb/US gal': 'lbm/gal',
  },
  concentrationTime: { 'mg min/L': 'mg min L^-1', 'mg s/L': 'mg s L^-1', 'kg s/m3': 'kg s m^-3' },
  inactivationRate: {
    'L/(mg s)': 'L mg^-1 s^-1',
    'L/(mg min)': 'L mg^-1 min^-1',
    'm3/(kg s)': 'm^3 kg^-1 s^-1',
  },
  cubicExpansion: { '1/K': 'K^-1', '1/degF': '1.8 K^-1' },
  equivalentConcentration: { N: 'mol/L', 'meq/L': 'mmol/L' },
  resistancePerLength: {
    'ohm/km': 'ohm/km',
    'ohm/m': 'ohm/m',
    'ohm/kft': '0.001 ohm/ft',
    'ohm/ft': 'ohm/ft',
  },
  conductorArea: { mm2: 'mm^2', cm2: 'cm^2', m2: 'm^2' },
  capacitance: { uF: 'uF', nF: 'nF', mF: 'mF', F: 'F' },
  conductivity: { 'uS/cm': 'uS/cm', 'mS/cm': 'mS/cm', 'mS/m': 'mS/m', 'S/m': 'S/m', 'uS/m': 'uS/m' },
};
/** The SI unit of a kind in the spelling of the other library, which has no turns. */
const siUnit = (kind: Kind): string => {
  const turned: Partial<Record<Kind, string>> = {
    rate: 's^-1',
    startRate: 's^-1',
    failureRate: 's^-1',
    rotationalSpeed: 's^-1',
    pulseDensity: 'm^-3',
    numberConcentration: 'm^-3',
    sonicConductance: 'm^3 s^-1 Pa^-1',
    inactivationRate: 'm^3 kg^-1 s^-1',
    cubicExpansion: 'K^-1',
    specificHeat: 'J kg^-1 K^-1',
    surfaceCoefficient: 'W m^-2 K^-1',
    thermalConductivity: 'W m^-1 K^-1',
  };
  return turned[kind] ?? kinds[kind].replace(/([ms])([23])/g, '$1^$2');
};

describe('a units library as oracle', () => {
  for (const [kind, units] of Object.entries(oracle) as [Kind, Record<string, string>][]) {
    it(`agrees on every unit of ${kind} to 1e-14`, () => {
      for (const [id, is] of Object.entries(units)) {
        const theirs = makeUnit(/^[\d.]/.test(is) ? is : `1 ${is}`).to(siUnit(kind)).value;
        // a few units in the last place: their factors are chains of rounded products
        expect(relative(factorOf(kind, id), theirs), `${id} against ${is}`).toBeLessThan(1e-14);
      }
    });
  }
  it('agrees on temperatures with their offset', () => {
    for (const degrees of [-40, -17.8, 0, 12, 60, 98.6, 212]) {
      expect(
        relative(toSi(degrees, 'temperature', 'degF'), makeUnit(`${degrees} degF`).to('K').value),
      ).toBeLessThan(1e-14);
      expect(
        relative(toSi(degrees, 'temperature', 'degC'), makeUnit(`${degrees} degC`).to('K').value),
      ).toBeLessThan(1e-14);
    }
  });
  it('takes water at 39.2 degF for an inch of water, where ours is the conventional one, 28 ppm heavier', () => {
    // NIST SP 811 B.8 prints both: 2.49082E+02 at 39.2 degF and 2.490889E+02 conventional (read)
    expect(makeUnit('1 inH2O').to('Pa').value).toBe(249.082);
    expect(factorOf('pressureDifference', 'inH2O') / 249.082 - 1).toBeCloseTo(2.77e-5, 7);
  });
});

describe('points of definition', () => {
  it('32 degF is 0 degC, 212 degF is 100 degC, -40 is the same on both, -459.67 degF is absolute zero', () => {
    expect(toSi(32, 'temperature', 'degF')).toBeCloseTo(273.15, 12);
    expect(toSi(212, 'temperature', 'degF')).toBeCloseTo(373.15, 12);
    expect(toSi(-40, 'temperature', 'degF')).toBeCloseTo(toSi(-40, 'temperature', 'degC'), 12);
    expect(toSi(-459.67, 'temperature', 'degF')).toBe(0);
  });
  it('a difference of 18 degF is 10 K', () => {
    expect(toSi(18, 'temperatureDifference', 'degF')).toBe(10);
  });
  it('2 pi radians a second is one turn a second', () => {
    expect(toSi(2 * Math.PI, 'rotationalSpeed', 'rad/s')).toBeCloseTo(1, 15);
  });
  it('decimal units give the nearest double', () => {
    expect(toSi(2, 'volume', 'L')).toBe(0.002);
    expect(toSi(25.4, 'length', 'mm')).toBe(0.0254);
    expect(toSi(1.045, 'density', 'kg/L')).toBe(1045);
    expect(toSi(65, 'relativeHumidity', '%')).toBe(0.65);
    expect(toSi(80, 'ratio', '%')).toBe(0.8);
    expect(toSi(2, 'massFraction', '%')).toBe(0.02);
    expect(toSi(20, 'massFraction', 'g/kg')).toBe(0.02);
    expect(toSi(20000, 'massFraction', 'mg/kg')).toBe(0.02);
    expect(toSi(0.02, 'massFraction', 'kg/kg')).toBe(0.02);
    expect(toSi(10, 'ratio', 'mm/m')).toBe(0.01);
    expect(toSi(8, 'humidityRatio', 'g/kg')).toBe(0.008);
    expect(toSi(70, 'humidityRatio', 'gr/lb')).toBe(0.01);
    expect(toSi(0.01, 'humidityRatio', 'lb/lb')).toBe(0.01);
  });
});

it('a thousand circular mils are the circle of a mil across, a thousand times: 0.506707 mm2', () => {
  expect(toSi(1, 'conductorArea', 'kcmil')).toBeCloseTo(5.06707e-7, 12);
  const square = makeUnit('1e-6 in^2').to('m^2').value;
  expect(relative(factorOf('conductorArea', 'kcmil'), 1000 * (Math.PI / 4) * square)).toBeLessThan(1e-14);
});

it('a German degree is 10 mg of CaO, 17.848 mg of CaCO3 in a litre; a millimole 100.09 mg: computed from atomic weights', () => {
  expect(toSi(1, 'waterHardness', 'dH')).toBeCloseTo(0.017848, 7);
  expect(toSi(1, 'waterHardness', 'mmol/L')).toBeCloseTo(0.10009, 5);
  expect(fromSi(toSi(1, 'waterHardness', 'mmol/L'), 'waterHardness', 'dH')).toBeCloseTo(5.608, 3);
});

describe('flow coefficients', () => {
  it('Cv 2.312 is Kv 1.99983 and Cv 10 is Kv 8.6498: a public fluid-mechanics library, read, to its printed digits', () => {
    expect(toSi(2.312, 'flowCoefficient', 'Cv')).toBeCloseTo(1.99983, 5);
    expect(toSi(10, 'flowCoefficient', 'Cv')).toBeCloseTo(8.6498, 4);
  });
  it('an imperial Cv is 1.03879 Kv: ratio of the gallons and the root of bar over psi, computed', () => {
    expect(toSi(1, 'flowCoefficient', 'Cv imp')).toBeCloseTo(1.03879, 5);
  });
  it('follows from the definition with the factors of the other library', () => {
    const gallon = makeUnit('1 gal/min').to('m^3/h').value;
    const root = Math.sqrt(makeUnit('1 bar').to('psi').value);
    expect(relative(factorOf('flowCoefficient', 'Cv'), gallon * root)).toBeLessThan(1e-14);
    expect(relative(factorOf('flowCoefficient', 'Cv imp'), ((4.54609 * 60) / 1000) * root)).toBeLessThan(
      1e-14,
    );
  });
});

describe('normal air', () => {
  const flow = (value: number, from: string, to: string): number =>
    fromSi(toSi(value, 'normalAirFlow', from), 'normalAirFlow', to);
  it('1 scfm at the compressor makers’ state is 1.562 Nm3/h and 1.699 m3/h at 1 bar, 20 degC: computed from the states', () => {
    expect(flow(1, 'scfm (CAGI)', 'Nm3/h (DIN 1343)')).toBeCloseTo(1.562, 3);
    expect(flow(1, 'scfm (CAGI)', 'Nm3/h (FAD)')).toBeCloseTo(1.699, 3);
  });
  it('1 scfm at 60 degF is 1.607 Nm3/h: computed from the states', () => {
    expect(flow(1, 'scfm (60 degF)', 'Nm3/h (DIN 1343)')).toBeCloseTo(1.607, 3);
  });
  it('100 L/min at 1 bar, 20 degC is 91.96 NL/min at 0 degC, 1.01325 bar: simple ratio, computed', () => {
    expect(flow(100, 'NL/min (ANR)', 'NL/min (DIN 1343)')).toBeCloseTo(91.96, 2);
  });
  it('1000 kg/h of dry air is 481 scfm where standard is 60 degF: public encyclopedia, read, within 0.3 %', () => {
    // 287.055 J/(kg K): dry air as an ideal gas
    const density = 101325 / (287.055 * 288.706);
    const cubicMetresAnHour = 1000 / density;
    const kept = (cubicMetresAnHour / 3600) * (101325 / 100000) * (293.15 / 288.706);
    expect(relative(fromSi(si('normalAirFlow', kept), 'normalAirFlow', 'scfm (60 degF)'), 481)).toBeLessThan(
      0.003,
    );
  });
  it.each([
    ['FAD', 1.1884],
    ['CAGI', 1.188],
    ['DIN 1343', 1.2923],
    ['15 degC', 1.225],
    ['60 degF', 1.2226],
  ])('the state %s holds %f kg of dry air in a cubic metre: table of reference states', (id, density) => {
    const reference = airReferences.find((each) => each.id === id);
    expect(reference).toBeDefined();
    expect(
      relative((reference?.pressure ?? 0) / (287.055 * (reference?.temperature ?? 1)), density),
    ).toBeLessThan(2e-4);
  });
  it('every unit is its plain volume or flow times the ratio of its state to 100 kPa, 293.15 K', () => {
    const plain: Record<string, string> = {
      NL: '1 L',
      Nm3: '1 m^3',
      scf: '1 ft^3',
      'NL/min': '1 L/min',
      'NL/s': '1 L/s',
      'NL/h': '1 L/h',
      'Nm3/h': '1 m^3/h',
      'Nm3/min': '1 m^3/min',
      scfm: '1 ft^3/min',
      scfh: '1 ft^3/h',
    };
    for (const kind of ['normalAirVolume', 'normalAirFlow'] as const) {
      for (const { id } of unitsByKind[kind]) {
        const [air = '', state = ''] = id.replace(')', '').split(' (');
        const reference = airReferences.find((each) => each.id === state);
        const volume = makeUnit(plain[air] as string).to(kind === 'normalAirFlow' ? 'm^3/s' : 'm^3').value;
        const ratio = ((reference?.pressure ?? 0) / 1e5) * (293.15 / (reference?.temperature ?? 1));
        expect(relative(factorOf(kind, id), volume * ratio), id).toBeLessThan(1e-14);
      }
    }
  });
  it('the states in US units are those of the other library', () => {
    const state = (id: string) => airReferences.find((each) => each.id === id);
    expect(state('CAGI')?.pressure).toBeCloseTo(makeUnit('14.5 psi').to('Pa').value, 8);
    expect(state('CAGI')?.temperature).toBeCloseTo(makeUnit('68 degF').to('K').value, 10);
    expect(state('60 degF')?.pressure).toBeCloseTo(makeUnit('14.696 psi').to('Pa').value, 8);
    expect(state('60 degF')?.temperature).toBeCloseTo(makeUnit('60 degF').to('K').value, 10);
    expect(state('14.7 psia 68 degF')?.pressure).toBeCloseTo(makeUnit('14.7 psi').to('Pa').value, 8);
  });
});

it('every unit is held against a table, another library or its definition', () => {
  const byDefinition: Partial<Record<Kind, readonly string[]>> = {
    ratio: ['', '%', 'mm/m'],
    count: [''],
    acidity: ['pH'],
    soundLevel: ['dB(A)'],
    massFraction: ['%', 'g/kg', 'mg/kg', 'kg/kg'],
    humidityRatio: ['g/kg', 'kg/kg', 'gr/lb', 'lb/lb'],
    relativeHumidity: ['%'],
    rotationalSpeed: ['rad/s'],
    conductorArea: ['kcmil'],
    waterHardness: ['dH', 'mmol/L'],
    temperature: ['degC', 'degF', 'K'],
    flowCoefficient: ['Kv', 'Cv', 'Cv imp'],
    normalAirFlow: unitsByKind.normalAirFlow.map(({ id }) => id),
    normalAirVolume: unitsByKind.normalAirVolume.map(({ id }) => id),
  };
  const unheld = allKinds.flatMap((kind) =>
    unitsByKind[kind]
      .filter(
        ({ id }) =>
          oracle[kind]?.[id] === undefined &&
          !byDefinition[kind]?.includes(id) &&
          !nistCases.some((each) => each.kind === kind && each.unit === id),
      )
      .map(({ id }) => `${kind} ${id}`),
  );
  expect(unheld).toEqual([]);
});
