import { unitsOf } from './convert.ts';
import { defaultUnit, type UnitSystem } from './default-unit.ts';
import type { Kind } from './kinds.ts';

/** Units that only readers of US customary units type; one of them among the inputs turns the rest to them. */
const customary = new Set([
  'in',
  'ft',
  'psi',
  'psig',
  'psia',
  'US gal',
  'US gal/min',
  'degF',
  'lb',
  'lbf',
  'Cv',
  'hp',
]);

export const isCustomary = (unit: string): boolean => customary.has(unit);

export interface UnitWishes {
  /** Unit that was typed or that the book names, by kind. */
  readonly byKind: Readonly<Partial<Record<Kind, string>>>;
  readonly system?: UnitSystem | undefined;
  /** Unit of a bore or another small size, where the book names one beside that of a length. */
  readonly small?: string;
}

const small = (kind: Kind, value: number, us: boolean): string | undefined => {
  const size = Math.abs(value);
  if (size === 0) return undefined;
  if (kind === 'length' && size < 0.3) return us ? 'in' : 'mm';
  if (kind === 'volume' && size < 1e-4) return us ? 'in3' : 'mL';
  // an insulation in ohms would be a row of zeros
  if (kind === 'resistance' && size >= 1e5) return 'Mohm';
  if (kind === 'time' && size < 0.1) return 'ms';
  if (kind === 'time' && size >= 5400) return 'h';
  if (kind === 'time' && size >= 600) return 'min';
  return undefined;
};

const has = (kind: Kind, unit: string): boolean => unitsOf(kind).some(({ id }) => id === unit);

/** The unit in which a value is printed: as it was typed for that kind, else the usual one of the system. */
export const unitFor = (kind: Kind, value: number, { byKind, system, small: bore }: UnitWishes): string => {
  if (kind === 'length' && bore !== undefined && value !== 0 && Math.abs(value) < 0.3) return bore;
  const wished = byKind[kind];
  // an overflow in litres would be a row of zeros
  if (kind === 'volume' && wished === 'L' && value !== 0 && Math.abs(value) < 1e-4) return 'mL';
  if (wished !== undefined) return wished;
  const us = system === 'us';
  const fine = small(kind, value, us);
  return fine !== undefined && has(kind, fine) ? fine : defaultUnit(kind, us ? 'us' : 'metric');
};
