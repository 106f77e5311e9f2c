import type { TableProblemCode } from './problems.ts';

export const tableProblemText: { readonly en: Readonly<Record<TableProblemCode, string>> } = {
  en: {
    TABLE_TOO_LARGE: 'The file is too large: {given} bytes, of which {allowed} are read.',
    TABLE_NOT_TEXT: 'The file is neither a spreadsheet (xlsx) nor text (csv).',
    TABLE_NOT_IN_ENCODING: 'The letters of the file are not written as {given}. Say another encoding.',
    TABLE_QUOTE_OPEN: 'Row {row}: a cell opens with a quotation mark that is never closed.',
    TABLE_TOO_MANY_CELLS: 'The table is too large: {given}; allowed are {allowed}.',
    TABLE_OLD_OR_LOCKED:
      'The file is an older binary spreadsheet, or one under a password. Save it as xlsx or csv without a password.',
    TABLE_NOT_XLSX: 'The file is packed like a spreadsheet but has no {allowed}. Save it as xlsx or csv.',
    TABLE_ZIP_BROKEN: 'The file is damaged or was not sent whole: it cannot be unpacked ({path}).',
    TABLE_ZIP_ENTRIES: 'The file holds {given} parts; a spreadsheet has at most {allowed}.',
    TABLE_ZIP_NAME: 'The file holds a part named "{given}", which no spreadsheet has. It was not opened.',
    TABLE_ZIP_UNPACKED:
      'Unpacked, the file would have {given} bytes; allowed are {allowed}. It was not opened.',
    TABLE_ZIP_RATIO:
      'The file would unpack to {given} times its size; allowed are {allowed} times. It was not opened.',
    TABLE_ZIP_METHOD: 'The part "{given}" is encrypted or packed in a way that is not read.',
    TABLE_XML_BROKEN: 'The part {path} of the spreadsheet is damaged.',
    TABLE_XML_DOCTYPE:
      'The part {path} declares a document type, which no spreadsheet needs. It was not opened.',
  },
};
