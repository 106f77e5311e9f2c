import { memo, type ReactElement } from 'react';
import { endMark, endText, type JoinEnd, type LaidJoin } from '../../../joins/index.ts';
import { useWords } from '../../state/page-context.ts';
import { JoinLink } from '../join-link.tsx';
import type { StoodState } from '../state-of.ts';
import { StateShape } from '../state-shape.tsx';

const End = ({ end }: { readonly end: JoinEnd }): ReactElement => {
  const { say } = useWords();
  const marked = endMark(end);
  return (
    <td>
      <b>{endText(end, say)}</b>
      {marked !== '' && <span className="join-about small quiet">{marked}</span>}
    </td>
  );
};

const Row = memo(({ join, state }: { readonly join: LaidJoin; readonly state: StoodState }): ReactElement => {
  const { say } = useWords();
  const { name, label, cable, core } = join;
  return (
    <tr data-join={join.tag} data-state={state}>
      <th scope="row">
        <JoinLink join={join} />
        <span className="join-about small quiet">
          {[label, cable === undefined ? undefined : [cable, core].filter(Boolean).join('.'), name]
            .filter((one) => one !== undefined)
            .join(', ')}
        </span>
      </th>
      <End end={join.from} />
      <End end={join.to} />
      <td className="words">
        <StateShape state={state} /> {say(`joins.state.${state}`)}
      </td>
    </tr>
  );
});

/** What is made at one stop, with both ends of each. */
export const StopTable = ({
  label,
  joins,
  stateOf,
}: {
  readonly label: string;
  readonly joins: readonly LaidJoin[];
  readonly stateOf: (tag: string) => StoodState;
}): ReactElement => {
  const { say } = useWords();
  return (
    <table className="stop-table" aria-label={label}>
      <thead>
        <tr>
          <th scope="col">{say('joining.col.join')}</th>
          <th scope="col">{say('joining.col.from')}</th>
          <th scope="col">{say('joining.col.to')}</th>
          <th scope="col">{say('joining.col.state')}</th>
        </tr>
      </thead>
      <tbody>
        {joins.map((join) => (
          <Row key={join.tag} join={join} state={stateOf(join.tag)} />
        ))}
      </tbody>
    </table>
  );
};
