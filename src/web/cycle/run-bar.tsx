import { type ReactElement, useState } from 'react';
import { useWords } from '../state/page-context.ts';
import { NumberField } from './number-field.tsx';
import { runChoice, useShifts } from './with-shifts.tsx';

/** How far the shifts have come, how to give them up, and which ones they are. */
export const RunBar = (): ReactElement => {
  const { say, number } = useWords();
  const { choice, choose, working, stopped, progress, stop, again, sides } = useShifts();
  const [texts, setTexts] = useState({ seed: String(choice.seed), shifts: String(choice.shifts) });
  const run = Math.min(...sides.map(({ answer }) => answer?.figures?.shifts ?? 0));
  const failed = sides.some((side) => side.failed);
  const change = (name: 'seed' | 'shifts', text: string): void => {
    const next = { ...texts, [name]: text };
    setTexts(next);
    const wanted = { seed: Number(next.seed), shifts: Number(next.shifts) };
    const taken = runChoice(wanted);
    // what is no number of shifts leaves the former ones as they are
    if (next[name].trim() !== '' && taken[name] === wanted[name]) choose(taken);
  };
  return (
    <div className="run-bar" data-working={working}>
      <progress max={1} value={progress} aria-label={say('cycle.progress')} />
      <span className="run-told">
        {failed
          ? say('cycle.failed')
          : stopped
            ? say('cycle.stopped', { n: number(run) })
            : working
              ? say('cycle.working', { n: number(run) })
              : say('cycle.run', { n: number(run) })}
      </span>
      <span className="said" role="status">
        {working ? '' : say('cycle.run', { n: number(run) })}
      </span>
      {working ? (
        <button type="button" data-act="stop-run" onClick={stop}>
          {say('cycle.stop')}
        </button>
      ) : (
        <button type="button" data-act="run-again" onClick={again}>
          {say('cycle.again')}
        </button>
      )}
      <NumberField
        label={say('cycle.shifts')}
        name="shifts"
        text={texts.shifts}
        type={(text) => change('shifts', text)}
      />
      <NumberField
        label={say('cycle.seed')}
        name="seed"
        text={texts.seed}
        type={(text) => change('seed', text)}
      />
    </div>
  );
};
