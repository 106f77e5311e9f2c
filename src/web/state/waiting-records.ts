import type { RecordDraft } from '../commands/add-record.ts';
import type { Page } from './page.ts';

type Notes = Pick<Page, 'notes'>;

const noteOf = (book: string): string => `records-waiting/${book}`;

const isDraft = (value: unknown): value is RecordDraft =>
  typeof value === 'object' &&
  value !== null &&
  ['id', 'kind', 'at'].every(
    (name) => typeof (value as Readonly<Record<string, unknown>>)[name] === 'string',
  ) &&
  typeof (value as { readonly version?: unknown }).version === 'number' &&
  'body' in value;

/** What was written down and the server has not acknowledged, oldest first. */
export const waitingRecords = ({ notes }: Notes, book: string): readonly RecordDraft[] => {
  const kept = notes.read(noteOf(book));
  return Array.isArray(kept) ? kept.filter(isDraft) : [];
};

/**
 * Keeps what was written down in this browser before anything is sent.
 *
 * Returns  whether it is kept: a full storage keeps nothing
 */
export const keepWaiting = (page: Notes, book: string, drafts: readonly RecordDraft[]): boolean => {
  // read at this moment: another tab may have written since
  page.notes.write(noteOf(book), [...waitingRecords(page, book), ...drafts]);
  const there = new Set(waitingRecords(page, book).map(({ id }) => id));
  return drafts.every(({ id }) => there.has(id));
};

/** Lets go of what the server has. */
export const forgetWaiting = (page: Notes, book: string, sent: ReadonlySet<string>): void => {
  const left = waitingRecords(page, book).filter(({ id }) => !sent.has(id));
  page.notes.write(noteOf(book), left.length === 0 ? undefined : left);
};
