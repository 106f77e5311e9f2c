import { type Kind, type Si, si } from './kinds.ts';
import { checkedSi, isProblem, type ReadOptions, readMeasure } from './measure.ts';
import { accept, type Result, refuse } from './problem.ts';

export interface Quantity<K extends Kind> {
  readonly value: Si<K>;
  /** Canonical id of the unit that was read: a bare `gal` gives `US gal`. */
  readonly unit: string;
  /** Significant digits typed; 15 for a fraction, which is exact. */
  readonly digits: number;
}

/**
 * One quantity from text, as the kind that is asked.
 *
 * Method   number (see `scanNumber`), then the unit among those of the kind. A bare pressure takes the kind
 *          asked; a marked one must agree with it. A bare `gal` is US. A bare normal-air unit takes the
 *          reference that its id then names.
 * Returns  SI value, canonical unit, digits typed
 * Problems QUANTITY_UNREADABLE, QUANTITY_UNIT_MISSING, QUANTITY_UNIT_UNKNOWN, QUANTITY_WRONG_KIND,
 *          QUANTITY_GAUGE_FOR_ABSOLUTE, QUANTITY_ABSOLUTE_FOR_GAUGE, QUANTITY_AMBIGUOUS_NUMBER,
 *          QUANTITY_NOT_FINITE, QUANTITY_BELOW_ABSOLUTE_ZERO, QUANTITY_BELOW_VACUUM
 * Cost     O(length); a few microseconds
 * Source   factors: see `constants.ts`
 */
export const parseQuantity = <K extends Kind>(
  text: string,
  kind: K,
  options: ReadOptions,
): Result<Quantity<K>> => {
  const read = readMeasure(text, kind, options);
  if (isProblem(read)) return refuse(read);
  const value = checkedSi(read.number, read.unit, kind, text, options);
  if (typeof value !== 'number') return refuse(value);
  return accept({ value: si(kind, value), unit: read.unit.id, digits: read.digits });
};
