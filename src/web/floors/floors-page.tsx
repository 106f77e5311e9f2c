import { lazy, type ReactElement, Suspense } from 'react';
import { AskPart } from '../ask/ask-part.tsx';
import { LineDrawing } from '../line/line-drawing.tsx';
import { untilFetched } from '../shell/until-fetched.ts';
import { usePageState, useWords } from '../state/page-context.ts';
import { FillPart } from '../supply/fill-part.tsx';
import { SupplyPart } from '../supply/supply-part.tsx';
import { WorkingPanel } from '../working/working-panel.tsx';
import { FloorNotes } from './floor-notes.tsx';
import { RateLive } from './rate-live.tsx';
import { Spine } from './spine.tsx';
import { WhenNear } from './when-near.tsx';

// the chart library weighs more than the rest of the page: it comes when someone scrolls towards the charts
const ChartsPart = lazy(() =>
  untilFetched(() => import('../charts/charts-part.tsx').then((m) => ({ default: m.ChartsPart }))),
);

/** The page of a book: the line, the floors facing each other, the supplies, the charts, the working beside. */
export const FloorsPage = (): ReactElement | null => {
  const { shown, assessment, facing, opened } = usePageState();
  const { say } = useWords();
  if (shown === undefined || assessment === undefined) return null;
  const [left, right] = facing.map((tag) => assessment.floors.find((floor) => floor.floor === tag));
  const floors = [left, right].filter((floor) => floor !== undefined);
  return (
    <div className="floors">
      <div
        className={opened === undefined ? 'floors-main' : 'floors-main beside-sheet'}
        id="figures"
        tabIndex={-1}
      >
        <LineDrawing book={shown} floors={floors} />
        {floors.length === 0 ? (
          <p className="message">{say('heads.noFloor')}</p>
        ) : (
          <>
            <Spine book={shown} assessment={assessment} left={left} right={right} />
            <RateLive floors={floors} />
            <FloorNotes floors={floors} />
            <AskPart book={shown} floors={floors} />
            <SupplyPart book={shown} floors={floors} />
            <FillPart book={shown} floors={floors} />
            <WhenNear>
              <Suspense fallback={<p className="quiet">{say('charts.loading')}</p>}>
                <ChartsPart book={shown} floors={floors} />
              </Suspense>
            </WhenNear>
          </>
        )}
      </div>
      <WorkingPanel />
    </div>
  );
};
