import { lazy, type ReactElement, Suspense } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { QuestionFrame } from '../shell/question-frame.tsx';
import { bookPageAddress, cycleAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { WithRecords } from '../state/kept-records.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { cycleStepNamed, cycleSteps } from './cycle-steps.ts';
import { RunBar } from './run-bar.tsx';
import { ShiftView } from './shift-view.tsx';
import { WithShifts } from './with-shifts.tsx';

// each comes when its question is asked
const HoldView = lazy(() =>
  untilFetched(() => import('./hold-view.tsx')).then((m) => ({ default: m.HoldView })),
);
const WatchView = lazy(() =>
  untilFetched(() => import('./watch-view.tsx')).then((m) => ({ default: m.WatchView })),
);
const WashView = lazy(() =>
  untilFetched(() => import('./wash-view.tsx')).then((m) => ({ default: m.WashView })),
);
const ProofView = lazy(() =>
  untilFetched(() => import('./proof-view.tsx')).then((m) => ({ default: m.ProofView })),
);

const views = { shift: ShiftView, hold: HoldView, watch: WatchView, wash: WashView, proof: ProofView };

/** A shift of the line on both floors: one question a view. */
export const CyclePage = ({ step: named }: { readonly step: string | undefined }): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const step = cycleStepNamed(named);
  const View = views[step];
  return (
    <div className="cycle-page" id="figures" tabIndex={-1} data-step={step}>
      <WithRecords>
        <WithShifts
          asksWorth={step === 'hold'}
          absent={
            <p className="message">
              {say('cycle.noFloor')}{' '}
              <GoLink to={bookPageAddress(id, '/floors')}>{say('cycle.noFloor.write')}</GoLink>
            </p>
          }
        >
          <QuestionFrame
            steps={cycleSteps}
            step={step}
            words="cycle"
            addressOf={(one) => cycleAddress(id, one)}
          >
            <RunBar />
            <Suspense fallback={<p className="message">{say('page.loading')}</p>}>
              <View />
            </Suspense>
          </QuestionFrame>
        </WithShifts>
      </WithRecords>
    </div>
  );
};
