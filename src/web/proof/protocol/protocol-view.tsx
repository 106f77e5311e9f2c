import { type ReactElement, useMemo, useState } from 'react';
import { type CheckState, roundTrip } from '../../../proof/index.ts';
import { Later } from '../../state/later.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { WorkingPanel } from '../../working/working-panel.tsx';
import { useCheckOrder } from '../check-order.ts';
import { OrderKeys } from '../order-keys.tsx';
import { useProof } from '../with-proof.tsx';
import { CarriedPart } from './carried-part.tsx';
import { CheckRow } from './check-row.tsx';
import { ConditionsPart } from './conditions-part.tsx';
import { isAt, PlaceChoice } from './place-choice.tsx';
import { StateKeys } from './state-keys.tsx';

/** Everything that is to be proved on the floor: what can't be proved here and what came over first. */
export const ProtocolView = (): ReactElement => {
  const { say } = useWords();
  const { book, floor } = useProof();
  const opened = usePagePart((state) => state.opened);
  const { order, choose, groups } = useCheckOrder();
  const [state, setState] = useState<CheckState>();
  const [place, setPlace] = useState('');
  const places = useMemo(
    () =>
      new Map(
        roundTrip(book, floor.checks).flatMap(({ at, checks }) => checks.map((one) => [one.check.id, at])),
      ),
    [book, floor],
  );
  const left = groups
    .map((group) => ({
      ...group,
      checks: group.checks.filter(
        (one) => (state === undefined || one.state === state) && isAt(place, places.get(one.check.id), one),
      ),
    }))
    .filter(({ checks }) => checks.length > 0);
  return (
    <div className="proof-beside">
      <div className={opened === undefined ? 'proof-main' : 'proof-main beside-sheet'}>
        <ConditionsPart />
        <CarriedPart />
        <div className="proof-bar">
          <StateKeys floor={floor} chosen={state} choose={setState} />
          <OrderKeys order={order} choose={choose} />
          <PlaceChoice chosen={place} choose={setPlace} />
        </div>
        {left.length === 0 && <p className="quiet">{say('proving.none')}</p>}
        {left.map(({ key, title, checks }) => (
          <section key={key} className="proof-part" aria-label={title} data-group={key}>
            <h3>{title}</h3>
            <ul className="check-rows">
              {checks.map((one) => (
                <CheckRow key={one.check.id} one={one} />
              ))}
            </ul>
          </section>
        ))}
        <p className="small quiet proof-caution">{say('proving.caution')}</p>
      </div>
      <Later>
        <WorkingPanel />
      </Later>
    </div>
  );
};
