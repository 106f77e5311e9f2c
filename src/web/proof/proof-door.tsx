import '../style/questions.css';
import '../style/proof.css';
import '../style/proof-protocol.css';
import '../style/proof-run.css';
import '../style/pad.css';
import '../style/proof-settings.css';
import '../style/proof-open.css';
import type { ReactElement } from 'react';
import { archiveProblemText } from '../../archive/problems.text.ts';
import { mediaProblemText } from '../../media/problems.text.ts';
import { proofProblemText } from '../../proof/problems.text.ts';
import { proofText } from '../../proof/proof.text.ts';
import { settingProblemText } from '../../proof/settings/problems.text.ts';
import { settingsText } from '../../proof/settings/settings.text.ts';
import { recordProblemText } from '../../record/problems.text.ts';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { usePagePart } from '../state/page-context.ts';
import { allWords } from '../words/all-words.ts';
import { MoreWords } from '../words/more-words.tsx';
import { padWords } from '../words/pad.text.ts';
import { proofGatesWords } from '../words/proof-gates.text.ts';
import { proofOpenWords } from '../words/proof-open.text.ts';
import { proofPageWords } from '../words/proof-page.text.ts';
import { proofProtocolWords } from '../words/proof-protocol.text.ts';
import { proofRunWords } from '../words/proof-run.text.ts';
import { proofSendWords } from '../words/proof-send.text.ts';
import { proofSettingsWords } from '../words/proof-settings.text.ts';
import { ProofPage } from './proof-page.tsx';

const catalogue = allWords(
  [],
  [
    utilityWords,
    proofText,
    proofProblemText,
    recordProblemText,
    mediaProblemText,
    archiveProblemText,
    proofPageWords,
    proofProtocolWords,
    proofRunWords,
    padWords,
    proofOpenWords,
    proofGatesWords,
    settingsText,
    settingProblemText,
    proofSettingsWords,
    proofSendWords,
  ],
);

/** The page of the proof with its words, fetched when somebody asks for it; the sheets of its figures come when one is opened. */
export const ProofDoor = ({
  step,
  check,
}: {
  readonly step: string | undefined;
  readonly check: string | undefined;
}): ReactElement => {
  const id = usePagePart((state) => state.id);
  return (
    <MoreWords catalogue={catalogue}>
      <ProofPage key={id} step={step} check={check} />
    </MoreWords>
  );
};
