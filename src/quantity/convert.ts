import { type Kind, type Si, si } from './kinds.ts';
import type { Unit } from './unit.ts';
import { findUnit } from './unit-lookup.ts';
import { unitsByKind } from './units-by-kind.ts';

export const inSi = (value: number, unit: Unit): number => ((value + unit.offset) * unit.times) / unit.over;
export const inUnit = (value: number, unit: Unit): number => (value * unit.over) / unit.times - unit.offset;

/** The unit of a name that the program itself chose; a name that is none of the kind is a mistake of the caller. */
export const unitNamed = (kind: Kind, name: string): Unit => {
  const unit = findUnit(kind, name);
  if (unit === undefined) throw new RangeError(`${name} is no unit of ${kind}`);
  return unit;
};

/** A number in a unit of the kind, in SI. */
export const toSi = <K extends Kind>(value: number, kind: K, unit: string): Si<K> =>
  si(kind, inSi(value, unitNamed(kind, unit)));

/** An SI value as a number in a unit of its kind. */
export const fromSi = <K extends Kind>(value: Si<K>, kind: K, unit: string): number =>
  inUnit(value, unitNamed(kind, unit));

export interface UnitName {
  readonly id: string;
  readonly label: string;
  /** Convention that the unit rests on; words in `units.text.ts`. */
  readonly note?: string;
}

/** The units of a kind in the order of a menu. */
export const unitsOf = (kind: Kind): readonly UnitName[] =>
  unitsByKind[kind].map(({ id, label, note }) => (note === undefined ? { id, label } : { id, label, note }));
