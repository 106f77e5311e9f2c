import type { Command } from './command.ts';

/** What was promised and what was read on arrival beside each other, and what each difference does. */
export const foundCommand: Command = {
  name: 'found',
  usage: 'BOOK.json READINGS.json',
  options: [
    { name: 'format', value: 'TAG' },
    { name: 'floor', value: 'TAG' },
    { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
  ],
  operands: [2, 2],
  examples: [
    'twinfloor found src/book/demo/flagon-line.json examples/readings/larkmoor.json',
    'twinfloor found src/book/demo/flagon-line.json examples/readings/larkmoor.json --json',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-found.ts')).runFound(call, world),
};
