import type { Page } from '../state/page.ts';
import type { UnitChoice } from '../state/page-state.ts';

/** Puts a floor on one side of the spine; where it stood on the other side, the two change places. */
export const faceFloor = (page: Page, side: 0 | 1, floor: string): void => {
  const state = page.state.get();
  const [left, right] = state.facing;
  const swap = side === 0 ? right === floor : left === floor;
  const facing = swap
    ? ([right, left] as const)
    : side === 0
      ? ([floor, right] as const)
      : ([left, floor] as const);
  page.state.set({ ...state, facing });
};

export const chooseUnits = (page: Page, units: UnitChoice): void =>
  page.state.set({ ...page.state.get(), units });
