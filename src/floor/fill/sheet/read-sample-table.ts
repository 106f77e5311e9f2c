import type { Book } from '../../../book/index.ts';
import type { Tab } from '../../../table/table.ts';
import type { MeasuredSample } from '../weighed.ts';
import { formatNamed } from './book-names.ts';
import { sampleColumns } from './columns.ts';
import { readRows } from './read-rows.ts';
import { headless, problemsOf, textIn, type UsualOfSheet } from './read-trial-table.ts';
import type { RowNotUnderstood, RowsRead, TakenRow } from './rows-read.ts';

/** Fields that only say which bottle it is and who looked. */
const about = new Set(['format', 'bottle', 'mould', 'by', 'at', 'instrument', 'resolution', 'remark']);

/**
 * The customer's bottles out of a sheet, one a row; a bottle without a number takes that of its row.
 *
 * Problems FILL_NO_HEADINGS of the sheet; at each row those of readCell and of the format
 * Cost     O(cells)
 */
export const readSampleTable = (
  rows: Tab['rows'],
  book: Book,
  { format, ...options }: UsualOfSheet,
): RowsRead<MeasuredSample> => {
  const { words } = options;
  const read = readRows(rows, sampleColumns, ['mass'], options);
  if (!read.headed) return headless([words.say('fillSheet.column.mass')]);
  const taken: TakenRow<MeasuredSample>[] = [];
  const notUnderstood: RowNotUnderstood[] = [];
  const empty: number[] = [];
  for (const row of read.rows) {
    const { values, problems } = row;
    if (problems.length === 0 && Object.keys(values).every((field) => about.has(field))) {
      empty.push(row.row);
      continue;
    }
    const ofFormat = formatNamed(book, textIn(row, 'format'), format);
    const wrong = [...problems, ...problemsOf(ofFormat)];
    if (wrong.length > 0 || !ofFormat.ok) {
      notUnderstood.push({ row: row.row, given: row.given, problems: wrong });
      continue;
    }
    taken.push({
      row: row.row,
      value: {
        ...(values as Partial<MeasuredSample>),
        format: ofFormat.value,
        bottle: textIn(row, 'bottle') ?? String(row.row),
      },
      notes: [],
    });
  }
  return { taken, notUnderstood, empty, unknown: read.unknown, problems: [] };
};
