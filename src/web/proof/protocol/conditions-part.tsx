import type { ReactElement } from 'react';
import type { PlannedCheck } from '../../../proof/index.ts';
import { ShownQuantity } from '../../field/shown-quantity.tsx';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { LimitDoor } from '../limit-door.tsx';
import { useProof } from '../with-proof.tsx';

type Condition = PlannedCheck['under'][number];

const ConditionRow = ({ condition }: { readonly condition: Condition }): ReactElement => {
  const { say, number } = useWords();
  const says = useCheckSays();
  const { id, limits, word, have, haveWord, here, by } = condition;
  return (
    <tr data-condition={id} data-here={here}>
      <th scope="row">{says.condition(id)}</th>
      <td>
        {word === undefined
          ? limits.map((limit) => <LimitDoor key={limit.figure.id + limit.sense} limit={limit} />)
          : says.thing(word)}
      </td>
      <td>
        {haveWord === undefined
          ? have?.value !== undefined && <ShownQuantity value={have.value} kind={have.kind} />
          : says.thing(haveWord)}
      </td>
      <td>
        {say(`proof.here.${here}`)}
        {by !== undefined && say('proving.conditions.by', { by: number(100 * by, 2) })}
      </td>
    </tr>
  );
};

const ConditionTable = ({
  conditions,
  title,
}: {
  readonly conditions: readonly Condition[];
  readonly title: string;
}): ReactElement => {
  const { say } = useWords();
  return (
    <ScrollRegion label={title}>
      <table className="proof-table">
        <thead>
          <tr>
            {(['what', 'must', 'have', 'can'] as const).map((head) => (
              <th key={head} scope="col">
                {say(`proving.conditions.${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {conditions.map((condition) => (
            <ConditionRow key={condition.id} condition={condition} />
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
};

/** What must be so for a result to count, and whether this floor can bring it about: what it can't stands open. */
export const ConditionsPart = (): ReactElement | null => {
  const { say } = useWords();
  const { floor } = useProof();
  const each = [
    ...new Map(
      floor.checks.flatMap(({ check }) => check.under.map((one) => [one.id, one] as const)),
    ).values(),
  ];
  if (each.length === 0) return null;
  const lacking = each.filter(({ here }) => here === 'cannot' || here === 'unknown');
  const others = each.filter((one) => !lacking.includes(one));
  return (
    <section className="proof-part" aria-labelledby="conditions-title">
      <h3 id="conditions-title">
        {say(lacking.length === 0 ? 'proving.conditions.all' : 'proving.conditions.lacking', {
          n: lacking.length,
          floor: floor.name,
        })}
      </h3>
      {lacking.length > 0 && (
        <ConditionTable conditions={lacking} title={say('proving.conditions.lacking.table')} />
      )}
      {others.length > 0 && (
        <details>
          <summary>
            {say(lacking.length === 0 ? 'proving.conditions.each' : 'proving.conditions.others', {
              n: others.length,
            })}
          </summary>
          <ConditionTable conditions={others} title={say('proving.conditions.others.table')} />
        </details>
      )}
    </section>
  );
};
