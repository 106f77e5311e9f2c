import { assessOptions } from './assess-options.ts';
import type { Command } from './command.ts';

/** What the line asks of air, power, water, heat, drains and building, and what each floor has. */
export const utilitiesCommand: Command = {
  name: 'utilities',
  usage: 'BOOK.json',
  options: assessOptions,
  operands: [1, 1],
  examples: [
    'twinfloor utilities src/book/demo/flagon-line.json',
    'twinfloor utilities src/book/demo/flagon-line.json --floor LARKMOOR --json',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-utilities.ts')).runUtilities(call, world),
};
