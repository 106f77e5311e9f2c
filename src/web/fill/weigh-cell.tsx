import type { ReactElement } from 'react';
import { PadInput } from '../pad/pad-input.tsx';
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
  return (
    <div className="weigh-cell" data-active={active} data-repeated={repeated}>
      <label htmlFor={id}>
        {say(`weigh.field.${field}`)}
        {repeated && <span className="quiet"> {say('weigh.repeated')}</span>}
      </label>
      <span className="line">
        <PadInput
          id={id}
          text={text}
          problem={problem}
          mark={{ 'data-weigh': field }}
          change={change}
          enter={enter}
          focus={(input) => {
            input.select();
            focus();
          }}
        />
        {unit !== '' && <span className="unit">{unit}</span>}
      </span>
      {problem !== undefined && (
        <span className="problem" id={`${id}p`} role="alert">
          {problem}
        </span>
      )}
    </div>
  );
};
