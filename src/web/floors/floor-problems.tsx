import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { useWords } from '../state/page-context.ts';

/** What could not be worked out on a floor, and what the reader must know of the rest. */
export const FloorProblems = ({
  floors,
}: {
  readonly floors: readonly FloorAssessment[];
}): ReactElement | null => {
  const words = useWords();
  const troubled = floors.filter((floor) => floor.problems.length > 0 || floor.notes.length > 0);
  if (troubled.length === 0) return null;
  return (
    <>
      {troubled.map((floor) => (
        <section className="part" key={floor.floor}>
          <h2>{words.say('problems.title', { floor: floor.name })}</h2>
          <ul className="notes">
            {floor.problems.map((problem) => (
              <li key={`${problem.code}${problem.path}`}>{words.problem(problem)}</li>
            ))}
            {floor.notes.map((note) => (
              <li key={note.code + JSON.stringify(note.parts)}>{words.note(note)}</li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
};
