import type { BookReader } from './book-reader.ts';
import type { FigureValues } from './figure-values.ts';
import { judgeFloor } from './judge-floor.ts';
import { keepLine } from './line-figures.ts';
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
  const { inputs, findings, figures, values } = judgeFloor(reader, floor, format);
  const where = { floor, formatPath: inputs.formatPath };
  keepLine(reader, where, figures);
  const utilities = judgeUtilities(reader, where);
  return { findings: [...findings, ...utilities], values };
};
