import { type ReactElement, useContext, useEffect } from 'react';
import type { ProvedCheck } from '../../../proof/index.ts';
import { GoContext, GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { Later } from '../../state/later.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { WorkingPanel } from '../../working/working-panel.tsx';
import { useCheckOrder } from '../check-order.ts';
import { useCheckSays } from '../check-says.ts';
import { OrderKeys } from '../order-keys.tsx';
import { useProof } from '../with-proof.tsx';
import { RunCheck } from './run-check.tsx';

/** What is left to try; a result that is awaited is tried already. */
const isToTry = ({ state }: ProvedCheck): boolean =>
  state === 'open' || state === 'stale' || state === 'failed';

/** The next check to try behind one, round to the first. */
const nextToTry = (row: readonly ProvedCheck[], at: number): ProvedCheck | undefined =>
  [...row.slice(at + 1), ...row.slice(0, at)].find(isToTry);

/** Where one begins: the first check that nothing keeps waiting. */
const firstToTry = (row: readonly ProvedCheck[], now: ReadonlySet<string>): ProvedCheck | undefined =>
  row.find((one) => isToTry(one) && now.has(one.check.id)) ?? row.find(isToTry) ?? row[0];

/** One check at a time, in the order of the protocol or along the line. */
export const RunView = (): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const opened = usePagePart((state) => state.opened);
  const { floor, asked } = useProof();
  const says = useCheckSays();
  const { order, choose, row } = useCheckOrder();
  const go = useContext(GoContext);
  const one =
    asked === undefined
      ? firstToTry(row, new Set(floor.progress.next))
      : row.find(({ check }) => check.id === asked);
  const found = one?.check.id;
  useEffect(() => {
    // what is being tried stays before the person when its own result makes another the next
    if (asked === undefined && found !== undefined) go(proofAddress(id, 'run', found), 'instead');
  }, [go, id, asked, found]);
  if (one === undefined) {
    return (
      <p className="message">
        {say(row.length === 0 ? 'proving.run.nothing' : 'proving.run.unknown', {
          check: asked ?? '',
          floor: floor.name,
        })}{' '}
        <GoLink to={proofAddress(id, 'protocol')}>{say('proving.run.protocol')}</GoLink>
      </p>
    );
  }
  const at = row.indexOf(one);
  const [before, after] = [row[at - 1], row[at + 1]];
  return (
    <div className="proof-beside">
      <div className={opened === undefined ? 'proof-main' : 'proof-main beside-sheet'}>
        <div className="run-bar-top">
          <OrderKeys order={order} choose={choose} />
          <p className="small">
            {before !== undefined && (
              <GoLink to={proofAddress(id, 'run', before.check.id)}>
                {say('proving.run.before', { check: says.name(before.check) })}
              </GoLink>
            )}{' '}
            <span className="quiet">{say('proving.run.place', { n: at + 1, of: row.length })}</span>{' '}
            {after !== undefined && (
              <GoLink to={proofAddress(id, 'run', after.check.id)}>
                {say('proving.run.after', { check: says.name(after.check) })}
              </GoLink>
            )}
          </p>
        </div>
        <RunCheck key={`${floor.floor} ${one.check.id}`} one={one} next={nextToTry(row, at)} />
      </div>
      <Later>
        <WorkingPanel />
      </Later>
    </div>
  );
};
