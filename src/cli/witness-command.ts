import { languages } from '../text/index.ts';
import type { Command } from './command.ts';

/** One file that a witness far away opens in any browser: protocol, results, gates, and a place to answer. */
export const witnessCommand: Command = {
  name: 'witness',
  usage: 'BOOK.json RECORDS',
  options: [
    { name: 'media', value: 'FOLDER' },
    { name: 'most', value: 'MB' },
    { name: 'format', value: 'TAG' },
    { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
    { name: 'language', value: 'LANGUAGE', oneOf: languages },
    { name: 'date', value: 'DAY' },
    { name: 'out', value: 'FILE.html' },
  ],
  operands: [2, 2],
  examples: [
    'twinfloor witness src/book/demo/flagon-line.json examples/records/protocol.records --out witness.html',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-witness.ts')).runWitness(call, world),
};
