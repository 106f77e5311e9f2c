import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import { FixLine } from './fix-line.tsx';
import type { Facing } from './grouped.ts';
import { RefusalList } from './refusal-list.tsx';
import { UtilitySide } from './utility-side.tsx';

/** Short, and something is known that could be changed. */
const wantsFix = ({ verdict, levers }: UtilityFinding): boolean => verdict === 'short' && levers.length > 0;

/** Short, and nothing is known that could be changed. */
const wantsWord = ({ verdict, levers }: UtilityFinding): boolean =>
  verdict === 'short' && levers.length === 0;

/** A thing by name, its tag in one piece: a tag has hyphens at which it would be broken. */
const Thing = ({ name }: { readonly name: string }): ReactElement => {
  const at = name.lastIndexOf(' ') + 1;
  return (
    <span className="quiet small thing">
      {name.slice(0, at)}
      <span>{name.slice(at)}</span>
    </span>
  );
};

export interface UtilityRowProps {
  readonly book: Book;
  readonly row: Facing<UtilityFinding>;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
  /** What people call a thing by its tag. */
  readonly thingOf: (tag: string) => string;
}

/** One question on both floors: value, bar, shared name, bar, value; under it what a sheet would not take. */
export const UtilityRow = ({ book, row, left, right, thingOf }: UtilityRowProps): ReactElement => {
  const { say } = useWords();
  const shown = row.left ?? row.right;
  if (shown === undefined) return <li className="row" />;
  const key = `utility.question.${shown.question}`;
  // the tie-in point stands above its rows
  const thing = shown.of === undefined || shown.of === shown.tieIn ? undefined : thingOf(shown.of);
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
  const below = (floor: FloorAssessment | undefined, finding: UtilityFinding | undefined) =>
    floor !== undefined &&
    finding !== undefined && (
      <>
        {wantsFix(finding) && (
          <FixLine
            floor={floor.floor}
            floorName={floor.name}
            finding={finding.id}
            name={utilityName(say, key, thing)}
          />
        )}
        {wantsWord(finding) && <p className="small">{say('utilities.fix.unknown')}</p>}
        <RefusalList refusals={finding.refusals} />
      </>
    );
  const more = [row.left, row.right].some(
    (finding) => finding !== undefined && (finding.verdict === 'short' || finding.refusals.length > 0),
  );
  return (
    <li className="row utility-row">
      {side('left', left)}
      <span className="name">
        {say(key)}
        {thing !== undefined && <Thing name={thing} />}
        {shown.sense === 'most' && <span className="quiet small">{say('spine.most')}</span>}
      </span>
      {side('right', right)}
      {more && (
        <div className="row-more">
          <div className="left">{below(left, row.left)}</div>
          <span className="name" />
          <div>{below(right, row.right)}</div>
        </div>
      )}
    </li>
  );
};
