import type { Book } from '../../../book/index.ts';
import type { Problem } from '../../../quantity/problem.ts';
import type { Tab } from '../../../table/table.ts';
import { fillProblem } from '../problems.ts';
import type { WeighedLot, WeighedPackage } from '../weighed.ts';
import { floorNamed, formatNamed, laneNamed } from './book-names.ts';
import { lotColumns, packageColumns } from './columns.ts';
import type { CellValue } from './read-cell.ts';
import { readRows } from './read-rows.ts';
import { headless, problemsOf, textIn, type UsualOfSheet } from './read-trial-table.ts';
import type { RowNotUnderstood, RowsRead, TakenRow } from './rows-read.ts';

const ofLot = new Set(lotColumns.map(({ field }) => field));
const ofPackage = new Set(packageColumns.map(({ field }) => field));

export interface LotRead extends RowsRead<WeighedPackage> {
  /** The lot of all rows that were taken; absent where there is none, or where its head could not be read. */
  readonly lot?: WeighedLot;
}

/**
 * A lot out of a sheet, one bottle a row; what holds for the whole lot may stand in any row, and in several only alike.
 *
 * Problems FILL_NO_HEADINGS, FILL_LOT_DIFFERS and those of floor and format of the sheet; at each row those of readCell
 *          and of the lane
 * Cost     O(cells)
 */
export const readLotTable = (
  rows: Tab['rows'],
  book: Book,
  { floor, format, ...options }: UsualOfSheet,
): LotRead => {
  const { words } = options;
  const read = readRows(rows, [...packageColumns, ...lotColumns], ['gross'], options);
  if (!read.headed) return headless([words.say('fillSheet.column.gross')]);
  const whole: Record<string, CellValue> = {};
  const problems: Problem[] = [];
  const taken: TakenRow<WeighedPackage>[] = [];
  const notUnderstood: RowNotUnderstood[] = [];
  const empty: number[] = [];
  for (const row of read.rows) {
    const { values } = row;
    const differing = Object.entries(values).flatMap(([field, value]): readonly Problem[] => {
      if (!ofLot.has(field)) return [];
      const before = whole[field];
      whole[field] ??= value;
      return before === undefined || before === value
        ? []
        : [fillProblem('FILL_LOT_DIFFERS', field, { given: String(value), allowed: String(before) })];
    });
    const lane = values.lane === undefined ? undefined : laneNamed(book, textIn(row, 'lane'), words);
    const wrong = [...row.problems, ...differing, ...(lane === undefined ? [] : problemsOf(lane))];
    if (wrong.length === 0 && values.gross === undefined) {
      if (values.tare === undefined) empty.push(row.row);
      else {
        const missing = [fillProblem('FILL_GROSS_MISSING', 'gross')];
        notUnderstood.push({ row: row.row, given: row.given, problems: missing });
      }
      continue;
    }
    if (wrong.length > 0) {
      notUnderstood.push({ row: row.row, given: row.given, problems: wrong });
      continue;
    }
    const own = Object.fromEntries(Object.entries(values).filter(([field]) => ofPackage.has(field)));
    taken.push({
      row: row.row,
      value: {
        ...(own as unknown as WeighedPackage),
        ...(lane?.ok === true ? { lane: lane.value.tag } : {}),
      },
      notes: lane?.ok === true && lane.value.byNumber ? ['laneByNumber'] : [],
    });
  }
  const onFloor = floorNamed(book, whole.floor?.toString(), floor);
  const ofFormat = formatNamed(book, whole.format?.toString(), format);
  problems.push(...problemsOf(onFloor, ofFormat));
  const report = { taken, notUnderstood, empty, unknown: read.unknown, problems };
  if (!onFloor.ok || !ofFormat.ok || taken.length === 0) return report;
  return {
    ...report,
    lot: {
      ...(whole as Partial<WeighedLot>),
      floor: onFloor.value,
      format: ofFormat.value,
      packages: taken.map(({ value }) => value),
    },
  };
};
