import type { Cited } from './citations.ts';

/** A piece of a line: words, or a mark that leads to where it is told. */
export type Run = string | Cited;

/** What no text of the catalogue has in it. */
const gap = '\u0000';

/** A sentence with runs at the place of one of its parts, wherever the language puts that. */
export const withinText = (say: (part: string) => string, runs: readonly Run[]): readonly Run[] => {
  const [before = '', after = ''] = say(gap).split(gap);
  return [before, ...runs, after].filter((run) => run !== '');
};
