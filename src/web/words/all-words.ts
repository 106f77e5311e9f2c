import { bookProblemText } from '../../book/index.ts';
import { foundProblemText } from '../../floor/found/problems.text.ts';
import { kindText, quantityProblemText } from '../../quantity/index.ts';
import { sheetProblemText } from '../../sheets/problems.text.ts';
import type { SheetEntry } from '../../sheets/sheet-entry.ts';
import {
  type Bundle,
  type Catalogue,
  fieldWords,
  flattened,
  makeCatalogue,
  prefixed,
} from '../../text/index.ts';
import { firstWords } from '../../text/words/first-words.ts';
import { askWords } from './ask.text.ts';
import { bookWords } from './book.text.ts';
import { floorsWords } from './floors.text.ts';
import { pageWords } from './page.text.ts';
import { schemaWords } from './schema-words.ts';
import { workingWords } from './working.text.ts';

/** The words of the first figures: every page has them, so that no page gathers them again. */
const first = makeCatalogue([
  ...firstWords,
  quantityProblemText,
  bookProblemText,
  sheetProblemText,
  foundProblemText,
  prefixed('kind.', kindText),
  schemaWords(),
  fieldWords,
  bookWords,
  pageWords,
  floorsWords,
  workingWords,
  askWords,
]);

/** The words of the first figures, with those of sheets and of the pages that come when somebody asks for them. */
export const allWords = (sheets: readonly SheetEntry[] = [], more: readonly Bundle[] = []): Catalogue =>
  sheets.length + more.length === 0
    ? first
    : first.with([
        ...more,
        ...sheets.flatMap(({ sheet, text }) => [
          flattened(`sheet.${sheet.id}`, text),
          // a note and a problem are found by their code alone, wherever they come up
          flattened('', { en: text.en.notes }),
          flattened('', { en: text.en.problems ?? {} }),
        ]),
      ]);
