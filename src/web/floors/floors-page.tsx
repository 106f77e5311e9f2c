import type { ReactElement } from 'react';
import { Later } from '../state/later.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { WorkingPanel } from '../working/working-panel.tsx';
import { BelowSpine } from './below-spine.tsx';
import { FacingLine } from './facing-line.tsx';
import { RateLive } from './rate-live.tsx';
import { Spine } from './spine.tsx';
import { useFacing } from './use-facing.ts';

/** The page of a book: the line, the floors facing each other, what they rest on, the working beside. */
export const FloorsPage = (): ReactElement | null => {
  const { say } = useWords();
  const facing = useFacing();
  const open = usePagePart(({ opened }) => opened !== undefined);
  if (facing === undefined) return null;
  const { floors, ...spine } = facing;
  return (
    <div className="floors">
      <div className={open ? 'floors-main beside-sheet' : 'floors-main'} id="figures" tabIndex={-1}>
        <Later>
          <FacingLine />
        </Later>
        {floors.length === 0 ? (
          <p className="message">{say('heads.noFloor')}</p>
        ) : (
          <>
            <Spine {...spine} />
            <RateLive floors={floors} />
            <Later>
              <BelowSpine />
            </Later>
          </>
        )}
      </div>
      <Later>
        <WorkingPanel />
      </Later>
    </div>
  );
};
