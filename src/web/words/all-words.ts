import { bookProblemText } from '../../book/index.ts';
import { kindText, quantityProblemText } from '../../quantity/index.ts';
import { sheetProblemText } from '../../sheets/problems.text.ts';
import { registry } from '../../sheets/registry.ts';
import { type Catalogue, flattened, makeCatalogue, prefixed, sharedWords } from '../../text/index.ts';
import { askWords } from './ask.text.ts';
import { bookWords } from './book.text.ts';
import { fieldWords } from './fields.text.ts';
import { firstBookWords } from './first-book.text.ts';
import { floorsWords } from './floors.text.ts';
import { pageWords } from './page.text.ts';
import { schemaWords } from './schema-words.ts';
import { workingWords } from './working.text.ts';

/** Every word that the pages may say. */
export const allWords = (): Catalogue =>
  makeCatalogue([
    ...sharedWords,
    quantityProblemText,
    bookProblemText,
    sheetProblemText,
    prefixed('kind.', kindText),
    schemaWords(),
    fieldWords,
    bookWords,
    pageWords,
    firstBookWords,
    floorsWords,
    workingWords,
    askWords,
    ...[...registry.values()].flatMap(({ sheet, text }) => [
      flattened(`sheet.${sheet.id}`, text),
      // a note and a problem are found by their code alone, wherever they come up
      flattened('', { en: text.en.notes }),
      flattened('', { en: text.en.problems ?? {} }),
    ]),
  ]);
