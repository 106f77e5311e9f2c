import { formFor } from '../../book/form.ts';
import { pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { placeAt } from '../book-page/place-at.ts';
import type { Page } from '../state/page.ts';
import { changeBook } from './change-book.ts';
import { typedPatches } from './typed-patches.ts';

const shortText = (page: Page, value: unknown): string => {
  const { words } = page;
  if (value === undefined) return words.say('edit.unknown');
  if (typeof value === 'boolean') return words.say(value ? 'write.yes' : 'write.no');
  const key = `word.${String(value)}`;
  return words.has(key) ? words.say(key) : words.entryText(value);
};

/** Puts a chosen value at a place; undefined makes it not known. */
export const putValue = (page: Page, path: string, value: unknown): readonly Problem[] => {
  const { book } = page.state.get();
  if (book === undefined) return [];
  const before = valueAt(book, path);
  if (before === value) return [];
  const reason = page.words.say('edit.reason', {
    place: page.words.placeName(book, path),
    from: shortText(page, before),
    to: shortText(page, value),
  });
  return changeBook(page, reason, typedPatches(book, path, value));
};

/** Makes something of another kind of what stands at a place; what both kinds have is kept. */
export const changeKind = (page: Page, path: string, kind: string | undefined): readonly Problem[] => {
  const { book } = page.state.get();
  const form = placeAt(book, path)?.form;
  if (book === undefined || form?.is !== 'choice') return [];
  const before = (valueAt(book, path) ?? {}) as Readonly<Record<string, unknown>>;
  if (before[form.by] === kind) return [];
  const option = kind === undefined ? undefined : formFor(form, { [form.by]: kind });
  const kept = Object.entries(before).filter(
    ([key]) => key !== form.by && option?.is === 'part' && option.fields.has(key),
  );
  const value = kind === undefined ? undefined : { [form.by]: kind, ...Object.fromEntries(kept) };
  const reason = page.words.say('write.reason.kind', {
    name: page.words.placeName(book, pointerOf(stepsOf(path))),
    kind: shortText(page, kind),
  });
  return changeBook(page, reason, [{ path, value }]);
};
