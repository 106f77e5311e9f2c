import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';
import type { WeighField } from './weigh-draft.ts';

export interface WeighCellProps {
  readonly id: string;
  readonly field: WeighField;
  readonly text: string;
  readonly unit: string;
  /** The value of the bottle before it, until another is written. */
  readonly repeated: boolean;
  /** The keypad writes here. */
  readonly active: boolean;
  readonly problem: string | undefined;
  readonly change: (text: string) => void;
  readonly enter: () => void;
  readonly focus: () => void;
}

/** One big field of a bottle. */
export const WeighCell = (props: WeighCellProps): ReactElement => {
  const { id, field, text, unit, repeated, active, problem, change, enter, focus } = props;
  const { say } = useWords();
  const problemId = `${id}p`;
  return (
    <div className="weigh-cell" data-active={active} data-repeated={repeated}>
      <label htmlFor={id}>
        {say(`weigh.field.${field}`)}
        {repeated && <span className="quiet"> {say('weigh.repeated')}</span>}
      </label>
      <span className="line">
        <input
          id={id}
          type="text"
          // the keypad of the page is bigger than the system's
          inputMode="none"
          autoComplete="off"
          spellCheck={false}
          data-weigh={field}
          value={text}
          aria-invalid={problem !== undefined}
          aria-describedby={problem === undefined ? undefined : problemId}
          onFocus={(event) => {
            event.target.select();
            focus();
          }}
          onChange={(event) => change(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            enter();
          }}
        />
        {unit !== '' && <span className="unit">{unit}</span>}
      </span>
      {problem !== undefined && (
        <span className="problem" id={problemId} role="alert">
          {problem}
        </span>
      )}
    </div>
  );
};
