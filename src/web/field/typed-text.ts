import { useState } from 'react';
import { valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { giveUpValue, keepValue, typeValue } from '../commands/type-value.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import type { Typing } from '../state/page-state.ts';

export interface TypedText {
  readonly text: string;
  /** It differs from what the book holds. */
  readonly changed: boolean;
  readonly problem: Problem | undefined;
  /** What stands here was read, or stands in for the visit: nothing can be written over it. */
  readonly laid: boolean;
  /** Something is being written here. */
  readonly open: boolean;
  readonly type: (text: string) => void;
  readonly keep: () => void;
  readonly giveUp: () => void;
  /** Takes up what was left here with a problem. */
  readonly takeUp: () => void;
}

/** The text of one place of the book while a person writes in it; what does not read is not lost on the way. */
export const useTypedText = (path: string): TypedText => {
  const page = usePage();
  const [left, setLeft] = useState<Typing>();
  const { words } = page;
  // a page has a hundred fields and one is written at a time: the others look at their own place only
  const typing = usePagePart((state) => (state.typing?.path === path ? state.typing : undefined));
  const stored = usePagePart(({ shown }) => words.entryText(shown && valueAt(shown, path)));
  const kept = usePagePart(({ book }) => words.entryText(book && valueAt(book, path)));
  const laid = usePagePart(
    (state) => state.laid?.some((place) => path === place || path.startsWith(`${place}/`)) ?? false,
  );
  const mine = typing ?? left;
  const text = mine?.text ?? stored;
  const type = (next: string): void => {
    setLeft(undefined);
    typeValue(page, path, next);
  };
  return {
    text,
    changed: !laid && text !== kept,
    laid,
    problem: mine?.problems[0],
    open: mine !== undefined,
    type,
    keep: () => {
      if (page.state.get().typing?.path !== path) return;
      if (!keepValue(page)) setLeft(page.state.get().typing);
    },
    giveUp: () => {
      setLeft(undefined);
      giveUpValue(page);
    },
    takeUp: () => {
      if (left !== undefined) type(left.text);
    },
  };
};
