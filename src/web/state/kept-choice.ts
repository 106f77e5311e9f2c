import { useCallback, useState } from 'react';
import type { Page } from './page.ts';

/** What a person chose, as this browser keeps it under a name; anything may stand there. */
export const useKeptChoice = <Choice>(
  { notes }: Pick<Page, 'notes'>,
  note: string,
): readonly [unknown, (choice: Choice) => void] => {
  const [chosen, setChosen] = useState<unknown>(() => notes.read(note));
  const choose = useCallback(
    (choice: Choice): void => {
      notes.write(note, choice);
      setChosen(choice);
    },
    [notes, note],
  );
  return [chosen, choose];
};
