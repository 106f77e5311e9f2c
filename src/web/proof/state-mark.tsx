import type { ReactElement } from 'react';
import type { CheckState } from '../../proof/index.ts';

/** What each state is drawn with: the shape tells, in print and without colour. */
const shapes: Readonly<Record<CheckState, ReactElement>> = {
  proved: <rect x="2" y="2" width="12" height="12" className="full" />,
  shown: (
    <>
      <rect x="2" y="2" width="12" height="12" className="edge" />
      <path d="M2 14 L14 2 V14 Z" className="full" />
    </>
  ),
  failed: <path d="M3 3 L13 13 M13 3 L3 13" className="cross" />,
  concession: (
    <>
      <rect x="2" y="2" width="12" height="12" className="edge" />
      <path d="M2 10 H14" className="edge" />
    </>
  ),
  waits: <path d="M3 2 H13 L8 8 L13 14 H3 L8 8 Z" className="edge" />,
  open: <rect x="2" y="2" width="12" height="12" className="dotted" />,
  stale: (
    <>
      <rect x="2" y="2" width="12" height="12" className="dotted" />
      <path d="M2 14 L14 2" className="cross" />
    </>
  ),
  stands: (
    <>
      <rect x="2" y="2" width="12" height="12" className="edge" />
      <rect x="5.5" y="5.5" width="5" height="5" className="full" />
    </>
  ),
};

/** The shape of a state; its word stands beside it. */
export const StateMark = ({ state }: { readonly state: CheckState }): ReactElement => (
  <svg
    className="state-mark"
    data-state={state}
    viewBox="0 0 16 16"
    width="16"
    height="16"
    aria-hidden="true"
  >
    {shapes[state]}
  </svg>
);
