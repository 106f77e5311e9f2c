import type { KeyboardEvent, ReactElement } from 'react';
import { type BoxEnd, endKey } from '../../../joins/index.ts';
import { useWords } from '../../state/page-context.ts';
import type { PlacedNow } from './placement-draft.ts';

/** Every end of a box with where it lies on the photograph: the same by keys and for who can't see it. */
export const EndList = ({
  ends,
  here,
  nameOf,
  choose,
  takeOff,
  press,
}: {
  readonly ends: readonly BoxEnd[];
  readonly here: ReadonlyMap<string, PlacedNow>;
  readonly nameOf: (end: BoxEnd) => string;
  readonly choose: (key: string) => void;
  readonly takeOff: (end: BoxEnd) => void;
  readonly press: (event: KeyboardEvent, key: string) => void;
}): ReactElement => {
  const { say, number } = useWords();
  const percent = (share: number): string => number(Math.round(share * 1000) / 10);
  return (
    <details className="end-list">
      <summary>{say('joining.desk.ends', { n: ends.length })}</summary>
      <ul>
        {ends.map((end) => {
          const key = endKey(end);
          const placed = here.get(key);
          return (
            <li key={key} data-end-row={key}>
              <button
                type="button"
                className="link"
                onClick={() => choose(key)}
                onKeyDown={(event) => press(event, key)}
              >
                {nameOf(end)}
              </button>
              <span className="small quiet">
                {placed === undefined
                  ? say('joining.desk.nowhere')
                  : say('joining.desk.at', { x: percent(placed.point.x), y: percent(placed.point.y) })}
              </span>
              {placed !== undefined && (
                <button type="button" className="link" data-act="take-off" onClick={() => takeOff(end)}>
                  {say('joining.desk.off')}
                  <span className="said"> {nameOf(end)}</span>
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </details>
  );
};
