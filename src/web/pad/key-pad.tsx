import type { ReactElement } from 'react';
import { decimalMark } from '../../quantity/decimal-mark.ts';
import { useWords } from '../state/page-context.ts';

const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3'] as const;

/** What a press does to the text of the field. */
export const pressed = (text: string, key: string): string =>
  key === 'back' ? text.slice(0, -1) : text + key;

/** Big keys for wet hands; the field that is written in keeps the focus. */
export const KeyPad = ({ press }: { readonly press: (key: string) => void }): ReactElement => {
  const { say, numbers } = useWords();
  const mark = decimalMark(numbers);
  const key = (name: string, label: string, shown: string): ReactElement => (
    <button
      type="button"
      key={name}
      data-key={name}
      aria-label={label}
      tabIndex={-1}
      onPointerDown={(event) => event.preventDefault()}
      onClick={() => press(name)}
    >
      {shown}
    </button>
  );
  return (
    // who has a keyboard writes in the fields themselves
    <fieldset className="key-pad" aria-label={say('pad.keys')}>
      {digits.map((digit) => key(digit, digit, digit))}
      {key(mark, say('pad.mark'), mark)}
      {key('0', '0', '0')}
      {key('back', say('pad.back'), '⌫')}
    </fieldset>
  );
};
