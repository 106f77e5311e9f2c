import type { ReactElement, ReactNode } from 'react';
import type { LanePrediction, Within } from '../../fill/index.ts';
import type { Kind } from '../../quantity/index.ts';
import { floorClass } from '../floors/floor-class.ts';
import { GoLink } from '../shell/go-link.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { AllowanceLines } from './allowance-lines.tsx';
import { useBottleUnits } from './bottle-units.ts';
import type { FillAnswer, OtherFloorAnswer } from './fill-answer.ts';
import { useFillPlace } from './fill-place.tsx';
import { GoalSentence } from './goal-sentence.tsx';
import { Hump } from './hump.tsx';
import { Interval } from './interval.tsx';
import { type ForetoldLane, timeIntervalSheet, volumeIntervalSheet } from './interval-sheet.ts';
import { LevelTable } from './level-table.tsx';
import { NoAnswerLines } from './no-answer.tsx';
import { ScorePart } from './score-part.tsx';
import { VolumeTable } from './volume-table.tsx';
import { useAnswer } from './with-answer.tsx';

interface Row {
  readonly name: string;
  readonly said: string;
  readonly left: Within | undefined;
  readonly right: Within | undefined;
  readonly kind: Kind;
  readonly unit?: string;
  readonly asked?: number | undefined;
  /** Where the working of each stands. */
  readonly sheets: { readonly left?: string | undefined; readonly right: string };
}

/** Room at both ends of an axis, as a share of it. */
const edge = 0.04;

/** Both ends of the axis of some rows: all intervals of both floors, twice as wide. */
const axisOf = (rows: readonly Row[]): { readonly from: number; readonly to: number } => {
  const sides = rows.flatMap(({ left, right }) => [left, right]).filter((one) => one !== undefined);
  const ends = [
    ...sides.flatMap(({ value, lower, upper }) => [2 * lower - value, 2 * upper - value]),
    ...rows.flatMap(({ asked }) => asked ?? []),
  ];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const room = edge * (high - low);
  return { from: Math.max(0, low - room), to: high + room };
};

/** What takes the largest part of the lanes' widths. */
const largestCause = (causes: readonly Readonly<Record<string, number>>[]): string => {
  const sums = new Map<string, number>();
  for (const each of causes) {
    for (const [name, share] of Object.entries(each)) sums.set(name, (sums.get(name) ?? 0) + share);
  }
  return [...sums].toSorted(([, a], [, b]) => b - a)[0]?.[0] ?? 'volumes';
};

/** A picture that opens what it was made by. */
const Door = ({
  to,
  said,
  children,
}: {
  readonly to: string | undefined;
  readonly said: string;
  readonly children: ReactNode;
}): ReactNode =>
  to === undefined ? (
    children
  ) : (
    <GoLink to={to} className="hump-door">
      <span className="said">{said}</span>
      {children}
    </GoLink>
  );

const Rows = ({ title, rows }: { readonly title: string; readonly rows: readonly Row[] }): ReactElement => {
  const { book, floor } = useFillPlace();
  const { other } = useAnswer();
  const { say } = useWords();
  const axis = axisOf(rows);
  const side = (row: Row, at: 'left' | 'right'): ReactElement => {
    const of = row[at];
    const hue = floorClass(book, at === 'left' ? floor.tag : (other ?? ''));
    if (of === undefined) return <span className={`side ${at} nothing`} />;
    const text = (
      <span className="value">
        <Interval of={of} kind={row.kind} {...(row.unit === undefined ? {} : { unit: row.unit })} />
      </span>
    );
    return (
      <span className={`side ${at} ${hue}`}>
        {at === 'left' && text}
        <Door to={row.sheets[at]} said={say('foretold.sheet', { what: row.said })}>
          <Hump of={of} side={at} asked={row.asked} {...axis} />
        </Door>
        {at === 'right' && text}
      </span>
    );
  };
  return (
    <section className="foretold">
      <h3>{title}</h3>
      <ul className="rows">
        {rows.map((row) => (
          <li className="row" key={row.name} data-row={row.said}>
            {side(row, 'left')}
            <span className="name">
              {row.name}
              <span className="said"> {row.said}</span>
            </span>
            {side(row, 'right')}
          </li>
        ))}
      </ul>
    </section>
  );
};

const Heads = ({
  answer,
  told,
}: {
  readonly answer: FillAnswer;
  readonly told: OtherFloorAnswer;
}): ReactElement => {
  const { say } = useWords();
  const { book, floor } = useFillPlace();
  const { other } = useAnswer();
  const there = book.floors?.find(({ tag }) => tag === other);
  const head = (at: 'left' | 'right', rate: Within | undefined, name: string, tag: string): ReactElement => (
    <div className={`${at} ${floorClass(book, tag)}`}>
      <p>{say(at === 'left' ? 'foretold.here' : 'foretold.there', { floor: name })}</p>
      <p className="foretold-rate" data-rate={tag}>
        {rate === undefined ? say('foretold.rate.none') : <Interval of={rate} kind="rate" />}
      </p>
    </div>
  );
  return (
    <div className="heads">
      {head('left', answer.hereRate, floor.name ?? floor.tag, floor.tag)}
      <p className="middle">{say('foretold.rate')}</p>
      {head('right', told.prediction.rate, there?.name ?? other ?? '', other ?? '')}
    </div>
  );
};

const Foretold = ({
  answer,
  told,
}: {
  readonly answer: FillAnswer;
  readonly told: OtherFloorAnswer;
}): ReactElement => {
  const words = useWords();
  const { say, percent, number } = words;
  const { volume } = useBottleUnits();
  const { prediction } = told;
  const leftOf = (lane: string) => answer.here?.find((one) => one.lane === lane);
  const sheetsOf = (lane: LanePrediction, sheet: (lane: ForetoldLane) => string): Row['sheets'] => {
    const left = leftOf(lane.lane);
    return { left: left === undefined ? undefined : sheet(left), right: sheet(lane) };
  };
  const volumes = prediction.lanes.map(
    (lane): Row => ({
      name: lane.lane,
      said: `${lane.lane} ${say('foretold.volume')}`,
      left: leftOf(lane.lane)?.volume,
      right: lane.volume,
      kind: 'volume',
      unit: volume,
      asked: answer.level,
      sheets: sheetsOf(lane, volumeIntervalSheet),
    }),
  );
  const times = prediction.lanes.map(
    (lane): Row => ({
      name: lane.lane,
      said: `${lane.lane} ${say('foretold.time')}`,
      left: leftOf(lane.lane)?.time,
      right: lane.time,
      kind: 'time',
      unit: 's',
      sheets: sheetsOf(lane, timeIntervalSheet),
    }),
  );
  return (
    <div className="spine foretold-spine">
      <Heads answer={answer} told={told} />
      <p className="small quiet">
        {say('foretold.about', { share: percent(prediction.confidence) })} {say('foretold.key')}
      </p>
      <p className="small" data-real-moves={prediction.realMoves}>
        {say('foretold.moves', { n: prediction.realMoves })}
      </p>
      <p className="small">
        {say('foretold.causes', {
          volume: say(
            `foretold.cause.${largestCause(prediction.lanes.map((lane) => ({ ...lane.volumeCauses })))}`,
          ),
          time: say(
            `foretold.cause.${largestCause(prediction.lanes.map((lane) => ({ ...lane.timeCauses })))}`,
          ),
        })}
      </p>
      <Rows title={say('foretold.volume')} rows={volumes} />
      <Rows title={say('foretold.time')} rows={times} />
      {prediction.stationTime !== undefined && (
        <p className="foretold-station">
          {say('foretold.station')} <Interval of={prediction.stationTime} kind="time" unit="s" />
        </p>
      )}
      <details>
        <summary>{say('foretold.counts')}</summary>
        <table className="fill-table">
          <thead>
            <tr>
              <th scope="col">{say('weigh.lane')}</th>
              <th scope="col">{say('foretold.preset')}</th>
              <th scope="col">{say('foretold.bottle')}</th>
              <th scope="col">{say('foretold.afterRun')}</th>
              <th scope="col">{say('foretold.reached')}</th>
            </tr>
          </thead>
          <tbody>
            {prediction.lanes.map(({ lane, preset, bottle, afterRun }, i) => (
              <tr key={lane}>
                <th scope="row">{lane}</th>
                <td>
                  {number(preset, 6)}{' '}
                  <span className="quiet">{say(`foretold.from.${told.presetsFrom[i] ?? 'book'}`)}</span>
                </td>
                <td>
                  <Interval of={bottle} kind="volume" unit={volume} />
                </td>
                <td>
                  <Interval of={afterRun} kind="volume" unit={volume} />
                </td>
                <td>{told.reached?.[i] !== undefined && percent(told.reached[i])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      {prediction.stuckShare > 0.001 && (
        <p className="problem">{say('foretold.stuck', { share: percent(prediction.stuckShare) })}</p>
      )}
    </div>
  );
};

/** What the lanes will do there, both floors facing each other across the spine; with what to begin. */
export const FloorView = (): ReactElement => {
  const { say } = useWords();
  const { answer, working, other } = useAnswer();
  const name = usePagePart(({ book }) => book?.floors?.find(({ tag }) => tag === other)?.name);
  const told = answer?.other;
  return (
    <div className="answer" data-working={working}>
      <NoAnswerLines />
      {answer !== undefined && told !== undefined && (
        <>
          <Foretold answer={answer} told={told} />
          <section className="fill-part">
            <h3>{say('foretold.start', { floor: name ?? other ?? '' })}</h3>
            <GoalSentence goal={told.start} />
            {told.start.goal === 'level' && 'presets' in told.start && <LevelTable goal={told.start} />}
            {told.start.goal === 'volume' && 'presets' in told.start && <VolumeTable goal={told.start} />}
          </section>
          <AllowanceLines change={told.change} ofRuns={told.prediction.ofRuns} />
          <ScorePart told={told} name={name ?? other ?? ''} />
        </>
      )}
    </div>
  );
};
