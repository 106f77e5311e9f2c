import type { Page } from '../state/page.ts';
import type { Words } from '../words/words.ts';

const isDay = /^\d{4}-\d{2}-\d{2}$/;

/** A day as the reader writes one; a text that is none stays as it was typed. */
export const dayText = ({ numbers }: Words, day: string): string => {
  const at = new Date(`${day}T00:00:00Z`);
  if (!isDay.test(day) || Number.isNaN(at.getTime())) return day;
  return new Intl.DateTimeFormat(numbers, { dateStyle: 'medium', timeZone: 'UTC' }).format(at);
};

/** A day with the one of its week, for a plan of few weeks. */
export const weekdayText = ({ numbers }: Words, day: string): string =>
  new Intl.DateTimeFormat(numbers, {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    timeZone: 'UTC',
  }).format(new Date(`${day}T00:00:00Z`));

/** The day of this device's clock, in ISO form. */
export const today = (page: Pick<Page, 'now'>): string => page.now().slice(0, 10);

/** Whether a day has gone by; of a text that is no day nobody can tell. */
export const isPast = (page: Pick<Page, 'now'>, day: string | undefined): boolean =>
  day !== undefined && isDay.test(day) && day < today(page);
