import type { ReactElement } from 'react';
import type { ProvedCheck } from '../../../proof/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { StateMark } from '../state-mark.tsx';
import { useProof } from '../with-proof.tsx';

/** What the floor before could not prove, reason by reason; nothing where no floor is before this one. */
export const CarriedPart = (): ReactElement | null => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { proof, floor } = useProof();
  const says = useCheckSays();
  const [first] = floor.carryOver;
  if (first === undefined) return null;
  const before = proof.floors.find((one) => one.floor === first.from);
  const there = new Map(before?.checks.map((one) => [one.check.id, one]));
  const here = new Map(floor.checks.map((one) => [one.check.id, one]));
  // what nobody has tried stands in the protocol below
  const told = floor.carryOver.filter(({ reason }) => reason !== 'undone');
  const byReason = new Map<string, ProvedCheck[]>();
  for (const carry of told) {
    const one = here.get(carry.check);
    if (one === undefined) continue;
    const reason = says.reason(carry, there.get(carry.check));
    byReason.set(reason, [...(byReason.get(reason) ?? []), one]);
  }
  const undone = floor.carryOver.length - told.length;
  return (
    <section className="proof-part carried" aria-labelledby="carried-title">
      <h3 id="carried-title">
        {say('proving.carried', { from: before?.name ?? first.from, n: floor.carryOver.length })}
      </h3>
      <ul className="carried-list">
        {[...byReason].map(([reason, checks]) => (
          <li key={reason} data-reason={reason}>
            <b>{reason}</b>
            <ul>
              {checks.map((one) => (
                <li key={one.check.id} data-carried={one.check.id}>
                  <StateMark state={one.state} />
                  <GoLink to={proofAddress(id, 'run', one.check.id)}>{says.name(one.check)}</GoLink>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      {undone > 0 && <p className="small quiet">{say('proving.carried.undone', { n: undone })}</p>}
    </section>
  );
};
