import { createContext, useContext } from 'react';

/** What the parts of the book page ask of it. */
export interface Writing {
  /** Shows another part of the book. */
  readonly open: (path: string, how?: 'instead') => void;
  readonly address: (path: string) => string;
  /** Says something to who does not see it. */
  readonly tell: (text: string) => void;
}

export const WritingContext = createContext<Writing>({
  open: () => undefined,
  address: () => '',
  tell: () => undefined,
});

export const useWriting = (): Writing => useContext(WritingContext);

/** Gives the focus to the first of some elements that is there and can take it, once the page has followed. */
export const focusSoon = (...selectors: readonly string[]): void => {
  requestAnimationFrame(() => {
    for (const selector of selectors) {
      const found = [...document.querySelectorAll<HTMLElement>(selector)].find(
        (each) => !each.matches(':disabled') && each.checkVisibility(),
      );
      if (found === undefined) continue;
      found.focus();
      return;
    }
  });
};
