import * as Plot from '@observablehq/plot';
import type { ReactElement } from 'react';
import { PlotFigure, plotFrame } from '../charts/plot-figure.tsx';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import type { FillAnswer } from './fill-answer.ts';
import type { LevelGoal } from './goals.ts';

/** Shares below this are not drawn: on the way there nothing is set. */
const least = 0.02;
/** Where the names stand, in per cent. */
const names = [25, 45, 65, 85] as const;
const dashes = ['', '6 3', '2 3', '8 3 2 3'] as const;

/** The share of bottles that reach their level against the count, one line a lane, with what is set marked on it. */
export const ReachedChart = ({
  answer,
  goal,
}: {
  readonly answer: FillAnswer;
  readonly goal: LevelGoal;
}): ReactElement => {
  const { say, number } = useWords();
  const lines = (answer.near ?? []).map(({ lane, points }) => ({
    lane,
    points: points.flatMap(({ preset, reached }) =>
      reached === undefined || reached < least ? [] : [{ x: preset, y: reached * 100 }],
    ),
  }));
  return (
    <PlotFigure
      title={say('presets.chart')}
      depends={[answer.near, goal]}
      plot={() => ({
        height: 250,
        ...plotFrame,
        marginRight: 54,
        x: { label: say('trials.chart.preset') },
        y: { label: say('presets.chart.share'), domain: [0, 100], ticks: 5 },
        marks: [
          Plot.ruleY([goal.share * 100], { stroke: 'currentColor', strokeDasharray: '2 3' }),
          ...lines.map(({ points }, i) =>
            Plot.line(points, {
              x: 'x',
              y: 'y',
              stroke: `var(--floor-${i % 4})`,
              strokeWidth: 2,
              strokeDasharray: dashes[Math.floor(i / 4) % dashes.length] ?? '',
            }),
          ),
          Plot.dot(
            goal.presets.lanes.map(({ preset, reached }) => ({ x: preset, y: reached * 100 })),
            { x: 'x', y: 'y', r: 4.5, fill: 'var(--paper)', stroke: 'currentColor', strokeWidth: 2 },
          ),
          Plot.text(
            lines.flatMap(({ lane, points }, i) => {
              // lines may lie on each other: each name stands at a height of its own
              const at = points.find(({ y }) => y > names[i % names.length]!) ?? points.at(-1);
              return at === undefined ? [] : [{ ...at, lane }];
            }),
            { x: 'x', y: 'y', text: 'lane', textAnchor: 'start', dx: 8, fontSize: 13, fill: 'currentColor' },
          ),
        ],
      })}
      table={
        <ScrollRegion label={say('presets.chart')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('weigh.lane')}</th>
                <th scope="col">{say('trials.chart.preset')}</th>
                <th scope="col">{say('presets.chart.share')}</th>
              </tr>
            </thead>
            <tbody>
              {lines.flatMap(({ lane, points }) =>
                points.map(({ x, y }) => (
                  <tr key={`${lane} ${x}`}>
                    <th scope="row">{lane}</th>
                    <td>{number(x, 6)}</td>
                    <td>{number(y, 4)}</td>
                  </tr>
                )),
              )}
            </tbody>
          </table>
        </ScrollRegion>
      }
    />
  );
};
