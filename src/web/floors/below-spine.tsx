import { lazy, memo, type ReactElement, Suspense } from 'react';
import { AskPart } from '../ask/ask-part.tsx';
import { untilFetched } from '../shell/until-fetched.ts';
import { useWords } from '../state/page-context.ts';
import { FillPart } from '../supply/fill-part.tsx';
import { SupplyPart } from '../supply/supply-part.tsx';
import { FloorNotes } from './floor-notes.tsx';
import { useFacing } from './use-facing.ts';
import { WhenNear } from './when-near.tsx';

// the chart library weighs more than the rest of the page: it comes when someone scrolls towards the charts
const ChartsPart = lazy(() =>
  untilFetched(() => import('../charts/charts-part.tsx').then((m) => ({ default: m.ChartsPart }))),
);

/** What stands under the figures of the facing floors: notes, what to ask next, the supplies, the lanes, the charts. */
export const BelowSpine = memo((): ReactElement | null => {
  const { say } = useWords();
  const facing = useFacing();
  if (facing === undefined) return null;
  const { book, floors } = facing;
  return (
    <>
      <FloorNotes floors={floors} />
      <AskPart book={book} floors={floors} />
      <SupplyPart book={book} floors={floors} />
      <FillPart book={book} floors={floors} />
      <WhenNear>
        <Suspense fallback={<p className="quiet">{say('charts.loading')}</p>}>
          <ChartsPart book={book} floors={floors} />
        </Suspense>
      </WhenNear>
    </>
  );
});

BelowSpine.displayName = 'BelowSpine';
