export { type Bundle, type Catalogue, flattened, makeCatalogue, prefixed } from './catalogue.ts';
export { type Language, languageNames, languageOf, languages } from './languages/languages.ts';
export { loadTranslation } from './languages/load-translation.ts';
export { type Message, type Part, type Parts, parseMessage, partsOf } from './message.ts';
export { numberText } from './number-text.ts';
export { pseudoLocale } from './pseudo.ts';
export type { Translation } from './translation.ts';
export { fieldWords } from './words/fields.text.ts';
export { sharedWords } from './words/index.ts';
