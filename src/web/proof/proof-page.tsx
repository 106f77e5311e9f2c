import { type ReactElement, useEffect } from 'react';
import { alreadyHere, type Coming, coming } from '../shell/coming.ts';
import { ComingPart } from '../shell/coming-part.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { QuestionFrame } from '../shell/question-frame.tsx';
import { bookPageAddress, proofAddress } from '../shell/route.ts';
import { WithRecords } from '../state/kept-records.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { FloorChoice } from './floor-choice.tsx';
import { type ProofStep, proofStepNamed, proofSteps } from './proof-steps.ts';
import { ProtocolView } from './protocol/protocol-view.tsx';
import { RecordsState } from './records-state.tsx';
import { WithProof } from './with-proof.tsx';

// the first comes with the page, the others when their question is asked
const views: Readonly<Record<ProofStep, Coming<object>>> = {
  protocol: alreadyHere(ProtocolView),
  run: coming(() => import('./run/run-view.tsx').then((m) => m.RunView)),
  settings: coming(() => import('./settings/settings-view.tsx').then((m) => m.SettingsView)),
  open: coming(() => import('./open/open-view.tsx').then((m) => m.OpenView)),
  gates: coming(() => import('./gates/gates-view.tsx').then((m) => m.GatesView)),
  send: coming(() => import('./send/send-view.tsx').then((m) => m.SendView)),
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
  const view = views[step];
  // it comes while the records are judged; where it does not, that is told when it is shown
  useEffect(() => void view.ask().catch(() => undefined), [view]);
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
            <ComingPart of={view} give={{}} look="quiet" />
          </QuestionFrame>
        </WithProof>
      </WithRecords>
    </div>
  );
};
