import { asPair, type Ratio } from './ratio.ts';

/** One unit of one kind: SI value = (number + offset) times / over. */
export interface Unit {
  /** Canonical name, plain characters: what a result carries and what a setting stores. */
  readonly id: string;
  /** As it is printed. */
  readonly label: string;
  readonly times: number;
  readonly over: number;
  /** Added to the number first; only temperatures have one. */
  readonly offset: number;
  /** Other spellings that are read. */
  readonly also: readonly string[];
  /** Printed before the number, as in `Kv 1.2`. */
  readonly before: boolean;
  /** Names a convention that the unit rests on; its words stand in `units.text.ts`. */
  readonly note?: string;
}

export interface UnitOptions {
  readonly label?: string;
  readonly also?: readonly string[];
  readonly offset?: number;
  readonly before?: boolean;
  readonly note?: string;
}

/** A unit by its exact factor to the SI unit of its kind; a plain number only where the factor is irrational. */
export const unit = (id: string, factor: Ratio | number, options: UnitOptions = {}): Unit => {
  const [times, over] = typeof factor === 'number' ? [factor, 1] : asPair(factor);
  return {
    id,
    label: options.label ?? id,
    times,
    over,
    offset: options.offset ?? 0,
    also: options.also ?? [],
    before: options.before ?? false,
    ...(options.note === undefined ? {} : { note: options.note }),
  };
};
