import type { ReactElement } from 'react';
import type { ProvedCheck } from '../../../proof/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { LimitDoor } from '../limit-door.tsx';
import { MissingPlaces } from '../missing-places.tsx';
import { StateMark } from '../state-mark.tsx';

/** What this floor can do with the check, and what stands in the way. */
const PlanWords = ({ one: { check } }: { readonly one: ProvedCheck }): ReactElement => {
  const { say } = useWords();
  const says = useCheckSays();
  return (
    <>
      <b>{says.plan(check)}</b>
      {check.untold.length > 0 && (
        <span> {say('proving.row.untold', { conditions: says.conditions(check.untold) })}</span>
      )}
      {check.missing.length > 0 && (
        <span>
          {' '}
          <MissingPlaces paths={check.missing} />
        </span>
      )}
    </>
  );
};

/** One check of the protocol: what is to be seen, against what, what this floor can do with it, and where it stands. */
export const CheckRow = ({ one }: { readonly one: ProvedCheck }): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { waiting } = useKeptRecords();
  const says = useCheckSays();
  const { check, state, inForce } = one;
  const why = says.why(one);
  const waits = inForce !== undefined && waiting.has(inForce.result.id);
  return (
    <li className="check-row" data-check={check.id} data-state={state}>
      <StateMark state={state} />
      <div className="check-what">
        <p>
          <GoLink to={proofAddress(id, 'run', check.id)}>{says.name(check)}</GoLink>
          {check.point !== 'none' && (
            <span className="check-point" data-point={check.point}>
              {say(`proof.point.${check.point}`)}
            </span>
          )}
        </p>
        <p className="small quiet">{says.expected(check)}</p>
      </div>
      <p className="check-limit">
        {check.limits.map((limit) => (
          <LimitDoor key={limit.figure.id + limit.sense} limit={limit} />
        ))}
        {check.limits.length === 0 || check.ownLimit !== undefined
          ? (check.ownLimit ?? (check.missing.length > 0 ? say('proof.limit.unknown') : say('proof.seen')))
          : null}
      </p>
      <p className="check-plan small">
        <PlanWords one={one} />
      </p>
      <p className="check-state small">
        <b>{say(`proof.state.${state}`)}</b>
        {why !== '' && <span>: {why}</span>}
        {waits && <span className="check-waits"> {say('proving.row.waits')}</span>}
      </p>
    </li>
  );
};
