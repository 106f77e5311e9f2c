import { type ReactElement, useState } from 'react';
import { valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import {
  copyMember,
  type Done,
  memberName,
  moveMember,
  removePart,
  removeWithReferences,
} from '../commands/change-list.ts';
import { usePage } from '../state/page-context.ts';
import { ProblemList } from './problem-list.tsx';
import type { Removal } from './references.ts';
import { focusSoon, useWriting } from './write-context.ts';

const marks = {
  up: 'M8 13V3M3.5 7.5 8 3l4.5 4.5',
  down: 'M8 3v10M3.5 8.5 8 13l4.5-4.5',
  copy: 'M6 6h7v7H6zM10 6V3H3v7h3',
  remove: 'M4 4l8 8M12 4l-8 8',
} as const;

export type Act = keyof typeof marks;

const Mark = ({ act }: { readonly act: Act }): ReactElement => (
  <svg viewBox="0 0 16 16" aria-hidden="true">
    <path d={marks[act]} />
  </svg>
);

/** What stands where a thing was that is to be removed while others refer to it. */
export interface Asked {
  readonly path: string;
  readonly removal?: Removal;
  readonly problems: readonly Problem[];
}

export interface ListActions {
  readonly asked: Asked | undefined;
  readonly act: (path: string, act: Act) => void;
  readonly settle: (asked: Asked, both: boolean) => void;
}

const control = (path: string, act: Act): string => `[data-at="${path}"][data-act="${act}"]`;

/**
 * What can be done with the members of a list: the focus goes along with what is moved, and a thing to which
 * others refer asks first.
 *
 * Symbols  moved    told where a member now stands
 *          removed  told what is gone
 */
export const useListActions = (
  moved: (path: string) => void = () => undefined,
  removed: (path: string) => void = () => undefined,
): ListActions => {
  const page = usePage();
  const { tell } = useWriting();
  const [asked, setAsked] = useState<Asked>();
  const gone = (path: string): void => {
    setAsked(undefined);
    removed(path);
    const list = path.replace(/\/\d+$/, '');
    const before = `${list}/${Math.max(0, Number(path.slice(list.length + 1)) - 1)}`;
    focusSoon(
      control(path, 'remove'),
      control(before, 'remove'),
      `[data-add="${list}"] button, [data-add="${list}"] select`,
    );
  };
  const done = ({ problems, path: next }: Done, path: string, doing: Act): void => {
    setAsked(problems.length === 0 ? undefined : { path, problems });
    if (problems.length > 0) return;
    moved(next);
    const other: Act = doing === 'up' ? 'down' : 'up';
    focusSoon(control(next, doing), control(next, other));
    const list = valueAt(page.state.get().book, next.replace(/\/\d+$/, ''));
    tell(
      page.words.say('write.moved', {
        name: memberName(page, next),
        n: Number(next.split('/').at(-1)) + 1,
        of: Array.isArray(list) ? list.length : 1,
      }),
    );
  };
  const act = (path: string, doing: Act): void => {
    if (doing === 'up' || doing === 'down')
      done(moveMember(page, path, doing === 'up' ? -1 : 1), path, doing);
    else if (doing === 'copy') done(copyMember(page, path), path, doing);
    else {
      const removal = removePart(page, path);
      if (removal === undefined) gone(path);
      else {
        setAsked({ path, removal, problems: [] });
        focusSoon('.refers button');
      }
    }
  };
  const settle = ({ path }: Asked, both: boolean): void => {
    if (!both) {
      setAsked(undefined);
      focusSoon(control(path, 'remove'));
      return;
    }
    const problems = removeWithReferences(page, path);
    if (problems.length > 0) setAsked({ path, problems });
    else gone(path);
  };
  return { asked, act, settle };
};

/** Up, down, copy, remove. */
export const MemberActions = ({
  path,
  count,
  actions,
  among,
}: {
  readonly path: string;
  readonly count: number;
  readonly actions: ListActions;
  /** Only some of the actions. */
  readonly among?: readonly Act[];
}): ReactElement => {
  const page = usePage();
  const name = memberName(page, path);
  const index = Number(path.split('/').at(-1));
  const shut: Partial<Record<Act, boolean>> = { up: index === 0, down: index === count - 1 };
  return (
    <span className="acts">
      {(among ?? (Object.keys(marks) as Act[])).map((each) => (
        <button
          key={each}
          type="button"
          data-at={path}
          data-act={each}
          disabled={shut[each] === true}
          aria-label={page.words.say(`write.${each}`, { name })}
          title={page.words.say(`write.${each}`, { name })}
          onClick={() => actions.act(path, each)}
        >
          <Mark act={each} />
        </button>
      ))}
    </span>
  );
};

const most = 6;

/** What refers to a thing that is to be removed, and the two ways on. */
export const AskedRemoval = ({
  asked,
  settle,
}: {
  readonly asked: Asked;
  readonly settle: ListActions['settle'];
}): ReactElement => {
  const page = usePage();
  const { say, placeName } = page.words;
  const { book } = page.state.get();
  const { removal } = asked;
  if (removal === undefined || book === undefined) return <ProblemList problems={asked.problems} />;
  const { references } = removal;
  return (
    <div className="refers" role="alert">
      <p>{say('write.refers', { n: references.length, name: memberName(page, asked.path) })}</p>
      <ul>
        {references.slice(0, most).map((path) => (
          <li key={path}>{placeName(book, path)}</li>
        ))}
        {references.length > most && <li>{say('write.refers.more', { n: references.length - most })}</li>}
      </ul>
      <button type="button" onClick={() => settle(asked, true)}>
        {say('write.refers.both', { n: references.length })}
      </button>{' '}
      <button type="button" onClick={() => settle(asked, false)}>
        {say('write.refers.keep')}
      </button>
    </div>
  );
};
