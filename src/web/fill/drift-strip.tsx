import type { ReactElement } from 'react';
import type { Value } from '../../sheets/frame.ts';
import { useElementWidth } from '../line/element-width.ts';

const height = 80;
const edge = 8;

/** The bottles of a lane in their order, with the moving average that follows them; the sheet beside it has the numbers. */
export const DriftStrip = ({
  volumes,
  averages,
}: {
  readonly volumes: readonly number[];
  readonly averages: Value | undefined;
}): ReactElement => {
  const [ref, width] = useElementWidth<HTMLDivElement>(400);
  const line = Array.isArray(averages) ? (averages as readonly number[]) : [];
  const all = [...volumes, ...line];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const x = (i: number): number => edge + ((width - 2 * edge) * i) / Math.max(1, volumes.length - 1);
  const y = (volume: number): number =>
    height - edge - ((height - 2 * edge) * (volume - low)) / (high - low || 1);
  return (
    <div className="drift-strip" ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the sheet beside it has the numbers, and it is hidden from readers */}
      <svg width={width} height={height}>
        {volumes.map((volume, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a bottle is named by its place in the run
          <circle key={i} cx={x(i)} cy={y(volume)} r={2.8} />
        ))}
        {line.length > 1 && <path d={line.map((v, i) => `${i === 0 ? 'M' : 'L'}${x(i)} ${y(v)}`).join('')} />}
      </svg>
    </div>
  );
};
