import type { ReactElement, ReactNode } from 'react';
import { PadInput } from '../../pad/pad-input.tsx';

export interface TypedCellProps {
  readonly id: string;
  readonly label: string;
  /** For whoever looks for it on the page. */
  readonly name: string;
  readonly text: string;
  /** The big keys write here. */
  readonly active: boolean;
  readonly problem: string | undefined;
  readonly change: (text: string) => void;
  readonly enter: () => void;
  readonly focus: () => void;
  /** What stands beside the field: its unit, a key. */
  readonly children: ReactNode;
}

/** One big field for a number that is read off an instrument. */
export const TypedCell = (props: TypedCellProps): ReactElement => {
  const { id, label, name, text, active, problem, change, enter, focus, children } = props;
  return (
    <div className="run-cell" data-active={active}>
      <label htmlFor={id}>{label}</label>
      <span className="line">
        <PadInput
          id={id}
          text={text}
          problem={problem}
          mark={{ 'data-run': name }}
          change={change}
          enter={enter}
          focus={focus}
        />
        {children}
      </span>
      {problem !== undefined && (
        <span className="problem" id={`${id}p`} role="alert">
          {problem}
        </span>
      )}
    </div>
  );
};
