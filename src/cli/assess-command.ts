import { assessOptions } from './assess-options.ts';
import type { Command } from './command.ts';

/** What each floor makes the line do, what is short, what holds it and what would carry it. */
export const assessCommand: Command = {
  name: 'assess',
  usage: 'BOOK.json',
  options: assessOptions,
  operands: [1, 1],
  examples: [
    'twinfloor assess src/book/demo/flagon-line.json --remedies',
    'twinfloor assess src/book/demo/flagon-line.json --readings examples/readings/larkmoor.json',
    'twinfloor assess examples/gravity.json --json',
    'twinfloor assess - --units us < examples/gravity.json',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-assess.ts')).runAssess(call, world),
};
