import type { ReactElement } from 'react';
import type { ProvedCheck } from '../../../proof/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { StateMark } from '../state-mark.tsx';
import type { Run } from './use-run.ts';

/** What it comes to as it stands, the key that writes it down, and what is next. */
export const VerdictPart = ({
  run,
  next,
}: {
  readonly run: Run;
  /** The check that comes behind this one and is still to be tried. */
  readonly next: ProvedCheck | undefined;
}): ReactElement => {
  const { say, problem } = useWords();
  const id = usePagePart((state) => state.id);
  const says = useCheckSays();
  const { verdict, written, one, draft } = run;
  const state = verdict?.verdict;
  const why = verdict === undefined ? '' : says.shortfalls(one.check, verdict);
  const mine = written !== undefined && one.inForce?.result.id === written ? one.inForce : undefined;
  return (
    <div className="run-verdict">
      <p className="verdict" data-verdict={state ?? 'none'}>
        {state === undefined ? (
          <span className="quiet">{say('proving.run.verdict.none')}</span>
        ) : (
          <>
            <StateMark state={state} /> {say('proving.run.verdict')} <b>{say(`proof.state.${state}`)}</b>
          </>
        )}
      </p>
      {why !== '' && <p className="small">{why}</p>}
      {verdict !== undefined && verdict.problems.length > 0 && (
        <p className="small problem">{[...new Set(verdict.problems.map(problem))].join(' ')}</p>
      )}
      {one.check.point !== 'none' && draft.texts.witness.trim() === '' && (
        <p className="small">{say(`proving.run.point.${one.check.point}`)}</p>
      )}
      <button type="button" className="write-key" data-act="write" onClick={run.write}>
        {state === undefined
          ? say('proving.run.write')
          : say(draft.corrects === undefined ? 'proving.run.write.as' : 'proving.run.write.correction', {
              state: say(`proof.state.${state}`),
            })}
      </button>
      <p className="run-told" role="status">
        {run.told}
      </p>
      {mine !== undefined && (
        <button type="button" data-act="take-back" onClick={() => run.takeBack(mine)}>
          {say('proving.run.takeBack')}
        </button>
      )}
      {next !== undefined && (
        <p className="run-next" data-next={next.check.id}>
          <GoLink to={proofAddress(id, 'run', next.check.id)}>
            {say('proving.run.next', { check: says.name(next.check) })}
          </GoLink>
        </p>
      )}
    </div>
  );
};
