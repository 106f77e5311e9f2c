import type { Page } from '../state/page.ts';

/**
 * Where there is room beside the figures, opens what is short on the left floor as soon as the book is there:
 * the first thing that one would press anyway.
 */
export const openFirst = (page: Page, room: boolean): void => {
  if (!room) return;
  const stop = page.state.subscribe(() => {
    const state = page.state.get();
    if (state.load !== 'ready' || state.assessment === undefined || state.facing[0] === undefined) return;
    stop();
    if (state.opened !== undefined) return;
    const floor = state.assessment.floors.find(({ floor: tag }) => tag === state.facing[0]);
    const causes = floor?.findings.filter(({ have }) => have.working !== undefined) ?? [];
    const finding =
      causes.find(({ id, verdict }) => verdict === 'short' && !id.endsWith('Rate')) ??
      causes.find(({ verdict }) => verdict === 'short') ??
      causes[0];
    if (floor === undefined || finding === undefined) return;
    page.state.set({ ...state, opened: { floor: floor.floor, id: finding.id, unasked: true } });
  });
};
