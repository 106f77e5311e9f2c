import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { stepName } from '../line/hold-sentence.tsx';
import { useWords } from '../state/page-context.ts';
import { useNames } from './use-names.ts';

type Hold = NonNullable<FloorAssessment['hold']>;

/** A step that is shorter is still read. */
const leastShare = 0.04;

/** The steps that set the pace, one after the other as long as they last, and back to the first. */
export const ChainDrawing = ({
  floor,
  hold,
}: {
  readonly floor: FloorAssessment;
  readonly hold: Hold;
}): ReactElement => {
  const words = useWords();
  const { say } = words;
  const nameOf = useNames();
  // what takes no time is an event, and no step one could shorten
  const steps = hold.chain.filter(({ seconds }) => seconds > 0);
  const whole = steps.reduce((sum, { seconds }) => sum + seconds, 0);
  const text = (seconds: number): string => say('cycle.seconds', { n: words.number(seconds, 3) });
  return (
    <>
      <ol className="chain" aria-label={say('cycle.chain')}>
        {steps.map((step, i) => (
          <li
            // biome-ignore lint/suspicious/noArrayIndexKey: a step has no identity but its place in the chain
            key={i}
            style={{ flexGrow: Math.max(leastShare, step.seconds / whole) * 100 }}
          >
            <span className="bead" aria-hidden="true" />
            <b>{text(step.seconds)}</b> <span>{stepName(words, step.step, floor)}</span>{' '}
            <span className="quiet small">{nameOf(step.station)}</span>
          </li>
        ))}
      </ol>
      <p className="chain-back small quiet">{say('cycle.chain.back', { seconds: text(whole) })}</p>
    </>
  );
};
