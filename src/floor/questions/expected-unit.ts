import { unitsOf } from '../../quantity/convert.ts';
import { defaultUnit, type UnitSystem } from '../../quantity/default-unit.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { findUnit } from '../../quantity/unit-lookup.ts';

/** Units of a kind as a drop-down offers them; the bare number is the empty cell. */
export const offeredUnits = (kind: Kind): readonly string[] =>
  unitsOf(kind)
    .map(({ label }) => label)
    .filter((label) => label !== '');

/** The unit that stands in the sheet before anybody has written into it, as it is printed. */
export const expectedUnit = (kind: Kind, asked: string | undefined, system: UnitSystem): string =>
  findUnit(kind, asked ?? defaultUnit(kind, system))?.label ?? '';
