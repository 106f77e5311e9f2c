import { type ReactElement, useId } from 'react';
import type { Finding } from '../../floor/assessment.ts';
import { barShape } from '../../floor/bar-shape.ts';
import { useElementWidth } from '../line/element-width.ts';

const height = 30;
const top = 8;
const thick = 14;

export interface SpineBarProps {
  readonly finding: Finding;
  readonly side: 'left' | 'right';
  readonly floor: string;
}

/** One bar, growing away from the spine. Its shape says what the words beside it say. */
export const SpineBar = ({ finding, side, floor }: SpineBarProps): ReactElement => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(180);
  const id = useId();
  const shape = barShape(finding);
  const rect = ([from, to]: readonly [number, number]) => {
    const wide = Math.max(0, (to - from) * width);
    return {
      x: side === 'left' ? width - from * width - wide : from * width,
      y: top,
      width: wide,
      height: thick,
    };
  };
  const x = (share: number): number => (side === 'left' ? width - share * width : share * width);
  const inward = side === 'left' ? 5 : -5;
  const end = x(shape.solid[1]);
  return (
    <span className={`bar ${floor}`} ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={height} style={{ display: 'block' }}>
        {shape.hatched !== undefined && (
          <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line className="hatch" x1="0" y1="0" x2="0" y2="6" />
          </pattern>
        )}
        {shape.unknown !== undefined && <rect className="unknown" {...rect(shape.unknown)} />}
        <rect className="have" {...rect(shape.solid)} />
        {shape.hatched !== undefined && (
          <rect
            className="frame-line"
            fill={`url(#${id})`}
            {...rect(shape.hatched)}
            style={{ fill: `url(#${id})` }}
          />
        )}
        {shape.cut && (
          <path className="whisker-back" d={`M${end + inward * 2} ${top - 2}l${inward} ${thick + 4}`} />
        )}
        {shape.whisker !== undefined &&
          ['whisker-back', 'whisker'].map((name) => (
            <path
              key={name}
              className={name}
              d={`M${x(shape.whisker?.[0] ?? 0)} 15H${x(shape.whisker?.[1] ?? 0)}M${x(shape.whisker?.[0] ?? 0)} 11v8M${x(shape.whisker?.[1] ?? 0)} 11v8`}
            />
          ))}
        {shape.tick !== undefined && (
          <path
            className="tick"
            d={
              finding.sense === 'most'
                ? // a stop that opens towards the spine: up to here and no further
                  `M${x(shape.tick) + inward} 3H${x(shape.tick)}V27H${x(shape.tick) + inward}`
                : `M${x(shape.tick)} 2V28`
            }
          />
        )}
      </svg>
    </span>
  );
};
