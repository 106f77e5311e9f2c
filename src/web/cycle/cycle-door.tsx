import '../style/cycle.css';
import '../style/questions.css';
import type { ReactElement } from 'react';
import { floorShiftText } from '../../floor/shift/shift.text.ts';
import { shiftProblemText } from '../../line/shift/shift-problems.text.ts';
import { registry, sheetEntries } from '../../sheets/registry.ts';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { type FindSheet, SheetContext } from '../sheets/sheet-context.ts';
import { usePagePart } from '../state/page-context.ts';
import { allWords } from '../words/all-words.ts';
import { cycleWords } from '../words/cycle.text.ts';
import { MoreWords } from '../words/more-words.tsx';
import { CyclePage } from './cycle-page.tsx';

const catalogue = allWords(sheetEntries, [
  utilityWords,
  cycleWords,
  // why a line can't run is said here too, not at the command line alone
  shiftProblemText,
  floorShiftText,
]);

const findSheet: FindSheet = (id) => registry.get(id)?.sheet;

/** The page of the shift, with its words and the sheets behind it: fetched when somebody asks for it. */
export const CycleDoor = ({ step }: { readonly step: string | undefined }): ReactElement => {
  const id = usePagePart((state) => state.id);
  return (
    <MoreWords catalogue={catalogue}>
      <SheetContext value={findSheet}>
        <CyclePage key={id} step={step} />
      </SheetContext>
    </MoreWords>
  );
};
