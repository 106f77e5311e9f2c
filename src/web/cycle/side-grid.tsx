import type { ReactElement, ReactNode } from 'react';
import { floorClass } from '../floors/floor-class.ts';
import { type SideShifts, useShifts } from './with-shifts.tsx';

/** The builder's floor to the left of what both share, the other to the right. */
export const FacingRow = ({
  name,
  said,
  of,
  row,
}: {
  readonly name: ReactNode;
  /** For whoever does not see which floor stands where. */
  readonly said: string;
  readonly of: (side: SideShifts, at: 'left' | 'right') => ReactNode;
  readonly row: string;
}): ReactElement => {
  const { book, sides } = useShifts();
  const [left, right] = sides;
  const cell = (side: SideShifts | undefined, at: 'left' | 'right'): ReactElement =>
    side === undefined ? (
      <span className={`cycle-side ${at}`} />
    ) : (
      <div className={`cycle-side ${at} ${floorClass(book, side.floor.floor)}`} data-floor={side.floor.floor}>
        <span className="said">
          {side.floor.name}, {said}:{' '}
        </span>
        {of(side, at)}
      </div>
    );
  return (
    <li className="row cycle-row" data-row={row}>
      {cell(left, 'left')}
      <span className="name">{name}</span>
      {cell(right, 'right')}
    </li>
  );
};

/** The two floors by name, with what each says of itself under it. */
export const FacingHeads = ({
  middle,
  of,
}: {
  readonly middle: ReactNode;
  readonly of: (side: SideShifts) => ReactNode;
}): ReactElement => {
  const { book, sides } = useShifts();
  const [left, right] = sides;
  const head = (side: SideShifts | undefined, at: string): ReactElement =>
    side === undefined ? (
      <div />
    ) : (
      <div className={`${at} ${floorClass(book, side.floor.floor)}`} data-head={side.floor.floor}>
        <h3>{side.floor.name}</h3>
        {of(side)}
      </div>
    );
  return (
    <div className="heads">
      {head(left, 'left')}
      <div className="middle">{middle}</div>
      {head(right, 'right')}
    </div>
  );
};
