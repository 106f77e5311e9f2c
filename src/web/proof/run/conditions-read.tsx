import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';
import { ConditionCell } from './condition-cell.tsx';
import { momentText } from './moment-text.ts';
import type { Run } from './use-run.ts';
import { YesNoKeys } from './yes-no-keys.tsx';

/** What must be so for the result to count, read before anything is tried. */
export const ConditionsRead = ({
  run,
  enter,
}: {
  readonly run: Run;
  /** Goes on behind the condition of an id. */
  readonly enter: (condition: string) => void;
}): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const { check } = run.one;
  if (check.under.length === 0 && check.ownConditions.length === 0) return null;
  const held = new Map(run.held.map((one) => [one.condition.id, one]));
  const [newest] = [...run.others.values()].map(({ at }) => at).sort((a, b) => Date.parse(b) - Date.parse(a));
  return (
    <section className="proof-part run-conditions" aria-labelledby="run-conditions-title">
      <h3 id="run-conditions-title">{say('proving.run.conditions')}</h3>
      {newest !== undefined && (
        <button type="button" data-act="as-before" onClick={run.readAsBefore}>
          {say('proving.run.asBefore', { n: run.others.size, at: momentText(words, newest) })}
        </button>
      )}
      <ul>
        {check.under.map(({ id }) => {
          const one = held.get(id);
          return one === undefined ? null : (
            <ConditionCell key={id} run={run} held={one} enter={() => enter(id)} />
          );
        })}
        {check.ownConditions.map((text) => (
          <li key={text} className="run-condition">
            <p className="small">{say('proving.run.own')}</p>
            <YesNoKeys
              name={text}
              label={text}
              text={run.draft.conditions[text] ?? ''}
              press={(typed) => run.readCondition(text, typed)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
};
