import { useEffect, useState } from 'react';
import { type Book, readBook } from '../../book/index.ts';
import type { RevisionSummary } from '../../server/api.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

/** What stands on one side: a revision by its number, one kept aside by its digest, or `trial`, the book with the remedy on it. */
export type Side = number | string;

/** A book, or that it is still being fetched, or that it can't be had. */
export type SideBook = Book | 'loading' | 'failed';

/** The book of one side; what the page holds already is not fetched again. */
export const useSideBook = (side: Side | undefined): SideBook => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const trial = usePagePart((state) => state.trial?.book);
  const book = usePagePart((state) => state.book);
  const revision = usePagePart((state) => state.revision);
  const [fetched, setFetched] = useState<{ readonly side: Side; readonly book: Book | 'failed' }>();
  const here = side === 'trial' ? trial : side === revision ? book : undefined;
  useEffect(() => {
    if (here !== undefined || side === undefined || side === 'trial') return undefined;
    let gone = false;
    const asked =
      typeof side === 'number'
        ? page.client('readRevision', { params: { id, number: side } })
        : page.client('readAside', { params: { id, sha256: side } });
    void asked.then((reply) => {
      if (gone) return;
      const read = reply.ok ? readBook(reply.value.text) : undefined;
      setFetched({ side, book: read?.ok === true ? read.value : 'failed' });
    });
    return () => {
      gone = true;
    };
  }, [page, id, side, here]);
  if (here !== undefined) return here;
  if (side === 'trial') return 'failed';
  return fetched !== undefined && fetched.side === side ? fetched.book : 'loading';
};

/** The revisions of the open book, the newest first. */
export const useRevisions = (): readonly RevisionSummary[] | 'loading' | 'failed' => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const revision = usePagePart((state) => state.revision);
  const [list, setList] = useState<readonly RevisionSummary[] | 'loading' | 'failed'>('loading');
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision makes the list anew
  useEffect(() => {
    let gone = false;
    void page.client('listRevisions', { params: { id } }).then((reply) => {
      if (!gone) setList(reply.ok ? reply.value.toSorted((a, b) => b.number - a.number) : 'failed');
    });
    return () => {
      gone = true;
    };
  }, [page, id, revision]);
  return list;
};
