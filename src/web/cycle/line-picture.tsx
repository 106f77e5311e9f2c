import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { ChuteMoment, LineMoment, ShiftLine } from '../../line/shift/index.ts';
import { useElementWidth } from '../line/element-width.ts';
import { useWords } from '../state/page-context.ts';
import { drawnBottles, type PictureBox, pictureOf } from './picture-layout.ts';
import { useNames } from './use-names.ts';

const margin = 6;
/** px of the chute above the heads, with the tube and its two sensors */
const chuteTall = 40;
const tube = 12;
const pitch = 17;
const radius = 6.2;

/** A bottle from above: hollow while empty, filled from the middle, a cap across it. */
const Seen = ({
  x,
  y,
  filled,
  capped,
}: {
  readonly x: number;
  readonly y: number;
  readonly filled: number;
  readonly capped: boolean;
}): ReactElement => (
  <g className="seen">
    <circle className="glass" cx={x} cy={y} r={radius} />
    {filled > 0 && <circle className="contents" cx={x} cy={y} r={(radius - 1) * Math.sqrt(filled)} />}
    {capped && <path className="cap" d={`M${x - 3.4} ${y}h6.8M${x} ${y - 3.4}v6.8`} />}
  </g>
);

/** The cap chute seen from the side: the tube with its caps, and the two sensors as ticks across it. */
const Chute = ({ x, moment }: { readonly x: number; readonly moment: ChuteMoment }): ReactElement => {
  const { say, number } = useWords();
  const { caps, low, high, does } = moment;
  const tall = chuteTall - 8;
  // a little air stands above the high sensor
  const y = (count: number): number => margin + tall * (1 - Math.min(1, count / (1.12 * Math.max(high, 1))));
  const foot = margin + tall;
  return (
    <g className="chute" data-caps={Math.floor(caps)} data-sorter={does}>
      <path className="belt" d={`M${x} ${margin}v${tall}M${x + tube} ${margin}v${tall}`} />
      <rect className="caps" x={x + 2} y={y(caps)} width={tube - 4} height={foot - y(caps)} />
      <path className="sensor" d={`M${x - 4} ${y(high)}h${tube + 8}M${x - 4} ${y(low)}h${tube + 8}`} />
      <text x={x + tube + 8} y={margin + 13}>
        {say('cycle.chute', { n: number(Math.floor(caps)) })}
      </text>
      <text className="quiet" x={x + tube + 8} y={margin + 30}>
        {say(`cycle.sorter.${does}`)}
      </text>
    </g>
  );
};

export interface LinePictureProps {
  readonly book: Book;
  readonly line: ShiftLine;
  readonly moment: LineMoment;
  readonly moves: boolean;
}

/** The line from above at one moment: stations in flow order, rows in the washer, bottles as they stand. */
export const LinePicture = ({ book, line, moment, moves }: LinePictureProps): ReactElement => {
  const { say } = useWords();
  const nameOf = useNames();
  const [ref, wide] = useElementWidth<HTMLDivElement>(800);
  const picture = pictureOf(book, line, wide);
  const { boxes, width, deep } = picture;
  const tall = deep * pitch + 12;
  const { chute } = moment;
  const top = margin + (chute === undefined ? 0 : chuteTall);
  const stateOf = (station: string) => moment.stations.find((one) => one.station === station);
  const under = ({ station, kind }: PictureBox, i: number): string | undefined => {
    // the washer says once what it does, under its first zone
    if (kind === 'zone' && boxes[i - 1]?.station === station) return undefined;
    const state = stateOf(station)?.state;
    return state === undefined ? undefined : say(`cycle.state.${state}`);
  };
  return (
    <div className="strip picture" ref={ref} tabIndex={width > wide ? 0 : undefined}>
      <svg
        width={width}
        height={top + tall + 42}
        role="img"
        aria-label={say('cycle.picture', { stations: boxes.map(({ tag }) => nameOf(tag)).join(', ') })}
      >
        {boxes.map((box, i) => (
          <g key={box.tag}>
            {box.kind === 'way' || box.kind === 'take-off' || box.kind === 'load' ? (
              <path
                className="belt"
                d={`M${box.x} ${top}h${box.width}M${box.x} ${top + tall}h${box.width}`}
              />
            ) : (
              <rect
                className={stateOf(box.station)?.state === 'running' ? 'box' : 'box waits'}
                x={box.x}
                y={top}
                width={box.width}
                height={tall}
              />
            )}
            <text x={box.x + box.width / 2} y={top + tall + 17} textAnchor="middle">
              {nameOf(box.tag)}
            </text>
            <text className="quiet" x={box.x + box.width / 2} y={top + tall + 34} textAnchor="middle">
              {under(box, i)}
            </text>
          </g>
        ))}
        {chute !== undefined &&
          boxes
            .filter(({ kind }) => kind === 'closing')
            .map(({ tag, x }) => <Chute key={tag} x={x + 6} moment={chute} />)}
        {drawnBottles(picture, moment, moves).map(({ key, x, lane, filled, capped }) => (
          <Seen key={key} x={x} y={top + 6 + pitch * (lane + 0.5)} filled={filled} capped={capped} />
        ))}
      </svg>
    </div>
  );
};
