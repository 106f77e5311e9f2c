import { type ComponentType, lazy, type ReactElement, Suspense } from 'react';
import { RecordsState } from '../proof/records-state.tsx';
import { QuestionFrame } from '../shell/question-frame.tsx';
import { joinsAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { WithRecords } from '../state/kept-records.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { CratesDoor } from './crates/crates-door.tsx';
import { FloorHere } from './floor-here.tsx';
import { type JoinsStep, joinsStepNamed, joinsSteps } from './joins-steps.ts';
import { WithJoins } from './with-joins.tsx';

// each comes when its question is asked
const views: Readonly<Record<JoinsStep, ComponentType>> = {
  loose: lazy(() =>
    untilFetched(() => import('./loose/loose-view.tsx')).then((m) => ({ default: m.LooseView })),
  ),
  order: lazy(() =>
    untilFetched(() => import('./order/order-view.tsx')).then((m) => ({ default: m.OrderView })),
  ),
  make: lazy(() => untilFetched(() => import('./make/make-view.tsx')).then((m) => ({ default: m.MakeView }))),
  faults: lazy(() =>
    untilFetched(() => import('./faults/faults-view.tsx')).then((m) => ({ default: m.FaultsView })),
  ),
  // with the page itself: what it shares with the proof and the panel would else be cut into files that wait for each other
  crates: CratesDoor,
};

/** From what hangs loose to what is recorded as tested: one question a view. */
export const JoinsPage = ({
  step: named,
  join,
}: {
  readonly step: string | undefined;
  readonly join: string | undefined;
}): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const step = joinsStepNamed(named);
  const View = views[step];
  return (
    <div className="joins-page" id="figures" tabIndex={-1} data-step={step}>
      <WithRecords>
        <WithJoins asked={join} absent={<p className="message">{say('page.loading')}</p>}>
          <QuestionFrame
            steps={joinsSteps}
            step={step}
            words="joining"
            addressOf={(one) => joinsAddress(id, one)}
            beside={<FloorHere />}
          >
            <RecordsState />
            <Suspense fallback={<p className="quiet">{say('page.loading')}</p>}>
              <View />
            </Suspense>
          </QuestionFrame>
        </WithJoins>
      </WithRecords>
    </div>
  );
};
