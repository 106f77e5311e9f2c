import '../style/questions.css';
import '../style/proof.css';
import '../style/proof-open.css';
import '../style/joins.css';
import type { ReactElement } from 'react';
import { joinProblemText, joinsText } from '../../joins/index.ts';
import { mediaProblemText } from '../../media/problems.text.ts';
import { recordProblemText } from '../../record/problems.text.ts';
import { tableProblemText } from '../../table/problems.text.ts';
import { usePagePart } from '../state/page-context.ts';
import { allWords } from '../words/all-words.ts';
import { joinsPageWords } from '../words/joins-page.text.ts';
import { MoreWords } from '../words/more-words.tsx';
import { proofPageWords } from '../words/proof-page.text.ts';
import { JoinsPage } from './joins-page.tsx';

const catalogue = allWords(
  [],
  [
    joinsText,
    joinProblemText,
    recordProblemText,
    mediaProblemText,
    tableProblemText,
    proofPageWords,
    joinsPageWords,
  ],
);

/** The page of the joins, with its words: fetched when somebody asks for it. */
export const JoinsDoor = ({
  step,
  join,
}: {
  readonly step: string | undefined;
  readonly join: string | undefined;
}): ReactElement => {
  const id = usePagePart((state) => state.id);
  return (
    <MoreWords catalogue={catalogue}>
      <JoinsPage key={id} step={step} join={join} />
    </MoreWords>
  );
};
