import type { ReactElement } from 'react';
import { heldStates, type SectionStates } from './counted-states.ts';

/** How much each state stands up in the strip: the height tells, in print and without colour. */
const heights = { tested: 10, made: 5, none: 1, parted: 1, trouble: 10, conflict: 10 } as const;

/** The joins of a section as one strip, from what wants work to what is done; its words stand below it. */
export const StateStrip = ({ counts, total }: SectionStates): ReactElement => {
  let at = 0;
  return (
    <svg
      className="state-strip"
      viewBox={`0 0 ${Math.max(total, 1)} 10`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {heldStates(counts)
        .toReversed()
        .map((state) => {
          const x = at;
          at += counts[state];
          return (
            <rect
              key={state}
              data-state={state}
              x={x}
              y={10 - heights[state]}
              width={counts[state]}
              height={heights[state]}
            />
          );
        })}
    </svg>
  );
};
