import { type ComponentType, lazy, type ReactElement, Suspense } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { QuestionFrame } from '../shell/question-frame.tsx';
import { bookPageAddress, proofAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { WithRecords } from '../state/kept-records.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { FloorChoice } from './floor-choice.tsx';
import { type ProofStep, proofStepNamed, proofSteps } from './proof-steps.ts';
import { RecordsState } from './records-state.tsx';
import { WithProof } from './with-proof.tsx';

// each comes when its question is asked
const views: Readonly<Record<ProofStep, ComponentType>> = {
  protocol: lazy(() =>
    untilFetched(() => import('./protocol/protocol-view.tsx')).then((m) => ({ default: m.ProtocolView })),
  ),
  run: lazy(() => untilFetched(() => import('./run/run-view.tsx')).then((m) => ({ default: m.RunView }))),
  settings: lazy(() =>
    untilFetched(() => import('./settings/settings-view.tsx')).then((m) => ({ default: m.SettingsView })),
  ),
  open: lazy(() => untilFetched(() => import('./open/open-view.tsx')).then((m) => ({ default: m.OpenView }))),
  gates: lazy(() =>
    untilFetched(() => import('./gates/gates-view.tsx')).then((m) => ({ default: m.GatesView })),
  ),
  send: lazy(() => untilFetched(() => import('./send/send-view.tsx')).then((m) => ({ default: m.SendView }))),
};

/** From the protocol to the signature: one question a view. */
export const ProofPage = ({
  step: named,
  check,
}: {
  readonly step: string | undefined;
  readonly check: string | undefined;
}): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const step = proofStepNamed(named);
  const View = views[step];
  return (
    <div className="proof-page" id="figures" tabIndex={-1} data-step={step}>
      <WithRecords>
        <WithProof
          asked={check}
          coming={<p className="quiet">{say('page.loading')}</p>}
          absent={
            <p className="message">
              {say('proving.noFloor')}{' '}
              <GoLink to={bookPageAddress(id, '/floors')}>{say('proving.noFloor.write')}</GoLink>
            </p>
          }
        >
          <QuestionFrame
            steps={proofSteps}
            step={step}
            words="proving"
            addressOf={(one) => proofAddress(id, one)}
            beside={<FloorChoice />}
          >
            <RecordsState />
            <Suspense fallback={<p className="quiet">{say('page.loading')}</p>}>
              <View />
            </Suspense>
          </QuestionFrame>
        </WithProof>
      </WithRecords>
    </div>
  );
};
