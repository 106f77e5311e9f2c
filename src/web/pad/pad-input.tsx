import type { ReactElement } from 'react';

export interface PadInputProps {
  readonly id: string;
  readonly text: string;
  /** Why it can't be taken; it stands at `${id}p`. */
  readonly problem: string | undefined;
  /** For whoever looks for it on the page. */
  readonly mark: Readonly<Record<`data-${string}`, string>>;
  readonly change: (text: string) => void;
  readonly enter: () => void;
  readonly focus: (field: HTMLInputElement) => void;
}

/** A field into which the big keys of the page write. */
export const PadInput = ({ id, text, problem, mark, change, enter, focus }: PadInputProps): ReactElement => (
  <input
    id={id}
    type="text"
    // the keypad of the page is bigger than the system's
    inputMode="none"
    autoComplete="off"
    spellCheck={false}
    {...mark}
    value={text}
    aria-invalid={problem !== undefined}
    aria-describedby={problem === undefined ? undefined : `${id}p`}
    onFocus={({ target }) => focus(target)}
    onChange={({ target }) => change(target.value)}
    onKeyDown={(event) => {
      if (event.key !== 'Enter') return;
      event.preventDefault();
      enter();
    }}
  />
);
