import { languages } from '../text/index.ts';
import type { Command } from './command.ts';

/** What a floor is still asked, those questions first whose answer settles most; also as a sheet to fill in. */
export const questionsCommand: Command = {
  name: 'questions',
  usage: 'BOOK.json',
  options: [
    { name: 'floor', value: 'TAG' },
    { name: 'format', value: 'TAG' },
    { name: 'who', value: 'WHO', oneOf: ['site', 'builder'] },
    { name: 'out', value: 'FILE' },
    { name: 'language', value: 'LANGUAGE', oneOf: languages },
  ],
  operands: [1, 1],
  examples: [
    'twinfloor questions src/book/demo/flagon-line.json --floor LARKMOOR',
    'twinfloor questions src/book/demo/flagon-line.json --out questions.xlsx',
    'twinfloor questions src/book/demo/flagon-line.json --out fragen.xlsx --language de',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-questions.ts')).runQuestions(call, world),
};
