import type { Page } from '../state/page.ts';

const note = 'reading-by';

/** Who wrote last in this browser: nobody types their name twice. */
export const lastPerson = ({ notes }: Pick<Page, 'notes'>): string => {
  const kept = notes.read(note);
  return typeof kept === 'string' ? kept : '';
};

export const keepPerson = ({ notes }: Pick<Page, 'notes'>, by: string): void => notes.write(note, by);
