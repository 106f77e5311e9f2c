import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';
import { useJoins } from './with-joins.tsx';

/** The floor on which one works. */
export const FloorHere = (): ReactElement | null => {
  const { book, floor, chooseFloor } = useJoins();
  const { say } = useWords();
  if (floor === undefined) return null;
  return (
    <label className="proof-floor">
      {say('joining.floor')}{' '}
      <select value={floor} onChange={({ target }) => chooseFloor(target.value)}>
        {(book.floors ?? []).map(({ tag, name }) => (
          <option key={tag} value={tag}>
            {name ?? tag}
          </option>
        ))}
      </select>
    </label>
  );
};
