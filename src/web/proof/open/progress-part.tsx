import type { ReactElement } from 'react';
import type { CheckState } from '../../../proof/index.ts';
import { CommaList } from '../../shell/comma-list.tsx';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { CheckLink } from './check-link.tsx';
import { holdingUp } from './held-up.ts';

/** Nobody does more than these next. */
const mostNext = 5;
/** What a check waits for is told by its first ones. */
const mostBy = 3;

/** What has been done and what is left, as one would tell it at the machine. */
const Told = (): ReactElement => {
  const { say } = useWords();
  const { floor, proof } = useProof();
  const { counts } = floor.progress;
  const whole = floor.checks.length;
  const next = proof.floors.find(({ role }) => role === 'bound for');
  const untried = counts.open === whole;
  const line = (state: CheckState, key: string, parts = {}): string =>
    counts[state] === 0 ? '' : say(key, { n: counts[state], ...parts });
  const goesOn = floor.role === 'built on' && next !== undefined;
  const lines = [
    untried
      ? say('open.progress.none', { floor: floor.name, n: whole })
      : say('open.progress.here', { floor: floor.name, n: whole, proved: counts.proved }),
    line('stands', 'open.progress.stands'),
    goesOn
      ? line('shown', 'open.progress.shown.next', { floor: next.name })
      : line('shown', 'open.progress.shown'),
    line('concession', 'open.progress.concession'),
    line('waits', 'open.progress.waits'),
    line('stale', 'open.progress.stale'),
    untried ? '' : line('open', 'open.progress.left'),
  ];
  return <p className="open-told">{lines.filter((one) => one !== '').join(' ')}</p>;
};

/** How far the floor is: what was done, what failed, what is next and what it holds up. */
export const ProgressPart = (): ReactElement => {
  const { say } = useWords();
  const { floor } = useProof();
  const { next, blocked } = floor.progress;
  const failed = floor.checks.filter(({ state }) => state === 'failed');
  const holds = holdingUp(floor.progress);
  const others = new Map(holds.map((one) => [one.check, one.others]));
  const shown = [...holds.map(({ check }) => check), ...next.filter((id) => !others.has(id))];
  return (
    <section className="open-part" data-part="progress">
      <h3>{say('open.progress')}</h3>
      <Told />
      {failed.length > 0 && (
        <div className="open-failed">
          <p className="short">{say('open.progress.failed', { n: failed.length })}</p>
          <ul>
            {failed.map(({ check }) => (
              <li key={check.id}>
                <CheckLink id={check.id} />
              </li>
            ))}
          </ul>
        </div>
      )}
      {shown.length === 0 ? (
        <p>{say('open.progress.all')}</p>
      ) : (
        <>
          <h4>{say('open.next')}</h4>
          <ol className="open-next">
            {shown.slice(0, mostNext).map((id) => (
              <li key={id} data-next={id}>
                <CheckLink id={id} />{' '}
                {others.has(id) && (
                  <span className="quiet">{say('open.holding', { n: others.get(id)! })}</span>
                )}
              </li>
            ))}
          </ol>
          {shown.length > mostNext && (
            <p className="quiet">{say('open.next.more', { n: shown.length - mostNext })}</p>
          )}
        </>
      )}
      {blocked.length > 0 && (
        <details>
          <summary>{say('open.blocked', { n: blocked.length })}</summary>
          <ScrollRegion label={say('open.blocked', { n: blocked.length })}>
            <table className="open-blocked">
              <thead>
                <tr>
                  <th scope="col" className="words">
                    {say('open.blocked.check')}
                  </th>
                  <th scope="col" className="words">
                    {say('open.blocked.by')}
                  </th>
                </tr>
              </thead>
              <tbody>
                {blocked.map(({ check, by }) => (
                  <tr key={check}>
                    <th scope="row" className="words">
                      <CheckLink id={check} />
                    </th>
                    <td className="words">
                      <CommaList>
                        {by.slice(0, mostBy).map((id) => (
                          <CheckLink key={id} id={id} />
                        ))}
                      </CommaList>
                      {by.length > mostBy && <> {say('open.blocked.more', { n: by.length - mostBy })}</>}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollRegion>
        </details>
      )}
    </section>
  );
};
