import type { Book } from '../../book/index.ts';
import { bookAsFound, type FoundReading } from '../../floor/found/index.ts';
import type { Words } from '../words/words.ts';

/** A reading as it stands in the form. */
export interface FoundDraft {
  readonly of: string;
  readonly value: string;
  readonly instrument: string;
  readonly users: string;
  readonly conditions: string;
  readonly by: string;
}

export const emptyDraft: FoundDraft = {
  of: '',
  value: '',
  instrument: '',
  users: '',
  conditions: '',
  by: '',
};

export const fieldsOfDraft = Object.keys(emptyDraft) as readonly (keyof FoundDraft)[];

export type DraftProblems = Partial<Record<keyof FoundDraft, string>>;

type Body = Omit<FoundReading, 'at'>;

/** A reading out of what was typed; empty is left out. */
export const bodyOf = (draft: FoundDraft, floor: string): Body => {
  const [instrument, conditions, users] = [draft.instrument, draft.conditions, draft.users].map((text) =>
    text.trim(),
  );
  return {
    floor,
    of: draft.of,
    value: draft.value.trim(),
    by: draft.by.trim(),
    ...(instrument ? { instrument } : {}),
    ...(users ? { users: Number(users) } : {}),
    ...(conditions ? { conditions } : {}),
  };
};

/** What is wrong with a draft, in a sentence at its field; nothing wrong, nothing there. */
export const draftProblems = (
  words: Words,
  book: Book,
  { draft, floor, at }: { readonly draft: FoundDraft; readonly floor: string; readonly at: string },
): DraftProblems => {
  const { say } = words;
  const problems: { -readonly [K in keyof DraftProblems]: DraftProblems[K] } = {};
  if (draft.of === '') problems.of = say('found.place.missing');
  if (draft.by.trim() === '') problems.by = say('found.by.missing');
  if (draft.users.trim() !== '' && !/^\d{1,6}$/.test(draft.users.trim())) {
    problems.users = say('found.users.wrong', { given: draft.users.trim() });
  }
  if (draft.value.trim() === '') problems.value = say('found.value.missing');
  else if (draft.of !== '') {
    const { refused } = bookAsFound(book, [{ ...bodyOf(draft, floor), by: draft.by || '-', at }]);
    const wrong = refused.flatMap((one) => one.problems);
    if (wrong.length > 0) problems.value = [...new Set(wrong.map(words.problem))].join(' ');
  }
  return problems;
};
