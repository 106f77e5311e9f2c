import { patchBook, valueAt } from '../../book/index.ts';
import { placeAt } from '../book-page/place-at.ts';
import type { Page } from '../state/page.ts';
import type { PageState, Typing } from '../state/page-state.ts';
import { without, withShown } from '../state/shown-book.ts';
import { inversePatches } from './inverse-patches.ts';
import { keepEdit } from './keep-edit.ts';
import { keepUnsaved } from './keep-unsaved.ts';
import { typedPatches } from './typed-patches.ts';

/** Milliseconds of rest after which a half-written text is kept; a page that is left keeps it at once. */
const keepAfter = 150;

/** What a text means at a place of the book: nothing typed is not known, a bare number stays a number. */
const meant = (page: Page, path: string, text: string): unknown => {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  const form = placeAt(page.state.get().book, path)?.form;
  if (form?.is !== 'number' && form?.is !== 'word') return trimmed;
  const number = page.words.readNumber(trimmed);
  // a word may be a number, too: the exponent of a main is 1.85 or 2
  const isMeant = form.is === 'number' || (number !== undefined && form.words.includes(number));
  return (isMeant ? number : undefined) ?? trimmed;
};

/**
 * Takes the text of a field as it is being written: where it reads, the whole page follows at once; where it
 * does not, its problem stands at the field and the last good book stays shown.
 */
export const typeValue = (page: Page, path: string, text: string): void => {
  const state = page.state.get();
  const base = state.trial?.book ?? state.book;
  if (base === undefined) return;
  const patched = patchBook(base, typedPatches(base, path, meant(page, path, text)));
  const before = state.typing?.path === path ? state.typing.book : undefined;
  const book = patched.ok ? patched.value : before;
  const typing: Typing = {
    path,
    text,
    problems: patched.ok ? [] : patched.problems,
    ...(book === undefined ? {} : { book }),
  };
  page.state.set(withShown({ ...state, typing }));
  // writing to the browser's storage takes longer than the whole assessment: it may follow the key
  page.later(() => {
    if (page.state.get().typing === typing) keepUnsaved(page);
  }, keepAfter);
};

/** Gives up what was being written. */
export const giveUpValue = (page: Page): void => {
  const state = page.state.get();
  if (state.typing === undefined) return;
  page.state.set(withShown(without(state, 'typing')));
  keepUnsaved(page);
};

const shortText = (page: Page, value: unknown): string => {
  if (value === undefined) return page.words.say('edit.unknown');
  if (typeof value === 'object' && value !== null) return page.words.entryText(value);
  return String(value);
};

/** Keeps what was being written as a new revision; tells whether it could be kept. */
export const keepValue = (page: Page): boolean => {
  const state: PageState = page.state.get();
  const { typing, book } = state;
  if (typing === undefined || book === undefined) return true;
  if (typing.problems.length > 0) return false;
  const before = valueAt(book, typing.path);
  const value = meant(page, typing.path, typing.text);
  if (before === value || shortText(page, before) === shortText(page, value)) {
    giveUpValue(page);
    return true;
  }
  const forward = typedPatches(book, typing.path, value);
  const parts = { place: page.words.placeName(book, typing.path), to: shortText(page, value) };
  keepEdit(page, {
    reason: page.words.say('edit.reason', { ...parts, from: shortText(page, before) }),
    forward,
    back: inversePatches(book, forward),
  });
  return true;
};
