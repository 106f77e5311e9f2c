import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { Finding } from '../../floor/assessment.ts';
import type { FigureMove } from '../../floor/index.ts';
import { tellingDigits } from '../../floor/telling-digits.ts';
import { SpineBar } from '../floors/spine-bar.tsx';
import { figureName, verdictText } from '../floors/verdict-text.ts';
import { useElementWidth } from '../line/element-width.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { signedQuantity } from './change-text.ts';
import type { MovedRow } from './moved-rows.ts';

type At = 'left' | 'right';

/** A figure that nothing is asked of: the larger of the two fills its room. */
const PlainBar = ({
  share,
  side,
  floor,
}: {
  readonly share: number;
  readonly side: At;
  readonly floor: string;
}) => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(180);
  const long = share * width * 0.9;
  return (
    <span className={`bar ${floor}`} ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={30} style={{ display: 'block' }}>
        <rect className="have" x={side === 'left' ? width - long : 0} y={8} width={long} height={14} />
      </svg>
    </span>
  );
};

interface SideProps {
  readonly row: MovedRow;
  readonly side: At;
  readonly book: Book;
  readonly floor: string;
}

/** Digits that tell the two values of a figure apart. */
const digitsOf = ({ from, to }: FigureMove): number => {
  if (from === undefined || to === undefined || from === 0 || to === 0) return 3;
  return Math.min(6, Math.max(3, Math.ceil(-Math.log10(Math.abs(to / from - 1) || 1)) + 1));
};

const SideOf = ({ row, side, book, floor }: SideProps): ReactElement => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const finding: Finding | undefined = side === 'left' ? row.left : row.right;
  const { move } = row;
  const value = finding === undefined ? (side === 'left' ? move?.from : move?.to) : finding.have.value;
  const kind = finding?.have.kind ?? move?.kind;
  const told = move === undefined ? (finding === undefined ? 3 : tellingDigits(finding)) : digitsOf(move);
  // whole bottles, as in the large figures above
  const digits = kind === 'rate' ? (value !== undefined && value * 3600 < 999.5 ? 3 : 4) : told;
  const text =
    value === undefined || kind === undefined
      ? words.say('verdict.unknown')
      : words.quantity(value, kind, { units, book, bottles: true, digits }).text;
  const most = Math.max(Math.abs(move?.from ?? 0), Math.abs(move?.to ?? 0));
  const figures = (
    <span className="value">
      <b>{text}</b>
      {finding !== undefined && (
        <span className={`verdict ${finding.verdict}`}>{verdictText(words, finding, { units, book })}</span>
      )}
    </span>
  );
  const bar =
    finding === undefined ? (
      <PlainBar share={most > 0 ? Math.abs(value ?? 0) / most : 0} side={side} floor={floor} />
    ) : (
      <SpineBar finding={finding} side={side} floor={floor} />
    );
  return (
    <div className={`side ${side}`}>
      {side === 'left' ? figures : bar}
      {side === 'left' ? bar : figures}
    </div>
  );
};

interface WhyProps {
  readonly move: FigureMove;
  readonly book: Book;
  readonly nameOf: (path: string) => string;
  /** Changes that were tried one by one; with more of them nobody knows which did it. */
  readonly tried: boolean;
}

/** What each change does to a figure on its own, the largest first. */
const Why = ({ move, book, nameOf, tried }: WhyProps): ReactElement => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  if (move.causes.length === 0) {
    return <p className="why">{words.say(tried ? 'compare.together' : 'compare.tooMany')}</p>;
  }
  return (
    <ul className="why">
      {move.causes.map(({ path, effect }) => (
        <li key={path}>
          {effect === undefined
            ? words.say('compare.alone.unknown', { place: nameOf(path) })
            : words.say('compare.alone', {
                place: nameOf(path),
                effect: signedQuantity(words, effect, move.kind, { units, book, bottles: true }),
              })}
        </li>
      ))}
    </ul>
  );
};

export interface MovedRowProps {
  readonly row: MovedRow;
  readonly left: Book;
  readonly right: Book;
  readonly floor: string;
  readonly nameOf: (path: string) => string;
  /** How many places of the book changed. */
  readonly changes: number;
  readonly tried: boolean;
}

/** One figure on both sides, by how much it moved, and why. */
export const MovedRowView = (props: MovedRowProps): ReactElement => {
  const { row, left, right, floor, nameOf, changes, tried } = props;
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const { move } = row;
  const difference = move?.from === undefined || move.to === undefined ? undefined : move.to - move.from;
  return (
    <li className={row.verdict === undefined ? 'row' : 'row turned'} data-moved={row.id}>
      <SideOf row={row} side="left" book={left} floor={floor} />
      <span className="name">
        {figureName(words, row.id)}
        {difference !== undefined && move !== undefined && (
          <b className="moved">
            {signedQuantity(words, difference, move.kind, { units, book: right, bottles: true })}
          </b>
        )}
        {row.verdict !== undefined && (
          <span className="small turned-to">
            {words.say('compare.verdict', {
              from:
                row.verdict.from === undefined
                  ? words.say('spine.absent')
                  : words.say(`verdict.${row.verdict.from}`),
              to:
                row.verdict.to === undefined
                  ? words.say('spine.absent')
                  : words.say(`verdict.${row.verdict.to}`),
            })}
          </span>
        )}
      </span>
      <SideOf row={row} side="right" book={right} floor={floor} />
      {move !== undefined && changes > 1 && <Why move={move} book={right} nameOf={nameOf} tried={tried} />}
    </li>
  );
};
