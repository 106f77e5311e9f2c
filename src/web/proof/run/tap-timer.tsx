import { type PointerEvent, type ReactElement, useEffect, useRef, useState } from 'react';
import { useWords } from '../../state/page-context.ts';
import { lapWatch } from './laps.ts';

const typesIn = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement ||
  target instanceof HTMLButtonElement ||
  target instanceof HTMLAnchorElement;

/** A tap for each bottle or row, by thumb or by the space bar: the time since the tap before is a reading. */
export const TapTimer = ({
  what,
  clock,
  lap,
}: {
  /** What passes at a tap; absent where one time alone is wanted, from its start to its end. */
  readonly what: string | undefined;
  /** ms. */
  readonly clock: () => number;
  readonly lap: (seconds: number) => void;
}): ReactElement => {
  const { say } = useWords();
  const watch = useRef(lapWatch(clock));
  const [runs, setRuns] = useState(false);
  const tap = (): void => {
    const seconds = watch.current.tap();
    const over = what === undefined && seconds !== undefined;
    if (over) watch.current.stop();
    setRuns(!over);
    if (seconds !== undefined) lap(seconds);
  };
  const latest = useRef(tap);
  latest.current = tap;
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.code !== 'Space' || event.repeat || typesIn(event.target)) return;
      event.preventDefault();
      latest.current();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
  const byThumb = (event: PointerEvent): void => {
    // the moment at which the thumb comes down counts, not the one at which it is lifted
    event.preventDefault();
    if (event.button === 0) tap();
  };
  return (
    <div className="tap-timer">
      <button
        type="button"
        className="tap-key"
        data-running={runs}
        onPointerDown={byThumb}
        onClick={(event) => {
          // a press without a pointer: the keyboard, or whoever reads the page aloud
          if (event.detail === 0) tap();
        }}
      >
        {what === undefined
          ? say(runs ? 'proving.run.tap.end' : 'proving.run.tap.start')
          : say(runs ? 'proving.run.tap.next' : 'proving.run.tap.first', { what })}
      </button>
      {runs && (
        <button
          type="button"
          data-act="tap-stop"
          onClick={() => {
            watch.current.stop();
            setRuns(false);
          }}
        >
          {say('proving.run.tap.stop')}
        </button>
      )}
      <p className="small quiet">{say('proving.run.tap.about')}</p>
    </div>
  );
};
