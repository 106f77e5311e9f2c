import { paperKinds } from '../book/paper-kinds.ts';
import { stockNames } from '../papers/labels/stock-names.ts';
import { languages } from '../text/index.ts';
import type { Command } from './command.ts';

/** A paper of a book as a PDF: to be read, signed, filled in and sent back. */
export const printCommand: Command = {
  name: 'print',
  usage: 'BOOK.json [RECORDS]',
  options: [
    {
      name: 'paper',
      value: 'PAPER',
      oneOf: paperKinds,
    },
    {
      name: 'stock',
      value: 'STOCK',
      oneOf: stockNames,
    },
    { name: 'floor', value: 'TAG' },
    { name: 'format', value: 'TAG' },
    { name: 'page', value: 'SIZE', oneOf: ['a4', 'letter'] },
    { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
    { name: 'language', value: 'LANGUAGE', oneOf: languages },
    { name: 'beside', value: 'LANGUAGE|WORDS.xlsx|.csv' },
    { name: 'date', value: 'DAY' },
    { name: 'out', value: 'FILE.pdf' },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor print examples/gravity.json --out prediction.pdf',
    'twinfloor print examples/main.json --paper preparation --page letter --units us',
    'twinfloor print examples/main.json --paper protocol --floor OXBOW --beside es',
    'twinfloor print examples/main.json --paper card --out card.pdf',
    'twinfloor print src/book/demo/flagon-line.json examples/records/protocol.records --paper dossier',
    'twinfloor print src/book/demo/flagon-line.json --paper labels --stock wrap-letter',
    'twinfloor print src/book/demo/flagon-line.json examples/records/joins.records --paper schedule',
  ],
  // loaded only when it is called: the typesetter is the largest part of the program
  run: async (call, world) => (await import('./run-print.ts')).runPrint(call, world),
};
