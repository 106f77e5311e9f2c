import type { ReactElement } from 'react';
import { useElementWidth } from '../line/element-width.ts';
import type { KeyedRow } from './lost-rows.ts';

const height = 24;
const top = 5;
const thick = 14;

/** The minutes of one row, growing from the spine over the same length for both floors. */
export const LostBar = ({
  row,
  longest,
  side,
}: {
  readonly row: KeyedRow;
  readonly longest: number;
  readonly side: 'left' | 'right';
}): ReactElement => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(200);
  const wide = (row.seconds / longest) * width;
  return (
    <span className="shift-strip" ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={height}>
        <rect
          className={row.state === 'running' ? 'runs' : 'lost'}
          x={side === 'left' ? width - wide : 0}
          y={top}
          width={wide}
          height={thick}
          {...(row.state === 'running' ? {} : { style: { fill: `url(#owner-${row.owner})` } })}
        />
      </svg>
    </span>
  );
};
