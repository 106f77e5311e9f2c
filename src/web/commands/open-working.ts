import type { Page } from '../state/page.ts';
import type { Opened } from '../state/page-state.ts';
import { without } from '../state/shown-book.ts';

/** Opens the working of a figure, leaving the trail behind. */
export const openFigure = (page: Page, opened: Opened): void =>
  page.state.set({ ...page.state.get(), opened, trail: [] });

/** Goes from one working to the one that an input came from; the trail leads back. */
export const followOrigin = (page: Page, opened: Opened): void => {
  const state = page.state.get();
  const trail = state.opened === undefined ? state.trail : [...state.trail, state.opened];
  page.state.set({ ...state, opened, trail });
};

/** Goes back to the step of the trail that was pressed. */
export const goBackTo = (page: Page, step: number): void => {
  const state = page.state.get();
  const opened = state.trail[step];
  if (opened === undefined) return;
  page.state.set({ ...state, opened, trail: state.trail.slice(0, step) });
};

export const closeWorking = (page: Page): void =>
  page.state.set({ ...without(page.state.get(), 'opened'), trail: [] });
