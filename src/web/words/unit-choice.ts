import type { Kind } from '../../quantity/index.ts';
import type { UnitChoice } from '../state/page-state.ts';

type UnitNames = Readonly<Record<string, string>>;

/** Which of the book's own unit names serves a kind. */
const nameOf: Partial<Record<Kind, string>> = {
  gaugePressure: 'pressure',
  absolutePressure: 'pressure',
  pressureDifference: 'pressure',
  volumeFlow: 'flow',
  volume: 'volume',
  length: 'length',
  temperature: 'temperature',
  mass: 'mass',
  density: 'density',
  velocity: 'velocity',
  dynamicViscosity: 'viscosity',
  flowCoefficient: 'flowCoefficient',
  rate: 'rate',
  force: 'force',
  torque: 'torque',
  power: 'power',
  energy: 'energy',
};

const metric: Partial<Record<Kind, string>> = {
  gaugePressure: 'bar',
  absolutePressure: 'bar',
  pressureDifference: 'bar',
  volumeFlow: 'L/min',
  volume: 'L',
  length: 'm',
  temperature: 'degC',
  temperatureDifference: 'K',
  mass: 'kg',
  density: 'kg/L',
  velocity: 'm/s',
  rate: 'bottles/h',
  time: 's',
  dynamicViscosity: 'mPa s',
  flowCoefficient: 'm3/h',
  pulseDensity: '/L',
};

const us: Partial<Record<Kind, string>> = {
  ...metric,
  gaugePressure: 'psi',
  absolutePressure: 'psi',
  pressureDifference: 'psi',
  volumeFlow: 'US gal/min',
  volume: 'US gal',
  length: 'ft',
  temperature: 'degF',
  temperatureDifference: 'degF',
  mass: 'lb',
  density: 'lb/ft3',
  velocity: 'ft/s',
};

/** A size that reads better in the small unit: bores, nozzles, millilitres of overflow, a long time. */
const fine = (kind: Kind, value: number, system: 'metric' | 'us', book: UnitNames): string | undefined => {
  const size = Math.abs(value);
  if (kind === 'length' && size > 0 && size < 0.3) return system === 'us' ? 'in' : (book.bore ?? 'mm');
  if (kind === 'volume' && size > 0 && size < 1e-4) return system === 'us' ? 'in3' : 'mL';
  if (kind === 'time' && size >= 5400) return 'h';
  if (kind === 'time' && size >= 300) return 'min';
  if (kind === 'time' && size > 0 && size < 0.1) return 'ms';
  return undefined;
};

/**
 * The unit in which a value is shown: the one that the person chose, else the book's, finer where it is small.
 *
 * Returns  the name of a unit as `formatQuantity` takes it, or undefined where the kind has only one
 */
export const unitFor = (
  kind: Kind,
  value: number,
  choice: UnitChoice,
  book: UnitNames = {},
  bookSystem?: string,
): string | undefined => {
  const named = choice === 'book' ? book : {};
  const system = choice === 'us' || (choice === 'book' && bookSystem === 'us') ? 'us' : 'metric';
  return (
    fine(kind, value, system, named) ?? named[nameOf[kind] ?? ''] ?? (system === 'us' ? us : metric)[kind]
  );
};
