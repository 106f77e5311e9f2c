import type { ReactElement } from 'react';
import { CommaList } from '../shell/comma-list.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { useProof } from './with-proof.tsx';

const partOf = (path: string): string => path.replace(/\/[^/]+$/, '');

/** What the book must say before the check can be judged, each a door to where it is written. */
export const MissingPlaces = ({ paths }: { readonly paths: readonly string[] }): ReactElement => {
  const words = useWords();
  const id = usePagePart((state) => state.id);
  const { book } = useProof();
  return (
    <>
      {words.say('proving.row.missing')}{' '}
      <CommaList>
        {[...new Set(paths)].map((path) => (
          <GoLink key={path} to={bookPageAddress(id, partOf(path))}>
            {words.placeName(book, path)}
          </GoLink>
        ))}
      </CommaList>
    </>
  );
};
