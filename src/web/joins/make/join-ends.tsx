import type { ReactElement } from 'react';
import type { JoinEnd, LaidJoin } from '../../../joins/index.ts';
import { hasTwoEnds } from '../../../joins/join-kinds.ts';
import { useWords } from '../../state/page-context.ts';
import { EndPictures } from '../pictures/end-pictures.tsx';

const End = ({ join, end }: { readonly join: LaidJoin; readonly end: JoinEnd }): ReactElement => {
  const { say } = useWords();
  const { side, label, on, section, box, size, colour } = end;
  const rows = (
    [
      ['on', label === undefined || on === label ? undefined : on],
      ['box', box],
      ['section', section],
      ['size', size],
      ['colour', colour],
    ] as const
  ).flatMap(([name, text]) => (text === undefined ? [] : [{ name, text }]));
  return (
    <div className="join-end" data-side={side}>
      <h4>{say(`joining.end.${side}`)}</h4>
      <p className="end-label">{label ?? on ?? say('joins.end.unsaid')}</p>
      <dl>
        {rows.map(({ name, text }) => (
          <div key={name}>
            <dt>{say(`joining.end.${name}`)}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <EndPictures join={join} end={end} />
    </div>
  );
};

/** Both ends facing each other, as one stands with the wire between them. */
export const JoinEnds = ({ join }: { readonly join: LaidJoin }): ReactElement => {
  const { kind, from, to } = join;
  // a lock, a guard or a valve to drain stands at one place
  const whole = hasTwoEnds(kind) || to.label !== undefined || to.on !== undefined;
  return (
    <div className="join-ends">
      <End join={join} end={from} />
      {whole && <End join={join} end={to} />}
    </div>
  );
};
