import type { ReactElement } from 'react';
import type { Within } from '../../fill/index.ts';
import { studentQuantile } from '../../statistics/student.ts';
import { useElementWidth } from '../line/element-width.ts';

const height = 46;
const ground = 40;
const top = 6;
/** Points of the line on each side of the middle. */
const half = 24;
/** The hump ends where nothing is seen of it any more, in standard deviations. */
const reach = 3.2;

/** Height of a distribution over its own peak: Student by its degrees of freedom. */
const densityOver = (t: number, dof: number): number =>
  Number.isFinite(dof) && dof < 1e4 ? (1 + (t * t) / dof) ** (-0.5 * (dof + 1)) : Math.exp(-0.5 * t * t);

export interface HumpProps {
  readonly of: Within;
  /** Both ends of the axis, alike on both sides. */
  readonly from: number;
  readonly to: number;
  readonly side: 'left' | 'right';
  /** What is asked: the black tick. */
  readonly asked?: number | undefined;
}

/** What is foretold as a distribution on an axis that begins at the spine; what lies in the interval is filled. */
export const Hump = ({ of, from, to, side, asked }: HumpProps): ReactElement => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(220);
  const place = (value: number): number => {
    const share = Math.max(0, Math.min(1, (value - from) / (to - from)));
    return side === 'left' ? width - share * width : share * width;
  };
  // an interval that is not even, such as of a time, leans as its ends do
  const factor = studentQuantile(0.5 + 0.5 * of.confidence, of.dof);
  const unit = (sign: number): number => (sign < 0 ? of.value - of.lower : of.upper - of.value) / factor;
  const points = Array.from({ length: 2 * half + 1 }, (_, i) => {
    const t = ((i - half) / half) * reach;
    return { t, x: place(of.value + t * unit(t)), y: ground - densityOver(t, of.dof) * (ground - top) };
  });
  const path = (some: readonly { readonly x: number; readonly y: number }[]): string =>
    some.length === 0
      ? ''
      : `M${some[0]!.x} ${ground}${some.map(({ x, y }) => `L${x.toFixed(1)} ${y.toFixed(1)}`).join('')}L${some.at(-1)!.x} ${ground}z`;
  return (
    <span className="hump" ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={height} style={{ display: 'block' }}>
        <path className="ground" d={`M0 ${ground}H${width}`} />
        <path className="all" d={path(points)} />
        <path className="within" d={path(points.filter(({ t }) => Math.abs(t) <= factor))} />
        {asked !== undefined && asked > from && asked < to && (
          <path className="tick" d={`M${place(asked)} ${top - 4}V${ground + 4}`} />
        )}
      </svg>
    </span>
  );
};
