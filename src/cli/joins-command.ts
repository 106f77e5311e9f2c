import { encodings } from '../table/csv/encodings.ts';
import type { Command } from './command.ts';

/** The joins of a book: what does not fit together, the order of the rebuild, what is recorded; and lists read into it. */
export const joinsCommand: Command = {
  name: 'joins',
  usage: 'BOOK.json [RECORDS]',
  options: [
    { name: 'code', value: 'CODE' },
    { name: 'box', value: 'TAG' },
    { name: 'list', value: 'FILE' },
    { name: 'tab', value: 'NAME' },
    {
      name: 'kind',
      value: 'KIND',
      oneOf: ['conductor', 'tube', 'hose', 'drain', 'duct', 'bond', 'mechanical'],
    },
    { name: 'split', value: 'TAG' },
    { name: 'encoding', value: 'NAME', oneOf: encodings },
    { name: 'columns', value: 'FILE' },
    { name: 'remember', value: 'FILE' },
    { name: 'write' },
    { name: 'crates' },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor joins src/book/demo/flagon-line.json',
    'twinfloor joins src/book/demo/flagon-line.json --crates',
    'twinfloor joins src/book/demo/flagon-line.json --list examples/joins/wires.csv',
    'twinfloor joins src/book/demo/flagon-line.json examples/records/joins.records --box +JB2',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-joins.ts')).runJoins(call, world),
};
