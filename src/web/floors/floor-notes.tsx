import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { useWords } from '../state/page-context.ts';

/** What the reader must know of a floor besides its figures. */
export const FloorNotes = ({
  floors,
}: {
  readonly floors: readonly FloorAssessment[];
}): ReactElement | null => {
  const words = useWords();
  const noted = floors.filter((floor) => floor.notes.length > 0);
  if (noted.length === 0) return null;
  return (
    <>
      {noted.map((floor) => (
        <section className="part" key={floor.floor}>
          <h2>{words.say('notes.title', { floor: floor.name })}</h2>
          <ul className="notes">
            {floor.notes.map((note) => (
              <li key={note.code + JSON.stringify(note.parts)}>{words.note(note)}</li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
};
