import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';
import type { Overflow } from './weigh-body.ts';

const seen: readonly Overflow[] = ['none', 'trace', 'stream'];

/** What ran over: the press writes the bottle down. */
export const OverflowKeys = ({
  correcting,
  press,
}: {
  readonly correcting: boolean;
  readonly press: (overflow: Overflow | undefined) => void;
}): ReactElement => {
  const { say } = useWords();
  return (
    <fieldset className="overflow-keys">
      <legend>{say(correcting ? 'weigh.overflow.correct' : 'weigh.overflow')}</legend>
      {seen.map((overflow) => (
        <button type="button" key={overflow} data-overflow={overflow} onClick={() => press(overflow)}>
          {say(`weigh.overflow.${overflow}`)}
        </button>
      ))}
      <button type="button" className="unseen" data-overflow="unseen" onClick={() => press(undefined)}>
        {say('weigh.overflow.unseen')}
      </button>
    </fieldset>
  );
};
