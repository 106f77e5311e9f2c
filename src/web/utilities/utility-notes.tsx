import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { Utility } from '../../floor/utilities/utility-finding.ts';
import { useWords } from '../state/page-context.ts';

/** What must be known with the answers of a utility, each sentence once a floor. */
export const UtilityNotes = ({
  utility,
  floors,
}: {
  readonly utility: Utility;
  readonly floors: readonly FloorAssessment[];
}): ReactElement | null => {
  const words = useWords();
  const noted = floors.flatMap((floor) => {
    const { findings, figures } = floor.utilities;
    const notes = [...findings, ...figures]
      .filter((one) => one.utility === utility)
      .flatMap((one) => one.notes.map((note) => words.note(note)));
    return notes.length === 0 ? [] : [{ floor, notes: [...new Set(notes)] }];
  });
  return (
    <>
      {noted.map(({ floor, notes }) => (
        <div key={floor.floor}>
          <h4>{words.say('utilities.notes', { floor: floor.name })}</h4>
          <ul className="notes">
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </div>
      ))}
    </>
  );
};
