import { type ReactElement, useEffect, useMemo, useState } from 'react';
import { lineAt, nextWait, type ShiftLine, type StationMoment, traceShift } from '../../line/shift/index.ts';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import { LinePicture } from './line-picture.tsx';
import { NumberField } from './number-field.tsx';
import { useNames } from './use-names.ts';
import { Wanted } from './wanted.tsx';
import { useShifts } from './with-shifts.tsx';

/** Seconds of the line in one second of the clock. */
const speeds = [1, 10, 60, 600] as const;
/** s; a shorter wait is part of every cycle */
const worthSeeing = 20;
/** s of a step */
const step = 1;

const stillWanted = (): MediaQueryList => window.matchMedia('(prefers-reduced-motion: reduce)');

/** Whether this person asks for no motion. */
const useStill = (): boolean => {
  const [still, setStill] = useState(() => stillWanted().matches);
  useEffect(() => {
    const query = stillWanted();
    const change = (): void => setStill(query.matches);
    query.addEventListener('change', change);
    return () => query.removeEventListener('change', change);
  }, []);
  return still;
};

const two = (n: number): string => String(n).padStart(2, '0');

/** Hours, minutes and seconds since the shift began. */
const clockText = (at: number): string =>
  `${Math.floor(at / 3600)}:${two(Math.floor(at / 60) % 60)}:${two(Math.floor(at) % 60)}`;

/** What each station does, and for how long yet: said, not coloured. */
const Doings = ({
  stations,
  at,
}: {
  readonly stations: readonly StationMoment[];
  readonly at: number;
}): ReactElement => {
  const { say, has, number } = useWords();
  const nameOf = useNames();
  const doing = ({ state, step: done, waitsFor }: StationMoment): string => {
    if (state === 'running' && done !== undefined)
      return has(`step.${done}`) ? say(`step.${done}`) : say(`cycle.at.${done}`);
    if (waitsFor !== undefined) return say(`cycle.doing.${state}`, { what: nameOf(waitsFor) });
    return say(`cycle.state.${state}`);
  };
  return (
    <table className="cycle-table doings">
      <caption className="said">{say('cycle.doings')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('cycle.doings.station')}</th>
          <th scope="col" className="words">
            {say('cycle.doings.does')}
          </th>
          <th scope="col">{say('cycle.doings.yet')}</th>
        </tr>
      </thead>
      <tbody>
        {stations.map((moment) => (
          <tr key={moment.station} data-doing={moment.state}>
            <th scope="row">{nameOf(moment.station)}</th>
            <td className="words">{doing(moment)}</td>
            <td>{say('cycle.seconds', { n: number(Math.max(0, Math.round(moment.until - at))) })}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

const Watch = ({
  line,
  shift,
  seed,
}: {
  readonly line: ShiftLine;
  readonly shift: number;
  readonly seed: number;
}) => {
  const words = useWords();
  const { say, number } = words;
  const nameOf = useNames();
  const { book } = useShifts();
  const still = useStill();
  const trace = useMemo(() => traceShift(line, seed, shift), [line, seed, shift]);
  const [at, setAt] = useState(0);
  const [speed, setSpeed] = useState<number>(10);
  const [plays, setPlays] = useState(false);
  const [told, setTold] = useState('');
  const { end } = trace;
  const playing = plays && !still;
  useEffect(() => {
    if (!playing) return undefined;
    let frame = 0;
    let before: number | undefined;
    const tick = (now: number): void => {
      const passed = before === undefined ? 0 : (now - before) / 1000;
      before = now;
      setAt((was) => Math.min(end, was + passed * speed));
      frame = requestAnimationFrame(tick);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [playing, speed, end]);
  const moment = useMemo(() => lineAt(trace, Math.min(at, end)), [trace, at, end]);
  const go = (to: number): void => {
    setPlays(false);
    setAt(Math.max(0, Math.min(end, to)));
  };
  const jump = (): void => {
    const found = nextWait(trace, at, worthSeeing);
    if (found === undefined) {
      setTold(say('cycle.jump.none'));
      return;
    }
    go(found.since);
    const what = found.waitsFor === undefined ? '' : nameOf(found.waitsFor);
    setTold(
      say('cycle.jump.told', {
        clock: clockText(found.since),
        station: nameOf(found.station),
        doing: say(`cycle.doing.${found.state}`, { what }),
        seconds: say('cycle.seconds', { n: number(Math.round(found.until - found.since)) }),
      }),
    );
  };
  return (
    <div className="watch">
      <LinePicture book={book} line={line} moment={moment} moves={!still} />
      <div className="watch-keys">
        {!still && (
          <button type="button" data-act="play" aria-pressed={plays} onClick={() => setPlays(!plays)}>
            {say(plays ? 'cycle.pause' : 'cycle.play')}
          </button>
        )}
        <button type="button" data-act="back" onClick={() => go(Math.ceil(at) - step)}>
          {say('cycle.back')}
        </button>
        <button type="button" data-act="forth" onClick={() => go(Math.floor(at) + step)}>
          {say('cycle.forth')}
        </button>
        <button type="button" data-act="next-wait" onClick={jump}>
          {say('cycle.jump')}
        </button>
        {!still && (
          <label>
            {say('cycle.speed')}{' '}
            <select
              value={speed}
              data-choice="speed"
              onChange={(event) => setSpeed(Number(event.target.value))}
            >
              {speeds.map((one) => (
                <option key={one} value={one}>
                  {say('cycle.speed.times', { n: number(one) })}
                </option>
              ))}
            </select>
          </label>
        )}
        <span className="watch-clock" data-clock={Math.floor(at)}>
          {clockText(at)}
        </span>
      </div>
      <input
        type="range"
        className="watch-slider"
        aria-label={say('cycle.slider')}
        aria-valuetext={clockText(at)}
        min={0}
        max={Math.floor(end)}
        step={1}
        value={Math.floor(at)}
        onChange={(event) => go(Number(event.target.value))}
      />
      <p role="status" className="watch-told">
        {told}
      </p>
      <div className="watch-below">
        <Doings stations={moment.stations} at={moment.at} />
        <dl className="watch-counts">
          {(['put', 'good', 'lost'] as const).map((count) => (
            <div key={count}>
              <dt>{say(`cycle.count.${count}`)}</dt>
              <dd data-count={count}>{number(moment[count])}</dd>
            </div>
          ))}
        </dl>
      </div>
      <p className="small quiet">{say('cycle.picture.key')}</p>
    </div>
  );
};

/** The line at any moment of a shift, on one floor. */
export const WatchView = (): ReactElement => {
  const { say } = useWords();
  const { book, sides, choice, working } = useShifts();
  const [chosen, setChosen] = useState<string>();
  const [text, setText] = useState('1');
  const side = sides.find(({ floor }) => floor.floor === chosen) ?? sides[0];
  const shift = Number.isInteger(Number(text)) && Number(text) >= 1 ? Number(text) - 1 : undefined;
  const line = side?.answer?.ground.line;
  return (
    <div className="cycle-answer" data-working={working}>
      <div className="watch-choice">
        <fieldset className="floor-keys">
          <legend className="said">{say('cycle.watch.floor')}</legend>
          {sides.map(({ floor }) => (
            <button
              key={floor.floor}
              type="button"
              className={floorClass(book, floor.floor)}
              data-watch={floor.floor}
              aria-pressed={floor.floor === side?.floor.floor}
              onClick={() => setChosen(floor.floor)}
            >
              {floor.name}
            </button>
          ))}
        </fieldset>
        <NumberField
          name="shift"
          label={say('cycle.watch.shift')}
          text={text}
          type={setText}
          problem={shift === undefined ? say('cycle.watch.shift.wrong') : undefined}
        />
        <span className="small quiet">{say('cycle.watch.same')}</span>
      </div>
      {side !== undefined && line === undefined && side.answer !== undefined && <Wanted side={side} />}
      {line !== undefined && shift !== undefined && side !== undefined && (
        <Watch key={`${side.floor.floor} ${shift}`} line={line} shift={shift} seed={choice.seed} />
      )}
    </div>
  );
};
