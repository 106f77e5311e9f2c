import { type ReactElement, useEffect, useRef, useState } from 'react';
import { useWords } from '../state/page-context.ts';

/** How often the running seconds are drawn, ms. */
const beat = 90;

/** One tap starts, one tap stops: the seconds go into the field of the time. */
export const StopWatch = ({ stopped }: { readonly stopped: (seconds: number) => void }): ReactElement => {
  const { say, numbers } = useWords();
  const [since, setSince] = useState<number>();
  const running = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    if (since === undefined) return undefined;
    const draw = (): void => {
      // written past the page's own drawing: ten times a second nothing else changes
      if (running.current === null) return;
      const seconds = (performance.now() - since) / 1000;
      running.current.textContent = new Intl.NumberFormat(numbers, {
        minimumFractionDigits: 1,
        maximumFractionDigits: 1,
      }).format(seconds);
    };
    draw();
    const timer = setInterval(draw, beat);
    return () => clearInterval(timer);
  }, [since, numbers]);
  const tap = (): void => {
    if (since === undefined) setSince(performance.now());
    else {
      stopped((performance.now() - since) / 1000);
      setSince(undefined);
    }
  };
  return (
    <button
      type="button"
      className="stop-watch"
      data-running={since !== undefined}
      aria-pressed={since !== undefined}
      onPointerDown={(event) => event.preventDefault()}
      onClick={tap}
    >
      {since === undefined ? (
        say('weigh.watch.start')
      ) : (
        <>
          {say('weigh.watch.stop')} <span ref={running} aria-hidden="true" />
        </>
      )}
    </button>
  );
};
