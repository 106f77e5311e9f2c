import type { Command } from './command.ts';

/** What a question sheet that came back puts into the book, row by row. */
export const answersCommand: Command = {
  name: 'answers',
  usage: 'BOOK.json FILE',
  options: [{ name: 'floor', value: 'TAG' }, { name: 'format', value: 'TAG' }, { name: 'write' }],
  operands: [2, 2],
  examples: ['twinfloor answers examples/main.json examples/answers.csv'],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-answers.ts')).runAnswers(call, world),
};
