import type { ReactElement } from 'react';
import type { Lane } from '../../book/index.ts';
import { Bottle } from '../line/bottle.tsx';
import { useWords } from '../state/page-context.ts';

export interface LaneKeysProps {
  readonly lanes: readonly Lane[];
  readonly chosen: string;
  /** Lanes whose bottles of this row are written down. */
  readonly done: readonly string[];
  readonly choose: (lane: string) => void;
}

/** The row of bottles as it stands under the lanes: filled where it is written down, the one that is next framed. */
export const LaneKeys = ({ lanes, chosen, done, choose }: LaneKeysProps): ReactElement => {
  const { say } = useWords();
  return (
    <fieldset className="lane-keys" aria-label={say('weigh.lane')}>
      {lanes.map(({ tag, name }) => (
        <button
          type="button"
          key={tag}
          data-lane={tag}
          data-done={done.includes(tag)}
          aria-pressed={tag === chosen}
          onClick={() => choose(tag)}
        >
          <svg viewBox="0 0 24 40" width="21" height="35" aria-hidden="true">
            <Bottle x={12} y={38} />
          </svg>
          <span>
            {name ?? tag}
            {done.includes(tag) && <span className="said"> {say('weigh.lane.done')}</span>}
          </span>
        </button>
      ))}
    </fieldset>
  );
};
