import type { ReactElement } from 'react';
import type { CheckState, FloorProof } from '../../../proof/index.ts';
import { useWords } from '../../state/page-context.ts';
import { StateMark } from '../state-mark.tsx';

/** What asks for work first. */
const states: readonly CheckState[] = [
  'failed',
  'stale',
  'shown',
  'open',
  'waits',
  'concession',
  'stands',
  'proved',
];

/** How many checks stand where; a press leaves only those. */
export const StateKeys = ({
  floor: { progress, checks },
  chosen,
  choose,
}: {
  readonly floor: FloorProof;
  readonly chosen: CheckState | undefined;
  readonly choose: (state: CheckState | undefined) => void;
}): ReactElement => {
  const { say, number } = useWords();
  return (
    <fieldset className="proof-keys state-keys">
      <legend className="said">{say('proving.states')}</legend>
      <button
        type="button"
        data-only="all"
        aria-pressed={chosen === undefined}
        onClick={() => choose(undefined)}
      >
        {say('proving.states.all')} <b>{number(checks.length)}</b>
      </button>
      {states
        .filter((state) => progress.counts[state] > 0 || state === chosen)
        .map((state) => (
          <button
            key={state}
            type="button"
            data-only={state}
            aria-pressed={chosen === state}
            onClick={() => choose(chosen === state ? undefined : state)}
          >
            <StateMark state={state} /> {say(`proof.state.${state}`)} <b>{number(progress.counts[state])}</b>
          </button>
        ))}
    </fieldset>
  );
};
