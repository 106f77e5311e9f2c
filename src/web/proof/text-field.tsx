import { type ReactElement, useId } from 'react';

export interface TextFieldProps {
  /** What it is found by. */
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly change: (value: string) => void;
  readonly kind?: 'text' | 'date' | 'datetime-local' | 'password';
  readonly rows?: number;
  /** Why it can't be taken as it stands. */
  readonly problem?: string | undefined;
  readonly autoComplete?: string;
}

/** A text that somebody types, with what is wrong with it beside it. */
export const TextField = (props: TextFieldProps): ReactElement => {
  const { name, label, value, change, kind = 'text', rows, problem, autoComplete = 'off' } = props;
  const id = useId();
  const own = {
    id,
    value,
    'data-field': name,
    'aria-invalid': problem !== undefined,
    'aria-describedby': problem === undefined ? undefined : `${id}p`,
  } as const;
  return (
    <div className="proof-field" data-kind={rows === undefined ? kind : 'long'}>
      <label htmlFor={id}>{label}</label>
      {rows === undefined ? (
        <input
          {...own}
          type={kind}
          autoComplete={autoComplete}
          onChange={({ target }) => change(target.value)}
        />
      ) : (
        <textarea {...own} rows={rows} onChange={({ target }) => change(target.value)} />
      )}
      {problem !== undefined && (
        <span className="problem" id={`${id}p`} role="alert">
          {problem}
        </span>
      )}
    </div>
  );
};
