import type { Command } from './command.ts';

/** Whether a book can be read, with everything that is wrong with it at once. */
export const validateCommand: Command = {
  name: 'validate',
  usage: 'BOOK.json',
  options: [],
  operands: [1, 1],
  examples: ['twinfloor validate examples/gravity.json'],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-validate.ts')).runValidate(call, world),
};
