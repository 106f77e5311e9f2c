import type { JoinState } from '../../joins/index.ts';
import type { RecordedState } from '../../joins/recorded-joins.ts';

/** How a join stands as one word. */
export type StoodState = RecordedState | 'conflict' | 'none';

/** From what wants work first to what is done. */
export const stoodStates: readonly StoodState[] = ['conflict', 'trouble', 'parted', 'none', 'made', 'tested'];

export const stateOf = (states: ReadonlyMap<string, JoinState>, join: string): StoodState => {
  const state = states.get(join);
  if (state === undefined) return 'none';
  return state.conflict ? 'conflict' : state.state;
};
