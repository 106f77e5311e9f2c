import type { ReactElement } from 'react';
import type { Bounds } from '../../line/shift/index.ts';
import { useElementWidth } from '../line/element-width.ts';

const height = 28;
const middle = 14;
const thick = 12;

/** What a change is worth with its interval; what it costs is hatched. */
export const WorthBar = ({
  bounds,
  longest,
  side,
}: {
  readonly bounds: Bounds;
  readonly longest: number;
  readonly side: 'left' | 'right';
}): ReactElement => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(200);
  const { mean, low, high } = bounds;
  const ends = [Math.abs(low), Math.abs(high)].toSorted((a, b) => a - b) as [number, number];
  const crosses = low < 0 && high > 0;
  const place = (value: number): number => {
    const along = (value / longest) * width;
    return side === 'left' ? width - along : along;
  };
  const wide = (Math.abs(mean) / longest) * width;
  const [from, to] = [place(crosses ? 0 : ends[0]), place(ends[1])];
  return (
    <span className="bar" ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={height}>
        <rect
          className={mean < 0 ? 'costs' : 'have'}
          x={side === 'left' ? width - wide : 0}
          y={middle - thick / 2}
          width={wide}
          height={thick}
        />
        {['whisker-back', 'whisker'].map((name) => (
          <path
            key={name}
            className={name}
            d={`M${from} ${middle}H${to}M${from} ${middle - 5}v10M${to} ${middle - 5}v10`}
          />
        ))}
      </svg>
    </span>
  );
};
