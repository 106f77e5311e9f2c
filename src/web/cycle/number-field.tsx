import { type ReactElement, useId } from 'react';

export interface NumberFieldProps {
  readonly label: string;
  /** For whoever looks for it on the page. */
  readonly name: string;
  readonly text: string;
  readonly type: (text: string) => void;
  readonly problem?: string | undefined;
}

/** A number that one types, its name beside it. */
export const NumberField = ({ label, name, text, type, problem }: NumberFieldProps): ReactElement => {
  const id = useId();
  return (
    <span className="field number-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        data-number={name}
        value={text}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}p`}
        onChange={(event) => type(event.target.value)}
      />
      {problem !== undefined && (
        <span className="problem small" id={`${id}p`}>
          {problem}
        </span>
      )}
    </span>
  );
};
