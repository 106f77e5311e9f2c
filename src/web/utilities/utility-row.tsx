import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import type { Facing } from './grouped.ts';
import { RefusalList } from './refusal-list.tsx';
import { UtilitySide } from './utility-side.tsx';

export interface UtilityRowProps {
  readonly book: Book;
  readonly row: Facing<UtilityFinding>;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
  /** What people call the thing that the question is about. */
  readonly thing: string | undefined;
}

/** One question on both floors: value, bar, shared name, bar, value; under it what a sheet would not take. */
export const UtilityRow = ({ book, row, left, right, thing }: UtilityRowProps): ReactElement => {
  const { say } = useWords();
  const shown = row.left ?? row.right;
  if (shown === undefined) return <li className="row" />;
  const key = `utility.question.${shown.question}`;
  const side = (which: 'left' | 'right', floor: FloorAssessment | undefined) => {
    const finding = row[which];
    if (floor === undefined) return null;
    return finding === undefined ? (
      <span className={`nothing ${which}`}>{say('spine.absent')}</span>
    ) : (
      <UtilitySide
        floor={floor.floor}
        floorName={floor.name}
        hue={floorClass(book, floor.floor)}
        name={utilityName(say, key, thing)}
        finding={finding}
        side={which}
      />
    );
  };
  const refused = (row.left?.refusals.length ?? 0) + (row.right?.refusals.length ?? 0) > 0;
  return (
    <li className="row utility-row">
      {side('left', left)}
      <span className="name">
        {say(key)}
        {thing !== undefined && <span className="quiet small thing">{thing}</span>}
        {shown.sense === 'most' && <span className="quiet small">{say('spine.most')}</span>}
      </span>
      {side('right', right)}
      {refused && (
        <div className="row-more">
          <div>
            <RefusalList refusals={row.left?.refusals ?? []} />
          </div>
          <div>
            <RefusalList refusals={row.right?.refusals ?? []} />
          </div>
        </div>
      )}
    </li>
  );
};
