import { type ReactElement, useId } from 'react';
import type { HeldCondition } from '../../../proof/index.ts';
import { ShownQuantity } from '../../field/shown-quantity.tsx';
import { useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { LimitDoor } from '../limit-door.tsx';
import { useProof } from '../with-proof.tsx';
import { TypedCell } from './typed-cell.tsx';
import { UnitChoice } from './unit-choice.tsx';
import type { Run } from './use-run.ts';
import { YesNoKeys } from './yes-no-keys.tsx';

export interface ConditionCellProps {
  readonly run: Run;
  readonly held: HeldCondition;
  readonly enter: () => void;
}

const HeldWord = ({ held }: { readonly held: boolean | undefined }): ReactElement => {
  const { say } = useWords();
  const key = held === undefined ? 'unread' : held ? 'holds' : 'broken';
  return (
    <span className="held small" data-held={key}>
      {say(`proving.run.held.${key}`)}
    </span>
  );
};

/** One condition: what it must be, what this floor has of it, and what is read. */
export const ConditionCell = ({ run, held, enter }: ConditionCellProps): ReactElement => {
  const { say, problem } = useWords();
  const says = useCheckSays();
  const id = useId();
  const { book } = useProof();
  const { condition } = held;
  const text = run.draft.conditions[condition.id] ?? '';
  const name = says.condition(condition.id);
  const kind = condition.limits[0]?.figure.kind;
  const change = (typed: string): void => run.readCondition(condition.id, typed);
  const wrong = run.made.wrong[`condition ${condition.id}`];
  return (
    <li className="run-condition" data-condition={condition.id}>
      <div>
        <p className="small">
          {say('proving.run.must')}{' '}
          {condition.read === 'claim' ? (
            say('proving.run.must.claim')
          ) : condition.read === 'word' ? (
            <b>{condition.word === undefined ? say('proof.limit.unknown') : says.thing(condition.word)}</b>
          ) : condition.limits.length === 0 ? (
            say('proof.limit.unknown')
          ) : (
            condition.limits.map((limit) => <LimitDoor key={limit.figure.id + limit.sense} limit={limit} />)
          )}{' '}
          <HeldWord held={held.held} />
        </p>
        {condition.here === 'cannot' && (
          <p className="small run-cannot">
            {say('proving.run.cannot')}{' '}
            {condition.haveWord === undefined
              ? condition.have?.value !== undefined && (
                  <ShownQuantity value={condition.have.value} kind={condition.have.kind} />
                )
              : says.thing(condition.haveWord)}
          </p>
        )}
      </div>
      {condition.read === 'quantity' ? (
        <TypedCell
          id={id}
          label={name}
          name={condition.id}
          text={text}
          active={run.active === `condition ${condition.id}`}
          problem={wrong ?? held.problems.map(problem)[0]}
          change={change}
          enter={enter}
          focus={() => run.focus(`condition ${condition.id}`)}
        >
          {kind !== undefined && (
            <UnitChoice
              kind={kind}
              unit={run.unitOf(kind)}
              of={name}
              choose={(unit) => run.chooseUnit(kind, unit)}
            />
          )}
        </TypedCell>
      ) : condition.read === 'word' ? (
        <label className="run-word">
          {name}{' '}
          <select value={text} data-run={condition.id} onChange={(event) => change(event.target.value)}>
            <option value="">{say('proving.run.held.unread')}</option>
            {(book.line?.products ?? []).map(({ tag }) => (
              <option key={tag} value={tag}>
                {says.thing(tag)}
              </option>
            ))}
          </select>
        </label>
      ) : (
        <YesNoKeys name={condition.id} label={name} text={text} press={change} />
      )}
    </li>
  );
};
