import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { Utility } from '../../floor/utilities/utility-finding.ts';
import { useWords } from '../state/page-context.ts';

/** What must be known with the answers of a utility, each sentence once; one that holds on one floor only names it. */
export const UtilityNotes = ({
  utility,
  floors,
}: {
  readonly utility: Utility;
  readonly floors: readonly FloorAssessment[];
}): ReactElement | null => {
  const words = useWords();
  const noted = new Map<string, Set<string>>();
  for (const floor of floors) {
    const { findings, figures } = floor.utilities.of(utility);
    for (const { notes } of [...findings, ...figures]) {
      for (const note of notes) {
        const text = words.note(note);
        noted.set(text, (noted.get(text) ?? new Set()).add(floor.name));
      }
    }
  }
  if (noted.size === 0) return null;
  return (
    <div className="utility-notes">
      <h3>{words.say('utilities.notes')}</h3>
      <ul className="notes">
        {[...noted].map(([note, at]) => (
          <li key={note}>
            {at.size === floors.length
              ? note
              : words.say('utilities.note.at', { floor: [...at].join(', '), note })}
          </li>
        ))}
      </ul>
    </div>
  );
};
