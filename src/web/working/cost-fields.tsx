import { type ReactElement, useId } from 'react';
import { useWords } from '../state/page-context.ts';
import { type CostField, costFields, costProblem, type RemedyCost } from './remedy-costs.ts';

interface CostFieldsProps {
  readonly cost: RemedyCost | undefined;
  /** What the remedy is called, for someone who does not see where the fields stand. */
  readonly lever: string;
  readonly onCost: (field: CostField, text: string) => void;
}

/** Effort, lead time and who pays, as the person says them: shown in a line, written when it is opened. */
export const CostFields = ({ cost, lever, onCost }: CostFieldsProps): ReactElement => {
  const words = useWords();
  const id = useId();
  const { say } = words;
  const told = costFields
    .filter((field) => (cost?.[field] ?? '').trim() !== '')
    .map((field) => say('remedies.cost.told', { name: say(`field.${field}`), text: cost?.[field] ?? '' }));
  return (
    <details className="cost">
      <summary aria-label={say('remedies.cost.of', { lever })}>
        {told.length === 0 ? say('remedies.cost') : told.join(', ')}
      </summary>
      {costFields.map((field) => {
        const text = cost?.[field] ?? '';
        const problem = costProblem(field, text);
        return (
          <span className="field" key={field}>
            <label htmlFor={id + field}>{say(`field.${field}`)}</label>
            <input
              id={id + field}
              type="text"
              data-cost={field}
              value={text}
              placeholder={say(`remedies.cost.${field}`)}
              aria-invalid={problem !== undefined}
              aria-describedby={problem === undefined ? undefined : `${id}${field}p`}
              autoComplete="off"
              onChange={(event) => onCost(field, event.target.value)}
            />
            {problem !== undefined && (
              <span className="problem" id={`${id}${field}p`} role="alert">
                {words.problem(problem)}
              </span>
            )}
          </span>
        );
      })}
    </details>
  );
};
