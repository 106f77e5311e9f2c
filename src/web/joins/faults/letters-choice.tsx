import { type ReactElement, useId } from 'react';
import { type Encoding, encodings } from '../../../table/csv/encodings.ts';
import { useWords } from '../../state/page-context.ts';

/** How the letters of a text file were taken to be written, with texts that show it, to be said otherwise. */
export const LettersChoice = ({
  taken,
  samples,
  choose,
}: {
  readonly taken: Encoding;
  readonly samples: readonly string[];
  readonly choose: (said: Encoding) => void;
}): ReactElement => {
  const { say } = useWords();
  const id = useId();
  return (
    <div className="joins-filter">
      <div className="proof-field">
        <label htmlFor={id}>{say('joining.list.letters')}</label>
        <select
          id={id}
          data-field="encoding"
          value={taken}
          onChange={({ target }) => choose(target.value as Encoding)}
        >
          {encodings.map((one) => (
            <option key={one} value={one}>
              {say(`joining.encoding.${one}`)}
            </option>
          ))}
        </select>
        {samples.length > 0 && (
          <span className="small">
            {say('joining.list.letters.samples', { samples: samples.join(', ') })}
          </span>
        )}
      </div>
    </div>
  );
};
