import type { Table, TableCell, TableColumn } from '../table.ts';
import { type ChoiceList, choiceLists } from './choice-lists.ts';
import { pack } from './packing.ts';
import { columnName, placeName } from './place-name.ts';
import { serialOf } from './serial-day.ts';
import { styles, stylesXml } from './styles.ts';
import { tabName } from './tab-name.ts';
import { cellXml, markupXml } from './xml-text.ts';

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const parcel = 'http://schemas.openxmlformats.org/package/2006';
const contentOf = (part: string): string =>
  `application/vnd.openxmlformats-officedocument.spreadsheetml.${part}+xml`;

/** Text is written as text, never as something to work out, whatever sign it begins with. */
const textCell = (place: string, style: number, text: string): string =>
  text === ''
    ? `<c r="${place}" s="${style}"/>`
    : `<c r="${place}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${cellXml(text)}</t></is></c>`;

const cellOf = (place: string, cell: TableCell, column: TableColumn | undefined): string => {
  const isDay = column?.typedAs === 'day';
  const serial = isDay ? serialOf(cell.text) : undefined;
  const style = cell.open !== true ? styles.label : isDay ? styles.openDay : styles.open;
  return serial === undefined
    ? textCell(place, style, cell.text)
    : `<c r="${place}" s="${style}"><v>${serial}</v></c>`;
};

const rowOf = (row: number, cells: readonly string[]): string =>
  `<row r="${row + 1}">${cells.join('')}</row>`;

const columnsXml = (columns: readonly TableColumn[]): string =>
  columns
    .map(
      ({ width, hidden }, i) =>
        `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"${hidden === true ? ' hidden="1"' : ''}/>`,
    )
    .join('');

/** Choices warn and do not stop: another spelling may be right, and the answer is read in any case. */
const validationsXml = (lists: readonly ChoiceList[], tab: string): string =>
  lists.length === 0
    ? ''
    : `<dataValidations count="${lists.length}">${lists
        .map(({ choices, cells }, i) => {
          const column = columnName(i);
          const source = `'${tab.replaceAll("'", "''")}'!$${column}$1:$${column}$${choices.length}`;
          return (
            '<dataValidation type="list" errorStyle="warning" allowBlank="1" showErrorMessage="1" ' +
            `sqref="${cells.join(' ')}"><formula1>${markupXml(source)}</formula1></dataValidation>`
          );
        })
        .join('')}</dataValidations>`;

const tableXml = (table: Table, lists: readonly ChoiceList[], listsTab: string): string => {
  const lead = table.lead ?? [];
  const from = lead.length + 1;
  const last = Math.max(table.columns.length, 1) - 1;
  const rows = [
    ...lead.map((text, i) => rowOf(i, [textCell(placeName(i, 0), styles.lead, text)])),
    rowOf(
      lead.length,
      table.columns.map(({ heading }, i) => textCell(placeName(lead.length, i), styles.heading, heading)),
    ),
    ...table.rows.map((cells, i) =>
      rowOf(
        from + i,
        cells.map((cell, column) => cellOf(placeName(from + i, column), cell, table.columns[column])),
      ),
    ),
  ];
  const end = placeName(lead.length + table.rows.length, last);
  const merged =
    last === 0 ? [] : lead.map((_, i) => `<mergeCell ref="${placeName(i, 0)}:${placeName(i, last)}"/>`);
  return (
    `${head}<worksheet xmlns="${main}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="A1:${end}"/>` +
    `<sheetViews><sheetView workbookViewId="0" showGridLines="0"><pane ySplit="${from}" topLeftCell="A${from + 1}" ` +
    'activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/>' +
    (table.columns.length === 0 ? '' : `<cols>${columnsXml(table.columns)}</cols>`) +
    `<sheetData>${rows.join('')}</sheetData>` +
    // no password: it keeps a hand from slipping, nothing more; widths and heights stay free
    '<sheetProtection sheet="1" objects="1" scenarios="1" formatColumns="0" formatRows="0"/>' +
    (merged.length === 0 ? '' : `<mergeCells count="${merged.length}">${merged.join('')}</mergeCells>`) +
    validationsXml(lists, listsTab) +
    '<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.5" header="0.3" footer="0.3"/>' +
    '<pageSetup orientation="landscape" fitToWidth="1" fitToHeight="0"/>' +
    `<ignoredErrors><ignoredError sqref="A1:${end}" numberStoredAsText="1"/></ignoredErrors></worksheet>`
  );
};

const listsXml = (lists: readonly ChoiceList[]): string => {
  const height = Math.max(...lists.map(({ choices }) => choices.length));
  const rows = Array.from({ length: height }, (_, row) =>
    rowOf(
      row,
      lists.flatMap(({ choices }, column) => {
        const text = choices[row];
        return text === undefined ? [] : [textCell(placeName(row, column), styles.plain, text)];
      }),
    ),
  );
  return `${head}<worksheet xmlns="${main}"><sheetData>${rows.join('')}</sheetData><sheetProtection sheet="1" objects="1" scenarios="1"/></worksheet>`;
};

/**
 * A table as a spreadsheet (ECMA-376, xlsx): labels locked, open cells free, headings bold and held in view, choices
 * as drop-downs, whose texts stand on a hidden second tab because a list within a rule ends at 255 characters.
 *
 * Symbols  listsName  name of the hidden tab
 * Returns  the file; the same table gives the same bytes
 * Source   ECMA-376 part 1, 18.3.1, 18.8; part 2, 8 and 9, memory; opened with independent readers in the tests
 */
export const writeXlsx = (table: Table, listsName = 'lists'): Uint8Array => {
  const lists = choiceLists(table, (table.lead?.length ?? 0) + 1);
  const name = tabName(table.name);
  const wished = tabName(listsName);
  const second = wished.toLowerCase() === name.toLowerCase() ? `${wished.slice(0, 29)} 2` : wished;
  const tabs = lists.length === 0 ? [1] : [1, 2];
  const relations = (list: readonly (readonly [id: string, type: string, target: string])[]): string =>
    `${head}<Relationships xmlns="${parcel}/relationships">${list
      .map(([id, type, target]) => `<Relationship Id="${id}" Type="${office}/${type}" Target="${target}"/>`)
      .join('')}</Relationships>`;
  return pack({
    '[Content_Types].xml':
      `${head}<Types xmlns="${parcel}/content-types">` +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      `<Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${contentOf('sheet.main')}"/>` +
      tabs
        .map(
          (tab) =>
            `<Override PartName="/xl/worksheets/sheet${tab}.xml" ContentType="${contentOf('worksheet')}"/>`,
        )
        .join('') +
      `<Override PartName="/xl/styles.xml" ContentType="${contentOf('styles')}"/></Types>`,
    '_rels/.rels': relations([['rId1', 'officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml':
      `${head}<workbook xmlns="${main}" xmlns:r="${office}"><bookViews><workbookView/></bookViews><sheets>` +
      `<sheet name="${markupXml(name)}" sheetId="1" r:id="rId1"/>` +
      (lists.length === 0
        ? ''
        : `<sheet name="${markupXml(second)}" sheetId="2" state="hidden" r:id="rId2"/>`) +
      '</sheets></workbook>',
    'xl/_rels/workbook.xml.rels': relations([
      ...tabs.map((tab) => [`rId${tab}`, 'worksheet', `worksheets/sheet${tab}.xml`] as const),
      ['rId9', 'styles', 'styles.xml'],
    ]),
    'xl/styles.xml': stylesXml,
    'xl/worksheets/sheet1.xml': tableXml(table, lists, second),
    ...(lists.length === 0 ? {} : { 'xl/worksheets/sheet2.xml': listsXml(lists) }),
  });
};
