import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Words } from '../words/words.ts';
import type { Page } from './page.ts';
import type { PageState } from './page-state.ts';

export const PageContext = createContext<Page | undefined>(undefined);

export const usePage = (): Page => {
  const page = useContext(PageContext);
  if (page === undefined) throw new Error('a part of the page stands outside its PageContext');
  return page;
};

/** The state that parts of the page draw which follow the figures; none where a part draws that of this moment. */
export const LaterContext = createContext<PageState | undefined>(undefined);

const never = (): (() => void) => () => undefined;

export const usePageState = (): PageState => {
  const { state } = usePage();
  const later = useContext(LaterContext);
  return useSyncExternalStore(
    later === undefined ? state.subscribe : never,
    later === undefined ? state.get : () => later,
  );
};

/**
 * A part of the state of this moment; the component is drawn anew only when that part changes. Of a part that is made anew each
 * time nothing is gained: it must be a piece of the state, or a plain value.
 */
export const usePagePart = <T>(part: (state: PageState) => T): T => {
  const { state } = usePage();
  return useSyncExternalStore(state.subscribe, () => part(state.get()));
};

export const useWords = (): Words => usePage().words;
