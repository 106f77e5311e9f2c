import type { Bundle } from '../text/index.ts';

/** Words of the command `words`. */
export const wordsCommandText: Bundle = {
  en: {
    'command.words':
      'the English of the papers as a sheet (xlsx, csv) in which somebody writes another language; "print --beside" takes it back',
    'option.words.language': 'a language that is held here, to stand beside the English as a start',
    'option.words.paper': 'only what this paper may say; all papers where it is left out',
    'option.words.out': 'file to write; words.xlsx where it is left out',
    'words.written':
      '{path} was written: {texts, plural, one {# text} other {# texts}}, {held} of them held here. Write into the light column, then: twinfloor print BOOK.json --paper PAPER --beside {path}',
  },
};
