import { archiveProblemText } from '../archive/problems.text.ts';
import { bookProblemText } from '../book/problems.text.ts';
import { bottleSamplesText } from '../fill/bottle-samples.text.ts';
import { lotText } from '../fill/lot.text.ts';
import { lotControlText } from '../fill/lot-control.text.ts';
import { fillProblemText } from '../floor/fill/fill.text.ts';
import { fillSheetWords } from '../floor/fill/sheet/sheet-words.text.ts';
import { foundProblemText } from '../floor/found/problems.text.ts';
import { answerProblemText, questionSheetWords } from '../floor/questions/questions.text.ts';
import { floorShiftText } from '../floor/shift/shift.text.ts';
import { joinProblemText, joinsText } from '../joins/index.ts';
import { shiftProblemText as lineShiftText } from '../line/shift/shift-problems.text.ts';
import { mediaProblemText } from '../media/problems.text.ts';
import { packingText } from '../packing/packing.text.ts';
import { wordProblemText } from '../papers/beside/problems.text.ts';
import { proofProblemText, proofText } from '../proof/index.ts';
import { settingProblemText } from '../proof/settings/problems.text.ts';
import { settingsText } from '../proof/settings/settings.text.ts';
import { kindText } from '../quantity/kinds.text.ts';
import { quantityProblemText } from '../quantity/problems.text.ts';
import { recordProblemText } from '../record/problems.text.ts';
import { sheetProblemText } from '../sheets/problems.text.ts';
import { storeProblemText } from '../store/problems.text.ts';
import { tableProblemText } from '../table/problems.text.ts';
import { makeCatalogue, prefixed, sharedWords } from '../text/index.ts';
import { archiveText } from './archive.text.ts';
import { commandsText } from './commands.text.ts';
import { fillText } from './fill.text.ts';
import { foundText } from './found.text.ts';
import { joinsCommandText } from './joins.text.ts';
import { cliProblemText } from './problems.text.ts';
import { proofCommandText } from './proof.text.ts';
import { questionsText } from './questions.text.ts';
import { settingsCommandText } from './settings.text.ts';
import { shiftText } from './shift.text.ts';
import { utilitiesText } from './utilities.text.ts';
import { verifyText } from './verify.text.ts';
import { witnessCommandText } from './witness.text.ts';
import { wordsCommandText } from './words.text.ts';

/** Every word that the command line may say, but those of the sheets, which come with their sheet. */
export const words = makeCatalogue([
  commandsText,
  utilitiesText,
  fillText,
  fillProblemText,
  fillSheetWords,
  lotText,
  lotControlText,
  bottleSamplesText,
  shiftText,
  lineShiftText,
  floorShiftText,
  foundText,
  foundProblemText,
  recordProblemText,
  verifyText,
  archiveText,
  archiveProblemText,
  mediaProblemText,
  packingText,
  witnessCommandText,
  proofText,
  proofProblemText,
  proofCommandText,
  settingsText,
  settingProblemText,
  settingsCommandText,
  joinsText,
  joinProblemText,
  joinsCommandText,
  questionsText,
  wordsCommandText,
  wordProblemText,
  questionSheetWords,
  ...sharedWords,
  quantityProblemText,
  prefixed('kind.', kindText),
  bookProblemText,
  storeProblemText,
  sheetProblemText,
  tableProblemText,
  answerProblemText,
  cliProblemText,
]);
