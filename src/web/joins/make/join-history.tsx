import type { ReactElement } from 'react';
import type { JoinState } from '../../../joins/index.ts';
import type { RecordedJoin } from '../../../joins/recorded-joins.ts';
import { MediaStrip } from '../../proof/media/media-strip.tsx';
import { momentText } from '../../proof/run/moment-text.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { useWords } from '../../state/page-context.ts';
import { StateShape } from '../state-shape.tsx';

const One = ({ record }: { readonly record: RecordedJoin }): ReactElement => {
  const words = useWords();
  const { say, has } = words;
  const { waiting } = useKeptRecords();
  const { id, state, by, at, reading, method, instrument, remark, evidence = [] } = record;
  const how =
    method === undefined
      ? undefined
      : has(`joining.method.${method}`)
        ? say(`joining.method.${method}`)
        : method;
  const read = [how, reading].filter((one) => one !== undefined).join(' ');
  return (
    <li className="join-record" data-record={id} data-state={state} data-waiting={waiting.has(id)}>
      <p>
        <StateShape state={state} /> <b>{say(`joins.state.${state}`)}</b>
        {read !== '' && `: ${read}`}
        {instrument !== undefined && <span className="small quiet"> ({instrument})</span>}
        {waiting.has(id) && <span className="small"> {say('joining.waits')}</span>}
      </p>
      {remark !== undefined && <p>{remark}</p>}
      <p className="small quiet">{say('joining.by', { by, at: momentText(words, at) })}</p>
      <MediaStrip evidence={evidence} of={say(`joins.state.${state}`)} />
    </li>
  );
};

/** Every record of a join, the last first; where two were written apart both stand, and it is said. */
export const JoinHistory = ({ state }: { readonly state: JoinState | undefined }): ReactElement => {
  const { say } = useWords();
  if (state === undefined) return <p className="quiet">{say('joining.history.none')}</p>;
  const { all, last, conflict } = state;
  const open = new Set(last.map(({ id }) => id));
  const earlier = all.filter(({ id }) => !open.has(id));
  return (
    <section className="open-part" aria-labelledby="join-history">
      <h3 id="join-history">{say('joining.history')}</h3>
      {conflict && (
        <p className="short" role="status" data-conflict={last.length}>
          {say('joining.conflict', { n: last.length, state: say(`joins.state.${state.state}`) })}
        </p>
      )}
      <ol className="join-records" data-last={last.length}>
        {last.toReversed().map((record) => (
          <One key={record.id} record={record} />
        ))}
      </ol>
      {earlier.length > 0 && (
        <details>
          <summary>{say('joining.history.earlier', { n: earlier.length })}</summary>
          <ol className="join-records">
            {earlier.toReversed().map((record) => (
              <One key={record.id} record={record} />
            ))}
          </ol>
        </details>
      )}
    </section>
  );
};
