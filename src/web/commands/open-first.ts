import type { Page } from '../state/page.ts';

/** Milliseconds in which the browser paints the figures. */
const pause = 400;

const open = (page: Page, hasRoom: () => boolean): void => {
  const state = page.state.get();
  // who went on to another question meanwhile finds nothing of this one beside it
  if (!hasRoom()) return;
  if (state.opened !== undefined || state.assessment === undefined) return;
  const floor = state.assessment.floors.find(({ floor: tag }) => tag === state.facing[0]);
  const causes = floor?.findings.filter(({ have }) => have.working !== undefined) ?? [];
  const finding =
    causes.find(({ id, verdict }) => verdict === 'short' && !id.endsWith('Rate')) ??
    causes.find(({ verdict }) => verdict === 'short') ??
    causes[0];
  if (floor === undefined || finding === undefined) return;
  page.state.set({ ...state, opened: { floor: floor.floor, id: finding.id, unasked: true } });
};

/**
 * Where there is room beside the figures and they are shown, opens what is short on the left floor as soon as the book is there:
 * the first thing that one would press anyway.
 */
export const openFirst = (page: Page, hasRoom: () => boolean): void => {
  if (!hasRoom()) return;
  const stop = page.state.subscribe(() => {
    const { load, assessment, facing } = page.state.get();
    if (load !== 'ready' || assessment === undefined || facing[0] === undefined) return;
    stop();
    // the figures stand first: the sheets and their formulas come when they do
    page.later(() => open(page, hasRoom), pause);
  });
};
