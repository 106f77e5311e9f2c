import type { ReactElement } from 'react';
import { useElementWidth } from '../line/element-width.ts';
import type { FillAnswer } from './fill-answer.ts';

const height = 130;
const edge = 12;
/** Beyond so many standard deviations a dot stands at the edge. */
const reach = 4;

/** Misses in the order of the bottles, in their own standard deviations; the table beside it says them in words. */
export const ResidualStrip = ({ residuals }: Pick<FillAnswer, 'residuals'>): ReactElement => {
  const [ref, width] = useElementWidth<HTMLDivElement>(400);
  const last = Math.max(1, ...residuals.map(({ trial }) => trial));
  const x = (trial: number): number => edge + ((width - 2 * edge) * trial) / last;
  const y = (standard: number): number =>
    height / 2 - (Math.max(-reach, Math.min(reach, standard)) / reach) * (height / 2 - edge);
  return (
    <div ref={ref} className="residual-strip" aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the table beside it says the same, and it is hidden from readers */}
      <svg width={width} height={height}>
        <rect className="usual" x={0} width={width} y={y(2)} height={y(-2) - y(2)} />
        <path className="nought" d={`M0 ${y(0)}H${width}`} />
        {residuals.map(({ trial, of, standard, outlying }) =>
          of === 'volume' ? (
            <circle
              key={`${trial} ${of}`}
              className={outlying ? 'outlying' : undefined}
              cx={x(trial)}
              cy={y(standard)}
              r={outlying ? 5 : 3.2}
            />
          ) : (
            <path
              key={`${trial} ${of}`}
              className={outlying ? 'outlying' : undefined}
              d={`M${x(trial) - 3.5} ${y(standard)}h7m-3.5 -3.5v7`}
            />
          ),
        )}
      </svg>
    </div>
  );
};
