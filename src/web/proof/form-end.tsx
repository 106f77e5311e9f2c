import type { ReactElement } from 'react';

export interface FormEndProps {
  readonly write: string;
  /** What the key is found by. */
  readonly act?: string;
  readonly className?: string;
  readonly leave?: { readonly text: string; readonly press: () => void };
  /** Why nothing was written; empty where nothing is wrong. */
  readonly refused: string;
}

/** The end of a form: write it down, leave it, and why it was not taken. */
export const FormEnd = ({ write, act, className, leave, refused }: FormEndProps): ReactElement => (
  <p className="proof-acts">
    <button type="submit" className={className} data-act={act}>
      {write}
    </button>
    {leave !== undefined && (
      <button type="button" className="link" onClick={leave.press}>
        {leave.text}
      </button>
    )}
    {refused !== '' && (
      <span className="problem" role="alert">
        {refused}
      </span>
    )}
  </p>
);
