import type { ReactElement } from 'react';
import type { LotJudgement } from '../../fill/judge-lot.ts';
import { deficiencyIn, lotBottles } from '../../fill/lot-bottles.ts';
import type { WeighedLot } from '../../fill/weighed-lot.ts';
import { useElementWidth } from '../line/element-width.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { BottleVolume } from './bottle-volume.tsx';

const height = 120;
const foot = 92;
const edge = 26;
/** Bottles that would lie on each other are stacked. */
const dot = 9;

/** Every bottle of the lot on one line, with the label, and what lies under it by once and twice the deficiency. */
export const LotStrip = ({
  judgement,
  lot,
}: {
  readonly judgement: LotJudgement;
  readonly lot: WeighedLot;
}): ReactElement | null => {
  const { say, number } = useWords();
  const [ref, width] = useElementWidth<HTMLDivElement>(600);
  const bottles = lotBottles(judgement, lot);
  if (bottles === undefined || lot.label === undefined) return null;
  const deficiency = deficiencyIn(judgement, lot);
  const limits = [
    { name: 'label', at: lot.label },
    ...(deficiency === undefined
      ? []
      : [
          { name: 'once', at: lot.label - deficiency },
          { name: 'twice', at: lot.label - 2 * deficiency },
        ]),
  ];
  const all = [...bottles.map(({ volume }) => volume), ...limits.map(({ at }) => at)];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const x = (volume: number): number => edge + ((width - 2 * edge) * (volume - low)) / (high - low || 1);
  const columns = new Map<number, number>();
  const dots = bottles.map(({ volume }) => {
    const column = Math.round(x(volume) / dot);
    const above = columns.get(column) ?? 0;
    columns.set(column, above + 1);
    return { x: column * dot, y: foot - 6 - above * dot, short: volume < lot.label! };
  });
  return (
    <figure className="lot-strip" ref={ref}>
      <figcaption className="small">{say('lot.strip')}</figcaption>
      <svg width={width} height={height} aria-hidden="true">
        <path className="ground" d={`M0 ${foot}H${width}`} />
        {limits.map(({ name, at }) => (
          <g key={name}>
            <path className={`limit ${name}`} d={`M${x(at)} 8V${foot + 5}`} />
            <text
              x={x(at)}
              y={foot + 20}
              textAnchor={x(at) > width - 70 ? 'end' : x(at) < 70 ? 'start' : 'middle'}
            >
              {say(`lot.limit.${name}`)}
            </text>
          </g>
        ))}
        {dots.map(({ x: at, y, short }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: bottles have no other name
          <circle key={i} className={short ? 'short' : undefined} cx={at} cy={y} r={3.6} />
        ))}
      </svg>
      <details>
        <summary>{say('charts.table')}</summary>
        <ScrollRegion label={say('lot.strip')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('samples.bottle')}</th>
                <th scope="col">{say('weigh.lane')}</th>
                <th scope="col">{say('weigh.column.contents')}</th>
                <th scope="col">{say('lot.error')}</th>
              </tr>
            </thead>
            <tbody>
              {bottles.map(({ volume, lane }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: bottles have no other name
                <tr key={i}>
                  <th scope="row">{number(i + 1)}</th>
                  <td>{lane}</td>
                  <td>
                    <BottleVolume value={volume} digits={6} />
                  </td>
                  <td>
                    <BottleVolume value={volume - lot.label!} digits={3} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollRegion>
      </details>
    </figure>
  );
};
