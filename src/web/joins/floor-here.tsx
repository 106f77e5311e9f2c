import type { ReactElement } from 'react';
import { FloorSelect } from '../shell/floor-select.tsx';
import { useWords } from '../state/page-context.ts';
import { useJoins } from './with-joins.tsx';

/** The floor on which one works. */
export const FloorHere = (): ReactElement | null => {
  const { book, floor, chooseFloor } = useJoins();
  const { say } = useWords();
  if (floor === undefined) return null;
  return (
    <FloorSelect label={say('joining.floor')} floors={book.floors ?? []} value={floor} choose={chooseFloor} />
  );
};
