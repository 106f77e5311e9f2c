import '../../style/joins-crates.css';
import type { ReactElement } from 'react';
import { packingText } from '../../../packing/packing.text.ts';
import { proofText } from '../../../proof/proof.text.ts';
import { utilityWords } from '../../../text/words/utilities.text.ts';
import { Later } from '../../state/later.tsx';
import { usePagePart } from '../../state/page-context.ts';
import { allWords } from '../../words/all-words.ts';
import { joinsCratesWords } from '../../words/joins-crates.text.ts';
import { MoreWords } from '../../words/more-words.tsx';
import { WorkingPanel } from '../../working/working-panel.tsx';
import { CratesView } from './crates-view.tsx';

const catalogue = allWords([], [utilityWords, proofText, packingText, joinsCratesWords]);

/** What travels, with the working of each figure beside it. */
export const CratesDoor = (): ReactElement => {
  const opened = usePagePart((state) => state.opened);
  return (
    <MoreWords catalogue={catalogue}>
      <div className="crates-beside">
        <div className={opened === undefined ? 'crates-main' : 'crates-main beside-sheet'}>
          <CratesView />
        </div>
        <Later>
          <WorkingPanel />
        </Later>
      </div>
    </MoreWords>
  );
};
