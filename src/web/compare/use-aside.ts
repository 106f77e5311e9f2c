import { useEffect, useState } from 'react';
import type { AsideRevision } from '../../server/api.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

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
