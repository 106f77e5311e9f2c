import type { Kind } from './kinds.ts';

/** One row of a published table of factors. */
export interface FactorCase {
  readonly kind: Kind;
  readonly unit: string;
  /** As printed: the last digit is rounded, unless the row is exact. */
  readonly printed: string;
  readonly exact?: true;
  /** `read`: in a public transcription of the tables; otherwise recalled. */
  readonly mark: 'read' | 'memory';
}

type Row = readonly [unit: string, printed: string, mark: 'read' | 'memory', exact?: 'exact'];

const of = (kind: Kind, rows: readonly Row[]): readonly FactorCase[] =>
  rows.map(([unit, printed, mark, exact]) => ({
    kind,
    unit,
    printed,
    mark,
    ...(exact === undefined ? {} : { exact: true as const }),
  }));

const pressures: readonly Row[] = [
  ['bar', '1.0E+05', 'read', 'exact'],
  ['mbar', '1.0E+02', 'memory', 'exact'],
  ['psi', '6.894757E+03', 'read'],
  ['kgf/cm2', '9.80665E+04', 'memory', 'exact'],
  // conventional metre of water: the printed centimetre, 9.80665E+01, a hundred times
  ['mH2O', '9.80665E+03', 'read', 'exact'],
  ['mmH2O', '9.80665E+00', 'read', 'exact'],
  ['inH2O', '2.490889E+02', 'read'],
  ['ftH2O', '2.989067E+03', 'read'],
  ['mmHg', '1.333224E+02', 'read'],
  ['inHg', '3.386389E+03', 'read'],
];

const marked = (mark: 'g' | 'a'): readonly Row[] =>
  pressures.map(([unit, ...rest]) => [unit === 'psi' ? `psi${mark}` : `${unit}(${mark})`, ...rest]);

/**
 * Factors to SI as printed in NIST Special Publication 811, 2008 edition, appendices B.8 and B.9. Rows marked
 * `read` were read in public transcriptions of the tables; `memory` was not confirmed.
 */
export const nistCases: readonly FactorCase[] = [
  ...of('length', [
    ['um', '1.0E-06', 'read', 'exact'],
    ['in', '2.54E-02', 'read', 'exact'],
    ['ft', '3.048E-01', 'read', 'exact'],
    ['yd', '9.144E-01', 'read', 'exact'],
  ]),
  ...of('area', [
    ['in2', '6.4516E-04', 'memory', 'exact'],
    ['ft2', '9.290304E-02', 'memory', 'exact'],
  ]),
  ...of('volume', [
    ['L', '1.0E-03', 'read', 'exact'],
    ['US gal', '3.785412E-03', 'read'],
    ['imp gal', '4.54609E-03', 'read', 'exact'],
    ['US qt', '9.463529E-04', 'read'],
    ['US pt', '4.731765E-04', 'read'],
    ['US fl oz', '2.957353E-05', 'read'],
    ['imp fl oz', '2.841306E-05', 'read'],
    // printed as the gill, 1.420653E-04, of which four make a pint
    ['imp pt', '5.682612E-04', 'memory'],
    ['in3', '1.638706E-05', 'memory'],
    ['ft3', '2.831685E-02', 'read'],
  ]),
  ...of('mass', [
    ['lb', '4.535924E-01', 'read'],
    ['oz', '2.834952E-02', 'read'],
    ['t', '1.0E+03', 'read', 'exact'],
    ['US ton', '9.071847E+02', 'read'],
  ]),
  ...of('time', [
    ['min', '6.0E+01', 'read', 'exact'],
    ['h', '3.6E+03', 'read', 'exact'],
    ['d', '8.64E+04', 'read', 'exact'],
  ]),
  ...of('angle', [
    ['deg', '1.745329E-02', 'memory'],
    ['rev', '6.283185E+00', 'read'],
  ]),
  ...of('velocity', [
    ['ft/s', '3.048E-01', 'read', 'exact'],
    ['ft/min', '5.08E-03', 'read', 'exact'],
    ['in/s', '2.54E-02', 'read', 'exact'],
    ['mi/h', '4.4704E-01', 'memory', 'exact'],
    ['km/h', '2.777778E-01', 'memory'],
  ]),
  ...of('acceleration', [
    ['gn', '9.80665E+00', 'memory', 'exact'],
    ['ft/s2', '3.048E-01', 'memory', 'exact'],
  ]),
  ...of('volumeFlow', [
    ['US gal/min', '6.30902E-05', 'read'],
    ['US gal/d', '4.381264E-08', 'memory'],
    ['ft3/min', '4.719474E-04', 'read'],
    ['ft3/s', '2.831685E-02', 'memory'],
  ]),
  ...of('massFlow', [
    ['lb/h', '1.259979E-04', 'memory'],
    ['lb/min', '7.559873E-03', 'memory'],
    ['lb/s', '4.535924E-01', 'memory'],
  ]),
  ...of('density', [
    ['lb/ft3', '1.601846E+01', 'memory'],
    ['lb/US gal', '1.198264E+02', 'memory'],
    ['lb/imp gal', '9.977637E+01', 'memory'],
  ]),
  ...of('linearDensity', [
    ['lb/ft', '1.488164E+00', 'memory'],
    ['lb/in', '1.785797E+01', 'memory'],
  ]),
  ...of('dynamicViscosity', [
    ['cP', '1.0E-03', 'read', 'exact'],
    ['P', '1.0E-01', 'read', 'exact'],
    ['lb/(ft s)', '1.488164E+00', 'memory'],
    ['lbf s/ft2', '4.788026E+01', 'memory'],
  ]),
  ...of('kinematicViscosity', [
    ['cSt', '1.0E-06', 'memory', 'exact'],
    ['St', '1.0E-04', 'read', 'exact'],
    ['ft2/s', '9.290304E-02', 'memory', 'exact'],
  ]),
  ...of('force', [
    ['lbf', '4.448222E+00', 'read'],
    ['kgf', '9.80665E+00', 'read', 'exact'],
    ['ozf', '2.780139E-01', 'read'],
  ]),
  ...of('torque', [
    ['lbf ft', '1.355818E+00', 'read'],
    ['lbf in', '1.129848E-01', 'read'],
    ['ozf in', '7.061552E-03', 'memory'],
    ['kgf m', '9.80665E+00', 'memory', 'exact'],
  ]),
  ...of('energy', [
    ['Btu', '1.055056E+03', 'read'],
    ['kWh', '3.6E+06', 'memory', 'exact'],
    ['ft lbf', '1.355818E+00', 'memory'],
  ]),
  ...of('power', [
    ['hp', '7.456999E+02', 'read'],
    ['PS', '7.354988E+02', 'read'],
    ['Btu/h', '2.930711E-01', 'memory'],
    ['ft lbf/s', '1.355818E+00', 'memory'],
  ]),
  ...of('gaugePressure', marked('g')),
  ...of('absolutePressure', [...marked('a'), ['atm', '1.01325E+05', 'read', 'exact']]),
  ...of('pressureDifference', pressures),
  ...of('elasticModulus', [
    ['psi', '6.894757E+03', 'read'],
    ['ksi', '6.894757E+06', 'read'],
  ]),
  ...of('temperatureDifference', [
    // degree Fahrenheit as an interval: printed 5.555556E-01
    ['degF', '5.555556E-01', 'memory'],
  ]),
];
