import { schemaWords } from '../book/schema-words.ts';
import { lotText } from '../fill/lot.text.ts';
import { fillProblemText } from '../floor/fill/fill.text.ts';
import { joinsText } from '../joins/index.ts';
import { packingText } from '../packing/packing.text.ts';
import { proofText } from '../proof/proof.text.ts';
import { settingsText } from '../proof/settings/index.ts';
import { kindText } from '../quantity/kinds.text.ts';
import { sheetEntries } from '../sheets/registry.ts';
import { type Bundle, fieldWords, makeCatalogue, prefixed, sharedWords } from '../text/index.ts';
import { cardText } from './card/card.text.ts';
import { certificateText } from './certificate/certificate.text.ts';
import { dossierText } from './dossier/dossier.text.ts';
import { filledText } from './fill/fill.text.ts';
import { labelsText } from './labels/labels.text.ts';
import { openText } from './open/open.text.ts';
import { packingPaperText } from './packing/packing.text.ts';
import { papersText } from './papers.text.ts';
import { planText } from './plan/plan.text.ts';
import { predictionText } from './prediction/prediction.text.ts';
import { preparationText } from './preparation/preparation.text.ts';
import { protocolText } from './protocol/protocol.text.ts';
import { registerText } from './register/register.text.ts';
import { scheduleText } from './schedule/schedule.text.ts';
import { workingsText } from './workings/workings.text.ts';

/** The words that papers speak with, later ones before earlier ones. */
export const paperBundles: readonly Bundle[] = [
  // a note is found by its code alone, wherever it comes up
  ...sheetEntries.map(({ text }) => ({ en: text.en.notes })),
  ...sharedWords,
  schemaWords(),
  fieldWords,
  prefixed('kind.', kindText),
  papersText,
  predictionText,
  preparationText,
  labelsText,
  joinsText,
  scheduleText,
  packingText,
  packingPaperText,
  proofText,
  protocolText,
  settingsText,
  registerText,
  openText,
  lotText,
  fillProblemText,
  filledText,
  workingsText,
  planText,
  cardText,
  certificateText,
  dossierText,
];

/** Every word that a paper may say. */
export const words = makeCatalogue(paperBundles);
