import type { Book } from '../book/index.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Call } from './command.ts';
import { cliProblem } from './problems.ts';

/** What the book has not, though it was asked for. */
export const askedInVain = (
  book: Book,
  path: string,
  { values: { format, floor } }: Call,
): readonly Problem[] => {
  const formats = (book.line?.formats ?? []).map(({ tag }) => tag);
  const floors = (book.floors ?? []).map(({ tag }) => tag);
  return [
    ...(floors.length === 0 ? [cliProblem('CLI_NO_FLOORS', path)] : []),
    ...(format === undefined || formats.includes(format)
      ? []
      : [cliProblem('CLI_FORMAT_UNKNOWN', '--format', { given: format, allowed: formats })]),
    ...(floor === undefined || floors.length === 0 || floors.includes(floor)
      ? []
      : [cliProblem('CLI_FLOOR_UNKNOWN', '--floor', { given: floor, allowed: floors })]),
  ];
};
