import type { ReactElement } from 'react';
import type { StoodState } from './state-of.ts';

/** What each state is drawn with: the shape tells, in print and without colour. */
const shapes: Readonly<Record<StoodState, ReactElement>> = {
  tested: <rect x="2" y="2" width="12" height="12" className="full" />,
  made: (
    <>
      <rect x="2" y="2" width="12" height="12" className="edge" />
      <rect x="2" y="8" width="12" height="6" className="full" />
    </>
  ),
  none: <rect x="2" y="2" width="12" height="12" className="dotted" />,
  parted: (
    <>
      <path d="M2 8 H6 M10 8 H14" className="edge" />
      <path d="M7 4 V12 M9 4 V12" className="edge" />
    </>
  ),
  trouble: <path d="M3 3 L13 13 M13 3 L3 13" className="cross" />,
  conflict: <path d="M2 5 H14 M2 11 H14 M12 2 L4 14" className="cross" />,
};

/** The shape of a state; its word stands beside it. */
export const StateShape = ({ state }: { readonly state: StoodState }): ReactElement => (
  <svg className="join-mark" data-state={state} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
    {shapes[state]}
  </svg>
);
