import type { ReactElement } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { faceFloor } from '../commands/choose-view.ts';
import { usePage } from '../state/page-context.ts';

export interface FloorTitleProps {
  readonly floor: FloorAssessment;
  readonly floors: readonly FloorAssessment[];
  readonly side: 0 | 1;
}

/** Which floor stands on a side; to be chosen where a book has more than two. */
export const FloorTitle = ({ floor, floors, side }: FloorTitleProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const title = (one: FloorAssessment): string =>
    say('heads.role', { floor: one.name, role: say(`role.${one.role}`) });
  if (floors.length <= 2) return <h2>{title(floor)}</h2>;
  return (
    <select
      aria-label={say('heads.choose')}
      value={floor.floor}
      onChange={(event) => faceFloor(page, side, event.target.value)}
    >
      {floors.map((other) => (
        <option key={other.floor} value={other.floor}>
          {title(other)}
        </option>
      ))}
    </select>
  );
};
