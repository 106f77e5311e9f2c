import type { ReactElement } from 'react';
import type { RevisionSummary } from '../../server/api.ts';
import { GoLink } from '../shell/go-link.tsx';
import { compareAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';

/** A moment in figures only: its order is that of the locale, and no name of a month needs a translation. */
export const momentText = (locale: string, moment: string): string =>
  new Intl.DateTimeFormat(locale, {
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(new Date(moment));

/** Every revision with its reason, each to be laid beside the one before it. */
export const RevisionList = ({
  id,
  revisions,
}: {
  readonly id: string;
  readonly revisions: readonly RevisionSummary[];
}): ReactElement => {
  const words = useWords();
  const { say } = words;
  return (
    <div className="revisions">
      <h2>{say('compare.revisions')}</h2>
      <ScrollRegion label={say('compare.revisions')}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say('compare.number')}</th>
              <th scope="col" className="words">
                {say('compare.when')}
              </th>
              <th scope="col" className="words">
                {say('compare.reason')}
              </th>
              <th scope="col" className="words">
                {say('compare.beside')}
              </th>
            </tr>
          </thead>
          <tbody>
            {revisions.map(({ number, reason, savedAt }) => (
              <tr key={number}>
                <th scope="row">{number}</th>
                <td className="words">{momentText(words.numbers, savedAt)}</td>
                <td className="words reason">{reason ?? ''}</td>
                <td className="words">
                  {number > 1 && (
                    <GoLink to={compareAddress(id, { left: number - 1, right: number })}>
                      {say('compare.withBefore', { n: number - 1 })}
                    </GoLink>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </div>
  );
};
