import type { KeyboardEvent, ReactElement } from 'react';
import { memberName } from '../commands/change-list.ts';
import { GoLink } from '../shell/go-link.tsx';
import { usePage } from '../state/page-context.ts';
import { AskedRemoval, type ListActions, MemberActions } from './member-actions.tsx';
import { useWriting } from './write-context.ts';

interface Member {
  readonly tag?: string;
  readonly kind?: string;
  readonly role?: string;
  readonly power?: unknown;
}

/** A list whose members have a page each: their names, and what can be done with them. */
export const LinkList = ({
  list,
  members,
  actions,
}: {
  readonly list: string;
  readonly members: readonly unknown[];
  readonly actions: ListActions;
}): ReactElement => {
  const page = usePage();
  const { address } = useWriting();
  const { say, has } = page.words;
  const press = (event: KeyboardEvent, path: string): void => {
    if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
    event.preventDefault();
    actions.act(path, event.key === 'ArrowUp' ? 'up' : 'down');
  };
  const ordered = /\/(?:stations|lanes|zones|run|route)$/.test(list);
  return (
    <ol className="links">
      {members.map((member, index) => {
        const path = `${list}/${index}`;
        const { tag, kind, role } = member as Member;
        const what = kind ?? role;
        const name = memberName(page, path, member);
        return (
          <li key={tag ?? path} onKeyDown={(event) => press(event, path)}>
            <GoLink to={address(path)}>
              {ordered && <span className="n">{index + 1}</span>}
              <b>{name}</b>
              {tag !== undefined && tag !== name && <span className="tag">{tag}</span>}
              {what !== undefined && has(`word.${what}`) && (
                <span className="quiet">{say(`word.${what}`)}</span>
              )}
            </GoLink>
            <MemberActions path={path} count={members.length} actions={actions} />
            {actions.asked?.path === path && <AskedRemoval asked={actions.asked} settle={actions.settle} />}
          </li>
        );
      })}
    </ol>
  );
};
