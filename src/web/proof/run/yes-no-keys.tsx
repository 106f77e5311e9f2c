import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';

/** A condition that is only told: it is so, or it is not; a second press takes it back. */
export const YesNoKeys = ({
  name,
  label,
  text,
  press,
}: {
  readonly name: string;
  readonly label: string;
  readonly text: string;
  readonly press: (text: string) => void;
}): ReactElement => {
  const { say } = useWords();
  return (
    <fieldset className="yes-no" data-run={name}>
      <legend>{label}</legend>
      {(['yes', 'no'] as const).map((one) => (
        <button
          key={one}
          type="button"
          data-claim={one}
          aria-pressed={text === one}
          onClick={() => press(text === one ? '' : one)}
        >
          {say(`proving.run.claim.${one}`)}
        </button>
      ))}
    </fieldset>
  );
};
