import { type ReactElement, useEffect, useState } from 'react';
import type { AsideRevision, RevisionSummary } from '../../server/api.ts';
import { followNewest } from '../commands/settle-conflict.ts';
import { GoLink } from '../shell/go-link.tsx';
import { compareAddress } from '../shell/route.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { momentText } from './revision-list.tsx';

/** Revisions that came in an archive under a number that another holds. */
export const useAside = (): readonly AsideRevision[] => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const [list, setList] = useState<readonly AsideRevision[]>([]);
  useEffect(() => {
    let gone = false;
    void page.client('listAside', { params: { id } }).then((reply) => {
      if (!gone) setList(reply.ok ? reply.value : []);
    });
    return () => {
      gone = true;
    };
  }, [page, id]);
  return list;
};

/** What was kept aside: laid beside what holds here, and saved as the next revision where a person says that it holds. */
export const AsideList = ({
  aside,
  revisions,
}: {
  readonly aside: readonly AsideRevision[];
  readonly revisions: readonly RevisionSummary[];
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const newest = usePagePart((state) => state.revision);
  const [told, setTold] = useState('');
  const save = async ({ number, author, sha256 }: AsideRevision): Promise<void> => {
    const read = await page.client('readAside', { params: { id, sha256 } });
    const reply = read.ok
      ? await page.client('saveRevision', {
          params: { id },
          body: {
            text: read.value.text,
            basedOn: newest,
            author: page.author,
            reason: say('compare.aside.why', { n: number, author }),
          },
        })
      : read;
    if (!reply.ok) {
      setTold(reply.reached ? reply.failure.message : say('compare.unread'));
      return;
    }
    setTold(say('compare.aside.saved', { n: newest + 1 }));
    await followNewest(page);
  };
  return (
    <section className="revisions" data-part="aside" aria-label={say('compare.aside')}>
      <h2>{say('compare.aside')}</h2>
      <p>{say('compare.aside.about')}</p>
      <ul>
        {aside.map((one) => {
          const stands = revisions.find(({ sha256 }) => sha256 === one.sha256);
          return (
            <li key={`${one.number} ${one.sha256} ${one.savedAt}`} data-aside={one.sha256}>
              {say('compare.aside.one', {
                n: one.number,
                author: one.author,
                at: momentText(words.numbers, one.savedAt),
              })}
              {one.reason !== undefined && one.reason !== '' && `: ${one.reason}`}{' '}
              {stands === undefined ? (
                <>
                  <GoLink to={compareAddress(id, { left: Math.min(one.number, newest), right: one.sha256 })}>
                    {say('compare.aside.beside')}
                  </GoLink>{' '}
                  <button type="button" className="link" data-act="save-aside" onClick={() => void save(one)}>
                    {say('compare.aside.save')}
                  </button>
                </>
              ) : (
                say('compare.aside.stands', { n: stands.number })
              )}
            </li>
          );
        })}
      </ul>
      <p role="status">{told}</p>
    </section>
  );
};
