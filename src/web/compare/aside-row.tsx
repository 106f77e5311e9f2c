import { type ReactElement, useState } from 'react';
import type { HeldRevision } from '../../record/held-revisions.ts';
import type { AsideRevision, RevisionSummary } from '../../server/api.ts';
import { GoLink } from '../shell/go-link.tsx';
import { compareAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { HoldForm } from './hold-form.tsx';
import { momentText } from './revision-list.tsx';

/** One revision that is kept aside: what was said of it, and who looks at both may say which holds. */
export const AsideRow = ({
  aside,
  revisions,
  said,
}: {
  readonly aside: AsideRevision;
  readonly revisions: readonly RevisionSummary[];
  readonly said: readonly HeldRevision[];
}): ReactElement => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const newest = usePagePart((state) => state.revision);
  const [saying, setSaying] = useState(false);
  const { number, author, reason = '', savedAt, sha256 } = aside;
  const stands = revisions.find((one) => one.sha256 === sha256);
  // one that follows what is not here has no other of its number: it stands against the newest
  const of = (wanted: number) => revisions.find((one) => one.number === wanted);
  const other = of(number) ?? of(newest);
  // of one text there is nothing to choose
  const here = other?.sha256 === sha256 ? undefined : other;
  return (
    <li data-aside={sha256}>
      {say('compare.aside.one', { n: number, author, at: momentText(words.numbers, savedAt) })}
      {reason !== '' && `: ${reason}`}{' '}
      {stands === undefined ? (
        <GoLink to={compareAddress(id, { left: Math.min(number, newest), right: sha256 })}>
          {say('compare.aside.beside')}
        </GoLink>
      ) : (
        say('compare.aside.stands', { n: stands.number })
      )}{' '}
      {here !== undefined && !saying && (
        <button type="button" className="link" data-act="say-holds" onClick={() => setSaying(true)}>
          {say('compare.aside.say')}
        </button>
      )}
      {said.length > 0 && (
        <ul data-said={said.length}>
          {said.map((one) => (
            <li key={one.record}>
              {say(one.holds === sha256 ? 'compare.aside.said.aside' : 'compare.aside.said.here', {
                by: one.by,
                at: momentText(words.numbers, one.at),
                why: one.why,
              })}
            </li>
          ))}
        </ul>
      )}
      {here !== undefined && saying && (
        <HoldForm aside={aside} here={here} isSaved={stands !== undefined} done={() => setSaying(false)} />
      )}
    </li>
  );
};
