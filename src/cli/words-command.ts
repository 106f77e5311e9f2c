import { worded } from '../papers/beside/worded-papers.ts';
import { languages } from '../text/index.ts';
import type { Command } from './command.ts';

/** The English of the papers as a sheet in which somebody supplies another language. */
export const wordsCommand: Command = {
  name: 'words',
  usage: '',
  options: [
    { name: 'language', value: 'LANGUAGE', oneOf: languages.filter((one) => one !== 'en') },
    { name: 'paper', value: 'PAPER', oneOf: worded },
    { name: 'out', value: 'FILE' },
  ],
  operands: [0, 0],
  examples: [
    'twinfloor words --paper protocol --out words.xlsx',
    'twinfloor words --language es --paper schedule --out spanish.csv',
  ],
  run: async (call, world) => (await import('./run-words.ts')).runWords(call, world),
};
