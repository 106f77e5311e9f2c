import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { Utility } from '../../floor/utilities/utility-finding.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { countsText } from './counts-text.ts';
import { countsOf, facingFigures, tieInGroups } from './grouped.ts';
import { SiteForms } from './site-form.tsx';
import { UtilityFigures } from './utility-figures.tsx';
import { UtilityNotes } from './utility-notes.tsx';
import { UtilityRow } from './utility-row.tsx';

/** Where the book says what of the line uses a utility. */
const users: Readonly<Record<Utility, string>> = {
  air: '/line/airDrops',
  power: '/line/drives',
  water: '/line/stations',
  heat: '/line/heaters',
  drains: '/line/stations',
  building: '/line/sections',
};

export interface UtilityPartProps {
  readonly book: Book;
  readonly utility: Utility;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
  readonly thingOf: (tag: string) => string;
}

/** One trade: what the line asks at each tie-in point and what both floors have; its draws; what each floor has, to be written. */
export const UtilityPart = ({ book, utility, left, right, thingOf }: UtilityPartProps): ReactElement => {
  const { words } = usePage();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const floors = [left, right].filter((floor) => floor !== undefined);
  const groups = tieInGroups(utility, left, right);
  const figures = facingFigures(utility, left, right);
  const counted = (floor: FloorAssessment | undefined) => countsText(words, countsOf(floor, utility));
  return (
    <section className="part utility" id={`utility-${utility}`} aria-label={say(`utility.${utility}`)}>
      <div className="utility-head">
        <span className="small quiet left">{counted(left)}</span>
        <h2>{say(`utility.${utility}`)}</h2>
        <span className="small quiet">{counted(right)}</span>
      </div>
      {groups.length === 0 && (
        <p className="quiet">
          {say('utilities.nothing')}{' '}
          <GoLink to={bookPageAddress(id, users[utility])}>
            {say('utilities.nothing.write', { what: words.fieldName(users[utility]) })}
          </GoLink>
        </p>
      )}
      {groups.map(({ tieIn, rows }) => (
        <div key={tieIn ?? ''} className="tie-in">
          {(tieIn !== undefined || groups.length > 1) && (
            <h3>
              {tieIn === undefined
                ? say('utilities.tieIn.none')
                : say('utilities.tieIn', { name: thingOf(tieIn) })}
            </h3>
          )}
          <ol className="rows">
            {rows.map((row) => (
              <UtilityRow key={row.id} book={book} row={row} left={left} right={right} thingOf={thingOf} />
            ))}
          </ol>
        </div>
      ))}
      <SiteForms utility={utility} floors={floors} />
      <UtilityFigures book={book} rows={figures} left={left} right={right} thingOf={thingOf} />
      <UtilityNotes utility={utility} floors={floors} />
      <p className="caution small">{say(`utility.caution.${utility}`)}</p>
    </section>
  );
};
