import * as Plot from '@observablehq/plot';
import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { CycleBar, FloorAssessment } from '../../floor/assessment.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { stepName } from '../line/hold-sentence.tsx';
import { stationsInFlow } from '../line/line-layout.ts';
import { usePageState, useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import { PlotFigure } from './plot-figure.tsx';

/** What a station does or waits for: a step, a hold rule of the book, or a kind of room. */
const barText = (words: Words, book: Book, bar: CycleBar, floor: FloorAssessment): string => {
  if (bar.state === 'works') return stepName(words, bar.what, floor);
  const rule = book.line?.holdRules?.find(({ tag }) => tag === bar.what);
  if (rule !== undefined) {
    const key = rule.until === 'fill end' ? 'wait.fill' : 'wait.release';
    return words.say(key);
  }
  if (words.has(`wait.${bar.what}`)) return words.say(`wait.${bar.what}`);
  return words.say('wait.for', { what: stepName(words, bar.what, floor) });
};

/** One cycle: each station's work and waiting over the seconds, so that one sees who waits for whom. */
export const CycleChart = ({
  book,
  floor,
  hue,
}: {
  readonly book: Book;
  readonly floor: FloorAssessment;
  readonly hue: string;
}): ReactElement | null => {
  const words = useWords();
  const { units } = usePageState();
  if (floor.cycle.length === 0) return null;
  const stations = stationsInFlow(book.line?.stations ?? []);
  const nameOf = (tag: string): string => stations.find((station) => station.tag === tag)?.name ?? tag;
  const rows = floor.cycle.map((bar) => ({
    station: nameOf(bar.station),
    from: bar.from,
    to: bar.to,
    state: bar.state,
    text: barText(words, book, bar, floor),
  }));
  const order = stations
    .map(({ tag }) => nameOf(tag))
    .filter((name) => rows.some((row) => row.station === name));
  const works = rows.filter((row) => row.state === 'works');
  const waits = rows.filter((row) => row.state === 'waits');
  const last = Math.max(...rows.map((row) => row.to));
  return (
    <PlotFigure
      title={words.say('charts.cycle', { floor: floor.name })}
      depends={[floor, units, hue]}
      plot={(width) => {
        // a word stands in a bar only where it fits
        const fits = (row: { from: number; to: number; text: string }) =>
          ((row.to - row.from) / last) * (width - 110) > row.text.length * 7.2;
        return {
          height: 60 + order.length * 34,
          marginLeft: 84,
          marginBottom: 38,
          style: { fontSize: '13px' },
          x: { label: words.say('charts.cycle.time'), domain: [0, last] },
          y: { label: null, domain: order, padding: 0.22 },
          marks: [
            Plot.barX(works, {
              x1: 'from',
              x2: 'to',
              y: 'station',
              fill: `var(--${hue})`,
              insetRight: 1,
            }),
            Plot.barX(waits, {
              x1: 'from',
              x2: 'to',
              y: 'station',
              fill: 'none',
              stroke: 'var(--soft)',
              strokeDasharray: '2 4',
              insetRight: 1,
            }),
            Plot.text(works.filter(fits), {
              x: (row: { from: number; to: number }) => (row.from + row.to) / 2,
              y: 'station',
              text: 'text',
              fill: 'var(--paper)',
              fontSize: 13,
            }),
            Plot.text(waits.filter(fits), {
              x: (row: { from: number; to: number }) => (row.from + row.to) / 2,
              y: 'station',
              text: 'text',
              fill: 'currentColor',
              fontSize: 13,
            }),
          ],
        };
      }}
      table={
        <table>
          <thead>
            <tr>
              <th scope="col">{words.say('charts.cycle.station')}</th>
              <th scope="col" className="words">
                {words.say('charts.cycle.what')}
              </th>
              <th scope="col">{words.say('charts.cycle.from')}</th>
              <th scope="col">{words.say('charts.cycle.to')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={`${row.station}${row.text}${row.from}`}>
                <th scope="row">{row.station}</th>
                <td className="words">{row.text}</td>
                <td>
                  <ShownQuantity value={row.from} kind="time" unit="s" digits={3} />
                </td>
                <td>
                  <ShownQuantity value={row.to} kind="time" unit="s" digits={3} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      }
    />
  );
};
