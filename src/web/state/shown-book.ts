import { assessBook } from '../../floor/index.ts';
import type { PageState } from './page-state.ts';

/** The state with what it shows worked out anew: the typed text if it reads, else the trial, else the book. */
export const withShown = (state: PageState): PageState => {
  const shown = state.typing?.book ?? state.trial?.book ?? state.book;
  if (shown === undefined) return state;
  const { assessment } = state;
  if (shown === state.shown && assessment !== undefined) return state;
  const earlier =
    state.shown === undefined || assessment === undefined ? undefined : { book: state.shown, assessment };
  return { ...state, shown, assessment: assessBook(shown, earlier === undefined ? {} : { earlier }) };
};

/** A copy of the state without some of its optional parts. */
export const without = <K extends 'typing' | 'trial' | 'opened' | 'lost'>(
  state: PageState,
  ...keys: K[]
): PageState => {
  const rest: Record<string, unknown> = { ...state };
  for (const key of keys) delete rest[key];
  return rest as unknown as PageState;
};
