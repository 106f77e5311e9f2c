import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { Finding, FloorAssessment } from '../../floor/assessment.ts';
import { tellingDigits } from '../../floor/telling-digits.ts';
import { usePage, usePageState } from '../state/page-context.ts';
import { floorClass } from './floor-class.ts';
import { SideButton } from './side-button.tsx';
import { figureName, verdictText } from './verdict-text.ts';

interface SideProps {
  readonly book: Book;
  readonly floor: FloorAssessment;
  readonly finding: Finding;
  readonly side: 'left' | 'right';
}

const Side = ({ book, floor, finding, side }: SideProps): ReactElement => {
  const page = usePage();
  const { units, opened } = usePageState();
  const { words } = page;
  const show = { units, book, bottles: true };
  const { have } = finding;
  const value =
    have.value === undefined
      ? words.say('verdict.unknown')
      : words.quantity(have.value, have.kind, { ...show, digits: tellingDigits(finding) }).text;
  const verdict = verdictText(words, finding, { units, book });
  const qualified =
    have.assumed.length > 0
      ? words.say('spine.assumed.with', { verdict })
      : finding.ifSaid && finding.verdict !== 'unknown'
        ? words.say('spine.ifSaid', { verdict })
        : verdict;
  const pressed = opened?.floor === floor.floor && opened.id === finding.id;
  return (
    <SideButton
      floor={floor.floor}
      hue={floorClass(book, floor.floor)}
      finding={finding}
      side={side}
      pressed={pressed}
      label={`${floor.name}, ${figureName(words, finding.id)}:`}
    >
      <span className="value">
        <b>{value}</b>
        <span className={`verdict ${finding.verdict}`}>{qualified}</span>
      </span>
    </SideButton>
  );
};

export interface SpineRowProps {
  readonly book: Book;
  readonly id: string;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
}

/** One finding on both floors: value, bar, shared name, bar, value. */
export const SpineRow = ({ book, id, left, right }: SpineRowProps): ReactElement => {
  const { words } = usePage();
  const of = (floor: FloorAssessment | undefined) => floor?.findings.find((finding) => finding.id === id);
  const [here, there] = [of(left), of(right)];
  const sense = (here ?? there)?.sense;
  const nothing = (side: string) => <span className={`nothing ${side}`}>{words.say('spine.absent')}</span>;
  return (
    <li className="row">
      {left !== undefined && here !== undefined ? (
        <Side book={book} floor={left} finding={here} side="left" />
      ) : (
        nothing('left')
      )}
      <span className="name">
        {figureName(words, id)}
        {sense === 'most' && <span className="quiet small">{words.say('spine.most')}</span>}
      </span>
      {right !== undefined && there !== undefined ? (
        <Side book={book} floor={right} finding={there} side="right" />
      ) : (
        right !== undefined && nothing('right')
      )}
    </li>
  );
};
