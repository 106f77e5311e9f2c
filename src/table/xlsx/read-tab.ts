import { accept, type Problem, type Result } from '../../quantity/problem.ts';
import { limits } from '../limits.ts';
import { rowList } from '../row-list.ts';
import type { MergedCells, Tab } from '../table.ts';
import { cellValue, type RawCell } from './cell-value.ts';
import type { WorkbookParts } from './workbook-parts.ts';
import { readXml } from './xml.ts';

/** Row and column from 0 of `BC17`; undefined where it is none. */
const placeOf = (reference: string): readonly [row: number, column: number] | undefined => {
  const match = /^([A-Z]{1,3})([1-9][0-9]{0,6})$/.exec(reference);
  if (match === null) return undefined;
  let column = 0;
  for (const letter of match[1] as string) column = column * 26 + letter.charCodeAt(0) - 64;
  return [Number(match[2]) - 1, column - 1];
};

/** The area of `B2:B7`; undefined where it is none. */
const areaOf = (reference: string): MergedCells | undefined => {
  const [from, to] = reference.split(':').map(placeOf);
  if (from === undefined || to === undefined) return undefined;
  return { top: from[0], left: from[1], bottom: to[0], right: to[1] };
};

const blank: RawCell = { type: 'n', form: 'plain', value: '', inline: '', formula: '' };
const whole = (text: string | undefined): number | undefined =>
  text !== undefined && /^[1-9][0-9]{0,6}$/.test(text) ? Number(text) - 1 : undefined;

/**
 * The cells of one tab. Of merged cells the first holds the text, as the file has it, and the tab says which they are.
 *
 * Method   cells and rows without their place follow the one before
 * Cost     O(length)
 */
export const readTab = (name: string, part: string, xml: string, book: WorkbookParts): Result<Tab> => {
  const list = rowList();
  const merged: MergedCells[] = [];
  let [row, column] = [-1, -1];
  let cell: { -readonly [K in keyof RawCell]: RawCell[K] } | undefined;
  let into: 'value' | 'inline' | 'formula' | undefined;
  let small = 0;
  const read = readXml(part, xml, {
    open: (tag, attributes) => {
      if (tag === 'row') {
        row = whole(attributes.get('r')) ?? row + 1;
        column = -1;
      } else if (tag === 'c') {
        const place = placeOf(attributes.get('r') ?? '');
        [row, column] = place ?? [row, column + 1];
        const form = book.forms[Number(attributes.get('s') ?? 0)] ?? 'plain';
        cell = { ...blank, type: attributes.get('t') ?? 'n', form };
      } else if (tag === 'mergeCell') {
        const area = areaOf(attributes.get('ref') ?? '');
        if (area !== undefined && merged.length < limits.rows) merged.push(area);
      } else if (cell !== undefined) {
        if (tag === 'rPh') small += 1;
        into =
          tag === 'v' ? 'value' : tag === 'f' ? 'formula' : tag === 't' && small === 0 ? 'inline' : undefined;
      }
    },
    text: (piece) => {
      if (cell !== undefined && into !== undefined) cell[into] += piece;
    },
    close: (tag): Problem | undefined => {
      into = undefined;
      if (tag === 'rPh') small = 0;
      if (tag !== 'c' || cell === undefined) return undefined;
      const text = cellValue(cell, book);
      cell = undefined;
      return list.put(Math.max(row, 0), Math.max(column, 0), text);
    },
  });
  return read.ok ? accept({ name, rows: list.rows(), ...(merged.length === 0 ? {} : { merged }) }) : read;
};
