import * as Plot from '@observablehq/plot';
import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { fromSi, si } from '../../quantity/index.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { usePageState, useWords } from '../state/page-context.ts';
import { unitFor } from '../words/unit-choice.ts';
import { PlotFigure, plotFrame } from './plot-figure.tsx';

/** What the supply leaves at the manifold against flow, with the point at which each number of lanes runs. */
export const SourceChart = ({
  floor,
  hue,
}: {
  readonly floor: FloorAssessment;
  readonly hue: string;
}): ReactElement | null => {
  const words = useWords();
  const { units, shown } = usePageState();
  const { supply, points } = floor.curve;
  if (supply.length === 0) return null;
  const own = (shown?.about?.units ?? {}) as Readonly<Record<string, string>>;
  const system = shown?.about?.system;
  const flowUnit = unitFor('volumeFlow', 1, units, own, system) ?? 'L/min';
  const pressureUnit = unitFor('pressureDifference', 1, units, own, system) ?? 'bar';
  const flow = (value: number) => fromSi(si('volumeFlow', value), 'volumeFlow', flowUnit);
  const pressure = (value: number) =>
    fromSi(si('pressureDifference', value), 'pressureDifference', pressureUnit);
  const curve = supply.map((point) => ({ x: flow(point.flow), y: pressure(point.pressure) }));
  const dots = points.map((point) => ({
    x: flow(point.flow),
    y: pressure(point.pressure),
    n: point.lanesOpen,
  }));
  const most = Math.max(...dots.map((dot) => dot.x), 0);
  // beyond half again the highest flow the curve says nothing about this line
  const seen = most > 0 ? curve.filter((point) => point.x <= most * 1.5) : curve;
  const label = (what: string, unit: string) => `${words.say(what)}, ${unit}`;
  return (
    <PlotFigure
      title={words.say('charts.source', { floor: floor.name })}
      depends={[floor, units, hue]}
      plot={() => ({
        height: 240,
        ...plotFrame,
        x: { label: label('charts.source.flow', flowUnit), zero: true },
        y: { label: label('charts.source.pressure', pressureUnit), zero: true, ticks: 5 },
        marks: [
          Plot.ruleY([0], { stroke: 'currentColor' }),
          Plot.line(seen, { x: 'x', y: 'y', stroke: `var(--${hue})`, strokeWidth: 2.5 }),
          Plot.ruleX(dots, { x: 'x', y1: 0, y2: 'y', stroke: 'currentColor', strokeDasharray: '2 3' }),
          Plot.dot(dots, {
            x: 'x',
            y: 'y',
            r: 4.5,
            fill: 'var(--paper)',
            stroke: `var(--${hue})`,
            strokeWidth: 2,
          }),
          Plot.text(dots, {
            x: 'x',
            y: 'y',
            text: (dot: { n: number }) => words.number(dot.n),
            dy: -13,
            fontSize: 13,
            fill: 'currentColor',
          }),
        ],
      })}
      table={
        <table>
          <thead>
            <tr>
              <th scope="col">{words.say('charts.source.lanesOpen')}</th>
              <th scope="col">{words.say('charts.source.flow')}</th>
              <th scope="col">{words.say('charts.source.pressure')}</th>
            </tr>
          </thead>
          <tbody>
            {points.map((point) => (
              <tr key={point.lanesOpen}>
                <th scope="row">{words.number(point.lanesOpen)}</th>
                <td>
                  <ShownQuantity value={point.flow} kind="volumeFlow" />
                </td>
                <td>
                  <ShownQuantity value={point.pressure} kind="gaugePressure" />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      }
    />
  );
};
