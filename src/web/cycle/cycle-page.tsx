import { type KeyboardEvent, lazy, type ReactElement, Suspense, useContext } from 'react';
import { GoContext, GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, cycleAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { type CycleStep, cycleStepNamed, cycleSteps } from './cycle-steps.ts';
import { RunBar } from './run-bar.tsx';
import { ShiftView } from './shift-view.tsx';
import { WithShifts } from './with-shifts.tsx';

/** The questions in their order; left and right go from one to the next. */
const Steps = ({ step }: { readonly step: CycleStep }): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const go = useContext(GoContext);
  const turn = (event: KeyboardEvent): void => {
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    const next = cycleSteps[cycleSteps.indexOf(step) + by];
    if (by === 0 || next === undefined) return;
    event.preventDefault();
    go(cycleAddress(id, next));
    requestAnimationFrame(() => document.querySelector<HTMLElement>('.cycle-steps [aria-current]')?.focus());
  };
  return (
    <nav className="cycle-steps" aria-label={say('cycle.steps')} onKeyDown={turn}>
      <ol>
        {cycleSteps.map((one, i) => (
          <li key={one}>
            <GoLink to={cycleAddress(id, one)} current={one === step}>
              <b>{i + 1}</b> {say(`cycle.step.${one}`)}
            </GoLink>
          </li>
        ))}
      </ol>
    </nav>
  );
};

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
        <Steps step={step} />
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
