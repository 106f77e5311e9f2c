import type { Words } from '../words/words.ts';

const minute = 60;

/** Minutes to the tenth, whole ones from ten on: nobody times a shift closer. */
export const minutesText = (words: Words, seconds: number): string => {
  const minutes = seconds / minute;
  const told = minutes < 9.95 ? Math.round(minutes * 10) / 10 : Math.round(minutes);
  return words.say('cycle.minutes', { n: words.number(told) });
};
