import { lazy, type ReactElement, Suspense } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { QuestionSteps } from '../shell/question-steps.tsx';
import { bookPageAddress, cycleAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
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
  const next = cycleSteps[cycleSteps.indexOf(step) + 1];
  const View = views[step];
  return (
    <div className="cycle-page" id="figures" tabIndex={-1} data-step={step}>
      <WithShifts
        asksWorth={step === 'hold'}
        absent={
          <p className="message">
            {say('cycle.noFloor')}{' '}
            <GoLink to={bookPageAddress(id, '/floors')}>{say('cycle.noFloor.write')}</GoLink>
          </p>
        }
      >
        <QuestionSteps
          steps={cycleSteps}
          step={step}
          label={say('cycle.steps')}
          nameOf={(one) => say(`cycle.step.${one}`)}
          addressOf={(one) => cycleAddress(id, one)}
        />
        <h2>{say(`cycle.question.${step}`)}</h2>
        <RunBar />
        <Suspense fallback={<p className="message">{say('page.loading')}</p>}>
          <View />
        </Suspense>
        {next !== undefined && (
          <p className="cycle-next">
            <GoLink to={cycleAddress(id, next)}>
              {say('cycle.next', { question: say(`cycle.question.${next}`) })}
            </GoLink>
          </p>
        )}
      </WithShifts>
    </div>
  );
};
