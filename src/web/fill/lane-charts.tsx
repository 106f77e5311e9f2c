import * as Plot from '@observablehq/plot';
import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import { PlotFigure, plotFrame } from '../charts/plot-figure.tsx';
import { floorClass } from '../floors/floor-class.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import { BottleVolume } from './bottle-volume.tsx';
import type { FillAnswer, LaneCurve } from './fill-answer.ts';

/** So many bottles of the table are read; nobody reads on. */
const most = 100;
const dashes = ['', '6 3', '2 3', '8 3 2 3'] as const;

interface OneProps {
  readonly curve: LaneCurve;
  readonly answer: FillAnswer;
  readonly hue: string;
}

/** Mean of a lane at a count, between the counts of its curve. */
const meanAt = ({ points }: LaneCurve, preset: number): number => {
  const above = points.findIndex((point) => point.preset >= preset);
  const [low, high] = [
    points[Math.max(0, above - 1)]!,
    points[above < 0 ? points.length - 1 : Math.max(1, above)]!,
  ];
  const share = high.preset === low.preset ? 0 : (preset - low.preset) / (high.preset - low.preset);
  return low.volume.value + share * (high.volume.value - low.volume.value);
};

/** The bottles of one lane about its line, within the band in which a single bottle lies. */
const LaneChart = ({ curve, answer, hue }: OneProps): ReactElement => {
  const { say, number } = useWords();
  const { volume: unit, volumeIn } = useBottleUnits();
  const dots = answer.dots
    .filter(({ lane }) => lane === curve.lane)
    .map(({ preset, volume, overflowed }) => ({
      x: preset,
      y: volumeIn(volume - meanAt(curve, preset)),
      overflowed,
    }));
  const band = curve.points.map(({ preset, volume, bottle }) => ({
    x: preset,
    low: volumeIn(bottle.lower - volume.value),
    high: volumeIn(bottle.upper - volume.value),
  }));
  return (
    <PlotFigure
      title={say('trials.chart', { lane: curve.lane })}
      depends={[curve, dots.length, hue, unit]}
      plot={() => ({
        height: 190,
        ...plotFrame,
        x: { label: say('trials.chart.preset'), ticks: 5 },
        y: { label: say('trials.chart.off', { unit }), ticks: 5 },
        marks: [
          Plot.areaY(band, { x: 'x', y1: 'low', y2: 'high', fill: `var(--${hue})`, fillOpacity: 0.2 }),
          Plot.ruleY([0], { stroke: `var(--${hue})`, strokeWidth: 2 }),
          Plot.dot(
            dots.filter(({ overflowed }) => !overflowed),
            { x: 'x', y: 'y', r: 3.5, fill: 'var(--paper)', stroke: 'currentColor' },
          ),
          // a bottle that ran over says only that it got at least so much
          Plot.dot(
            dots.filter(({ overflowed }) => overflowed),
            { x: 'x', y: 'y', r: 4, symbol: 'triangle', fill: 'none', stroke: 'currentColor' },
          ),
        ],
      })}
      table={
        <ScrollRegion label={say('trials.chart', { lane: curve.lane })}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('trials.chart.preset')}</th>
                <th scope="col">{say('trials.chart.mean')}</th>
                <th scope="col">{say('trials.chart.low')}</th>
                <th scope="col">{say('trials.chart.high')}</th>
              </tr>
            </thead>
            <tbody>
              {curve.points.map(({ preset, volume, bottle }) => (
                <tr key={preset}>
                  <th scope="row">{number(preset, 6)}</th>
                  {[volume.value, bottle.lower, bottle.upper].map((value, i) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: mean, low and high stand in their places
                    <td key={i}>
                      <BottleVolume value={value} digits={5} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollRegion>
      }
    />
  );
};

/** All lanes: contents against preset, with the level of the bottles. */
const AllLanes = ({
  answer,
  curves,
}: {
  readonly answer: FillAnswer;
  readonly curves: readonly LaneCurve[];
}): ReactElement => {
  const { say, number } = useWords();
  const { volume: unit, volumeIn } = useBottleUnits();
  const { level } = answer;
  const at = ({ preset, volume }: { readonly preset: number; readonly volume: number }) => ({
    x: preset,
    y: volumeIn(volume),
  });
  return (
    <PlotFigure
      title={say('trials.charts')}
      depends={[curves, answer.dots, level, unit]}
      plot={() => ({
        height: 270,
        ...plotFrame,
        marginLeft: 58,
        marginRight: 44,
        x: { label: say('trials.chart.preset') },
        y: { label: say('trials.chart.volume', { unit }), ticks: 5 },
        marks: [
          ...(level === undefined
            ? []
            : [Plot.ruleY([volumeIn(level)], { stroke: 'currentColor', strokeDasharray: '2 3' })]),
          ...curves.map(({ points }, i) =>
            Plot.line(
              points.map(({ preset, volume }) => at({ preset, volume: volume.value })),
              {
                x: 'x',
                y: 'y',
                stroke: `var(--floor-${i % 4})`,
                strokeWidth: 1.6,
                strokeDasharray: dashes[Math.floor(i / 4) % dashes.length] ?? '',
              },
            ),
          ),
          Plot.dot(answer.dots.map(at), {
            x: 'x',
            y: 'y',
            r: 3.2,
            fill: 'var(--paper)',
            stroke: 'currentColor',
          }),
        ],
      })}
      table={
        <ScrollRegion label={say('trials.charts')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('weigh.lane')}</th>
                <th scope="col">{say('trials.chart.preset')}</th>
                <th scope="col">{say('weigh.column.contents')}</th>
              </tr>
            </thead>
            <tbody>
              {answer.dots.slice(0, most).map(({ trial, lane, preset, volume }) => (
                <tr key={trial}>
                  <th scope="row">{lane}</th>
                  <td>{number(preset, 6)}</td>
                  <td>
                    <BottleVolume value={volume} digits={5} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollRegion>
      }
    />
  );
};

/** Contents against preset: all lanes together, then each about its own line. */
export const LaneCharts = ({
  book,
  floor,
  answer,
}: {
  readonly book: Book;
  readonly floor: string;
  readonly answer: FillAnswer;
}): ReactElement => {
  const { say } = useWords();
  const { curves } = answer;
  if (curves === undefined) return <p className="quiet">{answer.done ? '' : say('answer.working')}</p>;
  const hue = floorClass(book, floor);
  return (
    <section className="lane-charts">
      <AllLanes answer={answer} curves={curves} />
      <h3>{say('trials.charts.about')}</h3>
      <p className="small quiet">{say('trials.charts.key')}</p>
      <div className="pair">
        {curves
          .filter(({ points }) => points.length > 1)
          .map((curve) => (
            <LaneChart key={curve.lane} curve={curve} answer={answer} hue={hue} />
          ))}
      </div>
    </section>
  );
};
