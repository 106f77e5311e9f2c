import type { Kind } from '../../quantity/kinds.ts';
import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { findUnit } from '../../quantity/unit-lookup.ts';
import { problemOf } from './problem-of.ts';

export interface TypedQuantity {
  readonly answer: string;
  /** What stands in the cell of the unit. */
  readonly unit: string;
  /** Units that stood there before anybody wrote. */
  readonly expected: readonly string[];
}

/**
 * The text of a quantity as it will stand in the book.
 *
 * Method   an answer without a unit takes that of its cell. One that has its own keeps it where the cell says the
 *          same or was left as it was; where both were chosen and differ, nobody can tell which is meant.
 * Problems ANSWER_TWO_UNITS and those of `readEntry`: a mark that may part thousands or decimals is questioned
 */
export const quantityAnswer = (path: string, kind: Kind, typed: TypedQuantity): Result<string> => {
  const { answer, unit, expected } = typed;
  const read = (text: string) => readEntry(text, kind, { path });
  const alone = read(answer);
  if (unit === '') return alone.ok ? accept(answer) : alone;
  const beside = findUnit(kind, unit);
  const isBare = alone.ok && alone.value.unit === '';
  const lacksUnit = !alone.ok && alone.problems.every(({ code }) => code === 'QUANTITY_UNIT_MISSING');
  if (isBare || lacksUnit) {
    const both = `${answer} ${unit}`;
    const together = read(both);
    return together.ok ? accept(both) : together;
  }
  if (!alone.ok) return alone;
  const isExpected = expected.some((each) => findUnit(kind, each) === beside);
  return beside !== undefined && (beside.id === alone.value.unit || isExpected)
    ? accept(answer)
    : refuse(problemOf('ANSWER_TWO_UNITS', path, { given: answer, parts: { unit } }));
};
