import type { ReactElement } from 'react';
import { type JudgedResult, judgedEarlier } from '../../../proof/index.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { MediaStrip } from '../media/media-strip.tsx';
import { StateMark } from '../state-mark.tsx';
import { useProof } from '../with-proof.tsx';
import { momentText } from './moment-text.ts';
import type { Run } from './use-run.ts';
import { useTries } from './use-tries.ts';

const Try = ({ run, tried }: { readonly run: Run; readonly tried: JudgedResult }): ReactElement => {
  const words = useWords();
  const { say } = words;
  const says = useCheckSays();
  const { waiting } = useKeptRecords();
  const { result, verdict } = tried;
  const why = says.shortfalls(run.one.check, tried);
  return (
    <li data-try={verdict} data-waiting={waiting.has(result.id)}>
      <p>
        <StateMark state={verdict} /> <b>{say(`proof.state.${verdict}`)}</b>
        {why !== '' && <span className="small">: {why}</span>}{' '}
        {waiting.has(result.id) && <span className="check-waits small">{say('proving.row.waits')}</span>}
      </p>
      <p className="small quiet">
        {say('proving.run.tried', { by: result.by, at: momentText(words, result.at) })}
        {(result.readings ?? []).length > 0 && `: ${(result.readings ?? []).join('; ')}`}
        {result.remark !== undefined && `. ${result.remark}`}
      </p>
      <MediaStrip evidence={result.evidence ?? []} of={says.name(run.one.check)} />
      <button type="button" className="link" data-act="correct" onClick={() => run.correct(tried)}>
        {say('proving.run.correct')}
      </button>
    </li>
  );
};

/** Every try of the check on this floor, the last first; each can be corrected, none is lost. */
export const TriesPart = ({ run }: { readonly run: Run }): ReactElement | null => {
  const { say } = useWords();
  const { floor } = useProof();
  const { inForce, check } = run.one;
  const { earlier, more } = useTries(floor.floor, run.one);
  if (inForce === undefined) return null;
  return (
    <section className="proof-part run-tries" aria-labelledby="run-tries-title">
      <h3 id="run-tries-title">{say('proving.run.tries')}</h3>
      <ol>
        {[...judgedEarlier({ check, earlier }), inForce].toReversed().map((tried) => (
          <Try key={tried.result.id} run={run} tried={tried} />
        ))}
      </ol>
      {more > 0 && <p className="small quiet">{say('proving.run.tries.more', { n: more })}</p>}
    </section>
  );
};
