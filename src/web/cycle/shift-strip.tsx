import type { ReactElement } from 'react';
import { useElementWidth } from '../line/element-width.ts';
import type { KeyedRow } from './lost-rows.ts';

const height = 34;
const top = 4;
const thick = 26;

export interface ShiftStripProps {
  readonly rows: readonly KeyedRow[];
  /** s, of the whole shift */
  readonly duration: number;
  readonly side: 'left' | 'right';
}

/** The whole shift as one bar that grows from the spine: what runs solid, what is lost hatched by its owner. */
export const ShiftStrip = ({ rows, duration, side }: ShiftStripProps): ReactElement => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(300);
  let from = 0;
  return (
    <span className="shift-strip" ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={height}>
        {rows.map(({ key, state, owner, seconds }) => {
          const wide = (seconds / duration) * width;
          const x = side === 'left' ? width - from - wide : from;
          from += wide;
          return (
            <rect
              key={key}
              className={state === 'running' ? 'runs' : 'lost'}
              x={x}
              y={top}
              width={Math.max(0, wide)}
              height={thick}
              {...(state === 'running' ? {} : { style: { fill: `url(#owner-${owner})` } })}
            />
          );
        })}
      </svg>
    </span>
  );
};
