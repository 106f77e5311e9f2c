import type { Book } from '../../../book/index.ts';
import type { Problem, Result } from '../../../quantity/problem.ts';
import type { Tab } from '../../../table/table.ts';
import { fillProblem } from '../problems.ts';
import type { WeighedTrial } from '../weighed.ts';
import { floorNamed, formatNamed, laneNamed } from './book-names.ts';
import { trialColumns } from './columns.ts';
import { type ReadRow, type ReadRowsOptions, readRows } from './read-rows.ts';
import type { RowNotUnderstood, RowsRead, TakenRow } from './rows-read.ts';

/** What holds where a row does not say it. */
export interface UsualOfSheet extends ReadRowsOptions {
  readonly floor?: string;
  readonly format?: string;
}

const measured = ['gross', 'volume', 'level', 'time', 'overflow'] as const;

export const textIn = ({ values }: ReadRow, field: string): string | undefined => {
  const value = values[field];
  return value === undefined ? undefined : String(value);
};

export const problemsOf = (...results: readonly Result<unknown>[]): readonly Problem[] =>
  results.flatMap((result) => (result.ok ? [] : result.problems));

/** A sheet without headings has one fault, which is told once. */
export const headless = <T>(needed: readonly string[]): RowsRead<T> => ({
  taken: [],
  notUnderstood: [],
  empty: [],
  unknown: [],
  problems: [fillProblem('FILL_NO_HEADINGS', '', { allowed: needed })],
});

/**
 * Trials out of a sheet, one bottle a row, columns in any order, units in the headings or in the cells.
 *
 * Method   a row is taken wholly or not at all; one in which nothing was measured waits for its bottle
 * Symbols  rows  of the tab, from its first
 * Problems FILL_NO_HEADINGS of the sheet; at each row those of readCell and of floor, format, lane and count
 * Cost     O(cells)
 */
export const readTrialTable = (
  rows: Tab['rows'],
  book: Book,
  { floor, format, ...options }: UsualOfSheet,
): RowsRead<WeighedTrial> => {
  const needed = ['lane', 'preset'];
  const read = readRows(rows, trialColumns, needed, options);
  if (!read.headed) return headless(needed.map((field) => options.words.say(`fillSheet.column.${field}`)));
  const taken: TakenRow<WeighedTrial>[] = [];
  const notUnderstood: RowNotUnderstood[] = [];
  const empty: number[] = [];
  for (const row of read.rows) {
    const { values, problems } = row;
    if (problems.length === 0 && !measured.some((field) => field in values)) {
      empty.push(row.row);
      continue;
    }
    const onFloor = floorNamed(book, textIn(row, 'floor'), floor);
    const ofFormat = formatNamed(book, textIn(row, 'format'), format);
    const lane = laneNamed(book, textIn(row, 'lane'), options.words);
    const preset = values.preset;
    const wrong = [
      ...problems,
      ...problemsOf(onFloor, ofFormat, lane),
      ...(preset === undefined && !problems.some(({ path }) => path === 'preset')
        ? [fillProblem('FILL_PRESET_MISSING', 'preset')]
        : []),
    ];
    if (wrong.length > 0 || !onFloor.ok || !ofFormat.ok || !lane.ok || typeof preset !== 'number') {
      notUnderstood.push({ row: row.row, given: row.given, problems: wrong });
      continue;
    }
    taken.push({
      row: row.row,
      value: {
        ...(values as Partial<WeighedTrial>),
        floor: onFloor.value,
        format: ofFormat.value,
        lane: lane.value.tag,
        preset,
      },
      notes: lane.value.byNumber ? ['laneByNumber'] : [],
    });
  }
  return { taken, notUnderstood, empty, unknown: read.unknown, problems: [] };
};
