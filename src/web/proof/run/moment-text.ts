import type { Words } from '../../words/words.ts';

/** When something was written, as the reader's clock shows it. */
export const momentText = ({ numbers }: Pick<Words, 'numbers'>, at: string): string => {
  const moment = new Date(at);
  return Number.isNaN(moment.getTime())
    ? at
    : new Intl.DateTimeFormat(numbers, { dateStyle: 'medium', timeStyle: 'short' }).format(moment);
};
