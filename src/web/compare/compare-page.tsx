import { type ReactElement, useContext, useState } from 'react';
import type { AsideRevision, RevisionSummary } from '../../server/api.ts';
import { coming } from '../shell/coming.ts';
import { ComingPart } from '../shell/coming-part.tsx';
import { GoContext } from '../shell/go-link.tsx';
import { compareAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import type { AsideProps } from './aside-part.tsx';
import { ComparedFloor } from './compared-floor.tsx';
import { RevisionList } from './revision-list.tsx';
import { type Side, useRevisions, useSideBook } from './side-book.ts';
import { useAside } from './use-aside.ts';

// few books have anything kept aside
const AsidePart = coming<AsideProps>(() => import('./aside-part.tsx').then((m) => m.AsidePart));

interface ChoiceProps {
  readonly label: string;
  readonly side: Side | undefined;
  readonly revisions: readonly RevisionSummary[];
  readonly aside?: readonly AsideRevision[];
  /** Name of the remedy on trial, where one may be chosen. */
  readonly trial: string | undefined;
  readonly onChoose: (side: Side) => void;
}

/** Longest piece of a reason in a list to choose from; the whole stands in the table below. */
const longest = 48;

const SideChoice = ({ label, side, revisions, aside = [], trial, onChoose }: ChoiceProps): ReactElement => {
  const { say } = useWords();
  const named = ({ number, reason }: RevisionSummary): string => {
    if (reason === undefined || reason === '') return say('compare.revision', { n: number });
    const short = reason.length > longest ? `${reason.slice(0, longest)}…` : reason;
    return say('compare.revision.why', { n: number, reason: short });
  };
  return (
    <select
      aria-label={label}
      value={String(side ?? '')}
      onChange={({ target: { value } }) => onChoose(/^\d{1,9}$/.test(value) ? Number(value) : value)}
    >
      {trial !== undefined && <option value="trial">{say('compare.trial', { label: trial })}</option>}
      {revisions.map((revision) => (
        <option key={revision.number} value={revision.number}>
          {named(revision)}
        </option>
      ))}
      {aside.map(({ number, author, sha256 }) => (
        <option key={sha256} value={sha256}>
          {say('compare.aside.side', { n: number, author })}
        </option>
      ))}
    </select>
  );
};

export interface ComparePageProps {
  readonly left: number | undefined;
  readonly right: Side | undefined;
}

/** Two revisions of a book, or the book and the remedy on trial, facing each other like two floors. */
export const ComparePage = ({ left, right }: ComparePageProps): ReactElement => {
  const go = useContext(GoContext);
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const newest = usePagePart((state) => state.revision);
  const trial = usePagePart((state) => state.trial);
  const facing = usePagePart((state) => state.facing);
  const book = usePagePart((state) => state.book);
  const revisions = useRevisions();
  const aside = useAside();
  const [chosen, choose] = useState<string>();
  const after: Side = right === 'trial' ? (trial === undefined ? newest : 'trial') : (right ?? newest);
  const before: number = left ?? (typeof after === 'number' ? Math.max(1, after - 1) : newest);
  const [from, to] = [useSideBook(before), useSideBook(after)];
  const floors = book?.floors ?? [];
  const floor = chosen ?? facing[1] ?? facing[0] ?? floors[0]?.tag;
  const list = typeof revisions === 'string' ? [] : revisions;
  const alone = newest === 1 && trial === undefined && aside.length === 0;
  const put = (sides: { left?: number; right?: Side }): void =>
    go(compareAddress(id, { left: before, right: after, ...sides }), 'instead');
  return (
    <div className="compare spine" id="figures" tabIndex={-1}>
      <h2 className="compare-title">{say('compare.title')}</h2>
      {right === 'trial' && trial === undefined && (
        <p className="gone" role="status">
          {say('compare.trialGone')}
        </p>
      )}
      {alone ? (
        <p className="message">{say('compare.alone.revision')}</p>
      ) : (
        <>
          <div className="sides">
            <div className="left">
              <SideChoice
                label={say('compare.left')}
                side={before}
                revisions={list}
                trial={undefined}
                onChoose={(side) => typeof side === 'number' && put({ left: side })}
              />
            </div>
            <div className="middle">
              {floors.length > 1 ? (
                <select
                  aria-label={say('compare.floor')}
                  value={floor ?? ''}
                  onChange={(event) => choose(event.target.value)}
                >
                  {floors.map(({ tag, name }) => (
                    <option key={tag} value={tag}>
                      {name ?? tag}
                    </option>
                  ))}
                </select>
              ) : (
                floors[0]?.name
              )}
            </div>
            <div>
              <SideChoice
                label={say('compare.right')}
                side={after}
                revisions={list}
                aside={aside}
                trial={trial?.label}
                onChoose={(side) => put({ right: side })}
              />
            </div>
          </div>
          {typeof from !== 'string' && typeof to !== 'string' && floor !== undefined ? (
            <ComparedFloor from={from} to={to} floor={floor} />
          ) : (
            <p className="message" role="status">
              {say(from === 'failed' || to === 'failed' ? 'compare.unread' : 'compare.loading')}
            </p>
          )}
        </>
      )}
      {aside.length > 0 && <ComingPart of={AsidePart} give={{ aside, revisions: list }} />}
      {list.length > 0 && <RevisionList id={id} revisions={list} />}
    </div>
  );
};
