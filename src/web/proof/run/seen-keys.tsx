import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';

/** Two big keys: it was as expected, or not. */
export const SeenKeys = ({
  seen,
  press,
  problem,
}: {
  readonly seen: boolean | undefined;
  readonly press: (seen: boolean) => void;
  readonly problem: string | undefined;
}): ReactElement => {
  const { say } = useWords();
  return (
    <fieldset className="seen-keys">
      <legend>{say('proving.run.seen')}</legend>
      {([true, false] as const).map((one) => (
        <button
          key={String(one)}
          type="button"
          data-seen={one}
          aria-pressed={seen === one}
          onClick={() => press(one)}
        >
          {say(one ? 'proving.run.seen.yes' : 'proving.run.seen.no')}
        </button>
      ))}
      {problem !== undefined && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </fieldset>
  );
};
