import { type ReactElement, useMemo, useRef, useState } from 'react';
import { faultSentence, type LaidJoin, printedCode } from '../../../joins/index.ts';
import { MediaStrip } from '../../proof/media/media-strip.tsx';
import { GoLink } from '../../shell/go-link.tsx';
import { bookPageAddress, joinsAddress } from '../../shell/route.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { JoinLink } from '../join-link.tsx';
import { stateOf } from '../state-of.ts';
import { StateShape } from '../state-shape.tsx';
import { useJoins } from '../with-joins.tsx';
import { JoinEnds } from './join-ends.tsx';
import { JoinHistory } from './join-history.tsx';
import { MarkForm } from './mark-form.tsx';
import { picturesOf } from './pictures-of.ts';

/** One join: both ends, what must come before it, its pictures, and how it stands. */
export const JoinCard = ({ join }: { readonly join: LaidJoin }): ReactElement => {
  const { say } = useWords();
  const book = usePagePart((one) => one.id);
  const { records } = useKeptRecords();
  const { states, faults, boxes, byTag } = useJoins();
  const [told, setTold] = useState('');
  const line = useRef<HTMLParagraphElement>(null);
  const { own, around } = useMemo(() => picturesOf(join, records), [join, records]);
  const { tag, code, kind, name, label, cable, core, potential, after, path } = join;
  const state = states.get(tag);
  const stood = stateOf(states, tag);
  const open = after.filter((one) => !['made', 'tested'].includes(stateOf(states, one)));
  const touching = faults.filter(({ ends }) => ends.some((end) => end.join === tag));
  const lacks = [
    ...new Set(boxes.flatMap((box) => box.lacks.filter((lack) => lack.join === tag).map(({ why }) => why))),
  ];
  const about = [
    kind === undefined ? undefined : say(`joins.name.${kind}`),
    label === undefined ? undefined : say('joining.label', { label }),
    cable === undefined
      ? undefined
      : say('joining.cable', { cable: [cable, core].filter(Boolean).join('.') }),
    potential,
  ].filter((one) => one !== undefined);
  return (
    <article className="join-card" data-join={tag} data-state={stood} aria-labelledby="join-name">
      <h3 id="join-name">
        <span className="join-code">{printedCode(code)}</span> {tag}
        {name !== undefined && <span className="join-name">{name}</span>}
      </h3>
      <p className="join-stood">
        <StateShape state={stood} /> <b>{say(`joins.state.${stood}`)}</b>
        {about.length > 0 && <span className="quiet"> · {about.join(' · ')}</span>}
      </p>
      <JoinEnds join={join} />
      {open.length > 0 && (
        <div className="short">
          <p>{say('joining.after')}</p>
          <ul className="join-names">
            {open.map((one) => {
              const before = byTag.get(one);
              return <li key={one}>{before === undefined ? one : <JoinLink join={before} />}</li>;
            })}
          </ul>
        </div>
      )}
      {touching.map((fault) => (
        <p className="problem" key={`${fault.code} ${fault.path}`} data-fault={fault.code}>
          {faultSentence(fault, say)}.{' '}
          <GoLink to={bookPageAddress(book, path)}>{say('joining.fault.door')}</GoLink>
        </p>
      ))}
      {(own.length > 0 || around.length > 0) && (
        <section aria-label={say('joining.pictures')}>
          <h4>{say('joining.pictures')}</h4>
          <MediaStrip evidence={[...own, ...around]} of={tag} />
        </section>
      )}
      <p className="run-told" role="status" tabIndex={-1} ref={line}>
        {told}
      </p>
      {told !== '' && (
        <p className="next-label">
          <GoLink to={joinsAddress(book, 'make')}>{say('joining.next.label')}</GoLink>
        </p>
      )}
      <MarkForm
        key={tag}
        join={join}
        state={state}
        done={(text) => {
          setTold(text);
          requestAnimationFrame(() => line.current?.focus());
        }}
      />
      {lacks.length > 0 && (
        <p className="small short" data-lacks={lacks.length}>
          {say('joining.card.lacks', { lacks: lacks.map((why) => say(`joins.lack.${why}`)).join(', ') })}
        </p>
      )}
      <JoinHistory state={state} />
      <p className="joins-caution">{say('joins.caution')}</p>
    </article>
  );
};
