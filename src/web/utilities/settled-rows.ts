import type { OpenQuestion } from '../../floor/questions/index.ts';
import { figureName } from '../floors/verdict-text.ts';
import type { Words } from '../words/words.ts';

/** More names than these and nobody reads on. */
const told = 3;

const namesOf = (words: Words, ids: readonly string[]): string => {
  // a question about several drops or drives is told once
  const all = [...new Set(ids.map((id) => figureName(words, id.split(' ')[0] ?? id)))];
  const names = all.slice(0, told);
  const more = all.length - names.length;
  return [...names, ...(more > 0 ? [words.say('utilities.ask.more', { n: more })] : [])].join(', ');
};

/** What an answer does, in a sentence: the rows that it settles, that it helps to settle, or that it narrows. */
export const settledText = (
  words: Words,
  { why, settles, share, findings, figures }: OpenQuestion,
): string => {
  const rows = namesOf(words, findings);
  if (why === 'assumed') {
    return share >= 0.01
      ? words.say('utilities.ask.narrows', { percent: words.percent(share), rows })
      : words.say('utilities.ask.little');
  }
  if (findings.length === 0) {
    return words.say('utilities.ask.figures', { rows: namesOf(words, figures) });
  }
  const whole = Math.floor(settles + 1e-9);
  return whole >= 1
    ? words.say('utilities.ask.settles', { n: whole, rows })
    : words.say('utilities.ask.helps', { rows });
};
