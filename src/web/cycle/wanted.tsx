import type { ReactElement } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { type SideShifts, useShifts } from './with-shifts.tsx';

/** Why there is no figure yet, each with the way to the place of the book that gives it. */
export const Wanted = ({ side }: { readonly side: SideShifts }): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const { book } = useShifts();
  const ground = side.answer?.ground;
  if (ground === undefined) return null;
  if (ground.line !== undefined) return null;
  const { missing, problems } = ground;
  return (
    <div className="wanted small">
      {missing.length > 0 && <p>{say('cycle.missing')}</p>}
      <ul>
        {problems.map((problem) => (
          <li key={problem.code + problem.path} className="problem">
            {words.problem(problem)}
          </li>
        ))}
        {missing.map((place) => (
          <li key={place}>
            <GoLink to={bookPageAddress(id, place.split('/').slice(0, 4).join('/'))}>
              {words.placeName(book, place)}
            </GoLink>
          </li>
        ))}
      </ul>
    </div>
  );
};
