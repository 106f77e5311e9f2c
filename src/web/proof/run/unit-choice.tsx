import type { ReactElement } from 'react';
import { type Kind, unitsOf } from '../../../quantity/index.ts';
import { useWords } from '../../state/page-context.ts';

/** The unit in which the instrument shows. */
export const UnitChoice = ({
  kind,
  unit,
  of,
  choose,
}: {
  readonly kind: Kind;
  readonly unit: string;
  /** What is read in it. */
  readonly of: string;
  readonly choose: (unit: string) => void;
}): ReactElement => {
  const { say } = useWords();
  return (
    <select
      className="unit-choice"
      aria-label={say('proving.run.unit', { of })}
      value={unit}
      onChange={(event) => choose(event.target.value)}
    >
      {unitsOf(kind).map(({ id, label }) => (
        <option key={id} value={id}>
          {label}
        </option>
      ))}
    </select>
  );
};
