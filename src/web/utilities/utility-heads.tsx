import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment, FloorAssessment } from '../../floor/assessment.ts';
import { floorClass } from '../floors/floor-class.ts';
import { FloorTitle } from '../floors/floor-title.tsx';
import { usePage } from '../state/page-context.ts';
import { countsText } from './counts-text.ts';
import { countsOf } from './grouped.ts';
import { trades } from './trades.ts';

interface HeadProps {
  readonly book: Book;
  readonly floor: FloorAssessment | undefined;
  readonly floors: readonly FloorAssessment[];
  readonly side: 0 | 1;
}

const Head = ({ book, floor, floors, side }: HeadProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  if (floor === undefined) return <p className="quiet small">{side === 1 && say('heads.none')}</p>;
  return (
    <div className={`${side === 0 ? 'left' : 'right'} ${floorClass(book, floor.floor)}`}>
      <FloorTitle floor={floor} floors={floors} side={side} />
      <p className="counts" data-floor={floor.floor}>
        {countsText(page.words, countsOf(floor))}
      </p>
    </div>
  );
};

export interface UtilityHeadsProps {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
}

/** The two floors, how many of their rows carry, and a way to each trade. */
export const UtilityHeads = ({ book, assessment, left, right }: UtilityHeadsProps): ReactElement => {
  const { say } = usePage().words;
  return (
    <>
      <div className="heads">
        <Head book={book} floor={left} floors={assessment.floors} side={0} />
        <div className="middle">
          <p className="small">{say('utilities.about')}</p>
        </div>
        <Head book={book} floor={right} floors={assessment.floors} side={1} />
      </div>
      <nav className="trades" aria-label={say('utilities.jump')}>
        <ul>
          {trades.map((utility) => {
            const { short, unknown } = [left, right]
              .map((floor) => countsOf(floor, utility))
              .reduce((a, b) => ({
                short: a.short + b.short,
                unknown: a.unknown + b.unknown,
                carries: a.carries + b.carries,
              }));
            return (
              <li key={utility}>
                <a href={`#utility-${utility}`}>{say(`utility.${utility}`)}</a>{' '}
                {short > 0 && <span className="short">{say('utilities.count.short', { n: short })}</span>}
                {short === 0 && unknown > 0 && (
                  <span className="quiet">{say('utilities.count.unknown', { n: unknown })}</span>
                )}
              </li>
            );
          })}
        </ul>
      </nav>
    </>
  );
};
