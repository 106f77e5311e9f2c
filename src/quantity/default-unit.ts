import type { Kind } from './kinds.ts';

export type UnitSystem = 'metric' | 'us';

const defaults: Readonly<Record<Kind, readonly [metric: string, us: string]>> = {
  ratio: ['', ''],
  count: ['', ''],
  length: ['m', 'ft'],
  area: ['m2', 'ft2'],
  volume: ['L', 'US gal'],
  mass: ['kg', 'lb'],
  time: ['s', 's'],
  angle: ['deg', 'deg'],
  velocity: ['m/s', 'ft/s'],
  acceleration: ['m/s2', 'ft/s2'],
  frequency: ['Hz', 'Hz'],
  rotationalSpeed: ['rpm', 'rpm'],
  temperature: ['degC', 'degF'],
  temperatureDifference: ['K', 'degF'],
  gaugePressure: ['bar(g)', 'psig'],
  absolutePressure: ['bar(a)', 'psia'],
  pressureDifference: ['bar', 'psi'],
  volumeFlow: ['L/min', 'US gal/min'],
  normalAirVolume: ['NL (ANR)', 'scf (CAGI)'],
  normalAirFlow: ['NL/min (ANR)', 'scfm (CAGI)'],
  actualAirFlow: ['m3/min', 'ft3/min'],
  massFlow: ['kg/h', 'lb/h'],
  density: ['kg/L', 'lb/ft3'],
  dynamicViscosity: ['mPa s', 'cP'],
  kinematicViscosity: ['mm2/s', 'cSt'],
  elasticModulus: ['GPa', 'ksi'],
  flowCoefficient: ['Kv', 'Cv'],
  pulseDensity: ['/L', '/US gal'],
  rate: ['/h', '/h'],
  force: ['N', 'lbf'],
  torque: ['N m', 'lbf in'],
  energy: ['kWh', 'kWh'],
  power: ['kW', 'hp'],
  apparentPower: ['kVA', 'kVA'],
  voltage: ['V', 'V'],
  current: ['A', 'A'],
  resistance: ['ohm', 'ohm'],
  conductivity: ['uS/cm', 'uS/cm'],
  massFraction: ['%', '%'],
  relativeHumidity: ['%', '%'],
  linearDensity: ['kg/m', 'lb/ft'],
};

/** The unit in which a kind is shown where the reader has not chosen another. */
export const defaultUnit = (kind: Kind, system: UnitSystem): string =>
  defaults[kind][system === 'us' ? 1 : 0];
