import * as Plot from '@observablehq/plot';
import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { fromSi, si } from '../../quantity/index.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { usePageState, useWords } from '../state/page-context.ts';
import { unitFor } from '../words/unit-choice.ts';
import { PlotFigure, plotFrame } from './plot-figure.tsx';

/** The surface of the tank over the agreed hour. */
export const TankChart = ({
  floor,
  hue,
}: {
  readonly floor: FloorAssessment;
  readonly hue: string;
}): ReactElement | null => {
  const words = useWords();
  const { units, shown } = usePageState();
  if (floor.tank.length < 2) return null;
  const own = (shown?.about?.units ?? {}) as Readonly<Record<string, string>>;
  const unit = unitFor('length', 1, units, own, shown?.about?.system) ?? 'm';
  const points = floor.tank.map(({ time, level }) => ({
    x: time / 60,
    y: fromSi(si('length', level), 'length', unit),
  }));
  const outlet = floor.figures.tankOutlet?.value;
  const empty = outlet === undefined ? undefined : fromSi(si('length', outlet), 'length', unit);
  const levels = [...points.map((point) => point.y), ...(empty === undefined ? [] : [empty])];
  const [low, high] = [Math.min(...levels), Math.max(...levels)];
  // a surface that hardly moves is to look as if it hardly moved
  const room = Math.max(high - low, high * 0.1) * 0.08;
  // every tenth is enough for a reader
  const step = Math.max(1, Math.floor(floor.tank.length / 10));
  return (
    <PlotFigure
      title={words.say('charts.tank', { floor: floor.name })}
      depends={[floor, units, hue]}
      plot={() => ({
        height: 200,
        ...plotFrame,
        x: { label: words.say('charts.tank.time') },
        y: {
          label: `${words.say('charts.tank.level')}, ${unit}`,
          domain: [low - room, high + room],
          ticks: 5,
        },
        marks: [
          ...(empty === undefined
            ? []
            : [
                Plot.ruleY([empty], { stroke: 'currentColor', strokeDasharray: '2 3' }),
                Plot.text([{ x: 0, y: empty }], {
                  x: 'x',
                  y: 'y',
                  text: () => words.say('charts.tank.outlet'),
                  textAnchor: 'start',
                  dx: 6,
                  dy: -9,
                  fontSize: 13,
                }),
              ]),
          Plot.line(points, { x: 'x', y: 'y', stroke: `var(--${hue})`, strokeWidth: 2.5 }),
        ],
      })}
      table={
        <table>
          <thead>
            <tr>
              <th scope="col">{words.say('charts.tank.time')}</th>
              <th scope="col">{words.say('charts.tank.level')}</th>
            </tr>
          </thead>
          <tbody>
            {floor.tank
              .filter((_, i) => i % step === 0)
              .map((point) => (
                <tr key={point.time}>
                  <th scope="row">{words.number(point.time / 60, 3)}</th>
                  <td>
                    <ShownQuantity value={point.level} kind="length" unit={unit} />
                  </td>
                </tr>
              ))}
          </tbody>
        </table>
      }
    />
  );
};
