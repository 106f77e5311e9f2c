import { schemaWords } from '../../book/schema-words.ts';
import { questionSheetWords, type SheetWords } from '../../floor/questions/index.ts';
import { fieldWords, makeCatalogue } from '../../text/index.ts';

/** Words of the questions themselves: names of fields, and what the schema of the book says of each. */
export const questionWords: SheetWords = makeCatalogue([schemaWords(), fieldWords, questionSheetWords]);
