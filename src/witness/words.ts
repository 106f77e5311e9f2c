import { proofText } from '../proof/index.ts';
import { settingsText } from '../proof/settings/settings.text.ts';
import { kindText } from '../quantity/kinds.text.ts';
import { fieldWords, makeCatalogue, prefixed, sharedWords } from '../text/index.ts';
import { utilityWords } from '../text/words/utilities.text.ts';
import { witnessText } from './witness.text.ts';

/** Every word that a witness file may say. */
export const words = makeCatalogue([
  ...sharedWords,
  fieldWords,
  prefixed('kind.', kindText),
  utilityWords,
  proofText,
  settingsText,
  witnessText,
]);
