import type { BookReader } from './book-reader.ts';
import type { FigureValues } from './figure-values.ts';
import { lineFindings } from './line-figures.ts';
import { formatOf } from './read-floor.ts';
import { judgeUtilities } from './utilities/assess-utilities.ts';
import type { AnyFinding } from './utilities/utility-finding.ts';

/** One floor judged in all that it is asked, without the workings. */
export interface EveryFinding {
  /** Those of the main question, then those of the utilities. */
  readonly findings: readonly AnyFinding[];
  readonly values: FigureValues;
}

/** What a floor comes to: the main question and its utilities. */
export const everyFinding = (reader: BookReader, floor: number, format: string | undefined): EveryFinding => {
  const where = { floor, formatPath: formatOf(reader.book, format).path };
  const { findings, values } = lineFindings(reader, where);
  return { findings: [...findings, ...judgeUtilities(reader, where)], values };
};
