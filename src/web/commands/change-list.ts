import { type Patch, pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { copiedPart } from '../book-page/new-part.ts';
import { placeAt } from '../book-page/place-at.ts';
import { type Removal, removalOf } from '../book-page/references.ts';
import type { Page } from '../state/page.ts';
import { changeBook } from './change-book.ts';

const split = (path: string): { readonly list: string; readonly index: number } => {
  const steps = stepsOf(path);
  return { list: pointerOf(steps.slice(0, -1)), index: Number(steps.at(-1)) };
};

/** What people call a member of a list. */
export const memberName = (page: Page, path: string, value?: unknown): string => {
  const { book } = page.state.get();
  const member = value ?? (book && valueAt(book, path));
  const { tag, name, kind } = (typeof member === 'object' && member !== null ? member : {}) as Record<
    string,
    unknown
  >;
  if (typeof name === 'string' && name !== '') return name;
  if (typeof tag === 'string') return tag;
  const { words } = page;
  const { index } = split(path);
  const what =
    typeof kind === 'string' && words.has(`word.${kind}`) ? words.say(`word.${kind}`) : words.fieldName(path);
  return Number.isNaN(index) ? what : words.say('write.number', { n: index + 1, name: what });
};

export type Done = { readonly problems: readonly Problem[]; readonly path: string };

const say = (page: Page, key: string, parts: Readonly<Record<string, string | number>>): string =>
  page.words.say(`write.reason.${key}`, parts);

/** Adds a member to a list: behind one of its members, or at the end. */
export const addMember = (page: Page, list: string, value: unknown, behind?: number): Done => {
  const { book } = page.state.get();
  const members = book && valueAt(book, list);
  const count = Array.isArray(members) ? members.length : 0;
  const path = `${list}/${behind === undefined ? count : Math.min(count, behind + 1)}`;
  const name = memberName(page, path, value);
  const problems = changeBook(page, say(page, 'add', { name }), [{ path, op: 'insert', value }]);
  return { problems, path };
};

/** Puts a copy behind a member; every tag in it is a new one. */
export const copyMember = (page: Page, path: string): Done => {
  const { book } = page.state.get();
  const { list, index } = split(path);
  const place = placeAt(book, path);
  if (book === undefined || place === undefined) return { problems: [], path };
  const copied = copiedPart(book, valueAt(book, path), place.form);
  // there is one floor that the line was built on and one that it is bound for
  const value = list === '/floors' ? { ...(copied as object), role: 'other' } : copied;
  const next = `${list}/${index + 1}`;
  const reason = say(page, 'copy', { name: memberName(page, path) });
  return { problems: changeBook(page, reason, [{ path: next, op: 'insert', value }]), path: next };
};

/** Moves a member of a list by one place, or further. */
export const moveMember = (page: Page, path: string, by: number): Done => {
  const { book } = page.state.get();
  const { list, index } = split(path);
  const members = book && valueAt(book, list);
  const to = index + by;
  if (!Array.isArray(members) || to < 0 || to >= members.length) return { problems: [], path };
  const next = `${list}/${to}`;
  const reason = say(page, 'move', {
    name: memberName(page, path),
    n: to + 1,
    of: members.length,
  });
  const problems = changeBook(page, reason, [
    { path, op: 'remove' },
    { path: next, op: 'insert', value: members[index] as unknown },
  ]);
  return { problems, path: problems.length === 0 ? next : path };
};

/** Removes a thing to which nothing refers; else gives back what does, and nothing is done. */
export const removePart = (page: Page, path: string): Removal | undefined => {
  const { book } = page.state.get();
  const removal = removalOf(book, path);
  if (removal.references.length > 0) return removal;
  const patches: readonly Patch[] = [{ path, op: 'remove' }];
  changeBook(page, say(page, 'remove', { name: memberName(page, path) }), patches);
  return undefined;
};

/** Removes a thing with everything that refers to it. */
export const removeWithReferences = (page: Page, path: string): readonly Problem[] => {
  const { book } = page.state.get();
  const name = memberName(page, path);
  return changeBook(page, say(page, 'removeAll', { name }), removalOf(book, path).patches);
};
