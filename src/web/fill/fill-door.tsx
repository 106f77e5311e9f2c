import '../style/fill.css';
import '../style/pad.css';
import '../style/questions.css';
import '../style/fill-answers.css';
import '../style/fill-lots.css';
import type { ReactElement } from 'react';
import { bottleSamplesText } from '../../fill/bottle-samples.text.ts';
import { lotText } from '../../fill/lot.text.ts';
import { lotControlText } from '../../fill/lot-control.text.ts';
import { fillProblemText } from '../../floor/fill/fill.text.ts';
import { registry, sheetEntries } from '../../sheets/registry.ts';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { type FindSheet, SheetContext } from '../sheets/sheet-context.ts';
import { usePagePart } from '../state/page-context.ts';
import { allWords } from '../words/all-words.ts';
import { fillWords } from '../words/fill.text.ts';
import { fillAnswerWords } from '../words/fill-answers.text.ts';
import { foundWords } from '../words/found.text.ts';
import { MoreWords } from '../words/more-words.tsx';
import { padWords } from '../words/pad.text.ts';
import { FillPage } from './fill-page.tsx';

const catalogue = allWords(sheetEntries, [
  utilityWords,
  foundWords,
  fillWords,
  padWords,
  fillAnswerWords,
  fillProblemText,
  bottleSamplesText,
  lotText,
  lotControlText,
]);

const findSheet: FindSheet = (id) => registry.get(id)?.sheet;

/** The page on which the fill is set, with its words and the sheets behind it: fetched when somebody asks for it. */
export const FillDoor = ({ step }: { readonly step: string | undefined }): ReactElement => {
  const id = usePagePart((state) => state.id);
  return (
    <MoreWords catalogue={catalogue}>
      <SheetContext value={findSheet}>
        <FillPage key={id} step={step} />
      </SheetContext>
    </MoreWords>
  );
};
