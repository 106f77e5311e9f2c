import { type Book, patchBook, readBook, writeBook } from '../../book/index.ts';
import type { Page } from '../state/page.ts';

/** A new book by its id, or why there is none yet. */
export type Made = { readonly id: string } | { readonly refused: string };

export interface NewBook {
  /** Sent again with the same id it is still one book. */
  readonly id: string;
  readonly reason: string;
  /** A book that is whole, or the title of a blank one. */
  readonly book: Book | { readonly title: string };
}

const lost = (page: Page): Made => ({ refused: page.words.say('first.unreachable') });

/** Saves a new book as its first revision. */
export const saveNewBook = async (page: Page, { id, reason, book }: NewBook): Promise<Made> => {
  const whole = 'twinfloor' in book ? { text: writeBook(book) } : book;
  const reply = await page.client('createBook', { body: { id, reason, author: page.author, ...whole } });
  if (reply.ok) return { id: reply.value.book };
  return reply.reached && reply.status < 500 ? { refused: reply.failure.message } : lost(page);
};

/** Copies the newest revision of a book under a new title. The serial number belongs to one line only. */
export const copyBook = async (page: Page, from: string, title: string): Promise<Made> => {
  const reply = await page.client('readBook', { params: { id: from } });
  if (!reply.ok) return reply.reached && reply.status < 500 ? { refused: reply.failure.message } : lost(page);
  const read = readBook(reply.value.text);
  if (!read.ok) return { refused: page.words.say('page.unreadable') };
  const before = read.value.about?.title ?? page.words.say('page.untitled');
  const patched = patchBook(read.value, [
    { path: '/about/title', value: title === '' ? page.words.say('first.copyOf', { title: before }) : title },
    ...(read.value.about?.serial === undefined ? [] : [{ path: '/about/serial' }]),
  ]);
  if (!patched.ok) return { refused: page.words.say('page.unreadable') };
  return saveNewBook(page, {
    id: page.newId(),
    book: patched.value,
    reason: page.words.say('first.reason.copy', { title: before, n: reply.value.number }),
  });
};
