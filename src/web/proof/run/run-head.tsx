import type { ReactElement } from 'react';
import type { ProvedCheck } from '../../../proof/index.ts';
import { floorClass } from '../../floors/floor-class.ts';
import { CommaList } from '../../shell/comma-list.tsx';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { MissingPlaces } from '../missing-places.tsx';
import { StateMark } from '../state-mark.tsx';
import { useProof } from '../with-proof.tsx';

/** What is tried, what must be seen, what this floor can do with it, and what comes before it. */
export const RunHead = ({
  one,
  titleId,
}: {
  readonly one: ProvedCheck;
  readonly titleId: string;
}): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { book, proof, floor } = useProof();
  const says = useCheckSays();
  const { check, state } = one;
  const why = says.why(one);
  const blocked = floor.progress.blocked.find((other) => other.check === check.id)?.by ?? [];
  const named = new Map(floor.checks.map((other) => [other.check.id, other.check]));
  const carry = floor.carryOver.find((other) => other.check === check.id && other.reason !== 'undone');
  const before = proof.floors.find((other) => other.floor === carry?.from);
  return (
    <header className="run-head">
      <h3 id={titleId}>
        {says.name(check)}
        {check.point !== 'none' && (
          <span className="check-point" data-point={check.point}>
            {say(`proof.point.${check.point}`)}
          </span>
        )}
        <span className={`floor-tag ${floorClass(book, floor.floor)}`}>{floor.name}</span>
      </h3>
      <p className="run-expected">{says.expected(check)}</p>
      {check.note !== undefined && <p className="small">{check.note}</p>}
      <p className="small" data-state={state}>
        <StateMark state={state} /> <b>{say(`proof.state.${state}`)}</b>
        {why !== '' && `: ${why}`}
        {check.plan === 'prove' ? '' : ` · ${says.plan(check)}`}
      </p>
      {check.missing.length > 0 && (
        <p className="small">
          <MissingPlaces paths={check.missing} />
        </p>
      )}
      {carry !== undefined && (
        <p className="small">
          {say('proving.run.carried', {
            from: before?.name ?? carry.from,
            reason: says.reason(
              carry,
              before?.checks.find((other) => other.check.id === check.id),
            ),
          })}
        </p>
      )}
      {blocked.length > 0 && (
        <p className="small run-blocked">
          {say('proving.run.blocked', { n: blocked.length })}{' '}
          <CommaList>
            {blocked.slice(0, 3).map((other) => {
              const found = named.get(other);
              return (
                <GoLink key={other} to={proofAddress(id, 'run', other)}>
                  {found === undefined ? other : says.name(found)}
                </GoLink>
              );
            })}
          </CommaList>
          {blocked.length > 3 && ` ${say('proving.run.blocked.more', { n: blocked.length - 3 })}`}
        </p>
      )}
    </header>
  );
};
