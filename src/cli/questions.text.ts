import type { Bundle } from '../text/index.ts';

/** Words of the commands `questions` and `answers`. */
export const questionsText: Bundle = {
  en: {
    'command.questions':
      'what a floor is still asked, first what settles most; also as a sheet (xlsx, csv) to fill in',
    'option.questions.floor': 'which floor; the one that the line is bound for where it is left out',
    'option.questions.format': 'which format of the book; the first where it is left out',
    'option.questions.who': 'only what this side can answer; a sheet is for the site where it is left out',
    'option.questions.out': 'write the questions as a sheet to fill in, .xlsx or .csv',
    'option.questions.language':
      'language of the questions: en where it is left out; a sheet is read back in its own',
    'command.answers': 'what a question sheet that came back puts into the book, row by row',
    'option.answers.floor': 'which floor was asked; the one that the line is bound for where it is left out',
    'option.answers.format': 'which format of the book; the first where it is left out',
    'option.answers.write': 'put what was taken into the book file; without it nothing is changed',

    'cli.sheetFile': 'a name that ends in .xlsx or .csv',

    'questions.head': '{floor}: {count, plural, =0 {nothing is open} one {# question} other {# questions}}',
    'questions.who.site': 'For the site',
    'questions.who.builder': 'For the builder of the line',
    'questions.why.missing': 'nothing is said',
    'questions.why.refused': 'what is said cannot be computed with',
    'questions.why.unsure': 'what is said is not sure enough',
    'questions.why.assumed': 'assumed',
    'questions.choices': 'one of: {choices}',
    'questions.in': 'in {unit}',
    'questions.part': 'to be written on the page of the book',
    'questions.waits': 'waits for it: {what}',
    'questions.widens': 'makes {percent} % of the width of: {what}',
    'questions.written':
      '{count, plural, =0 {No question was} one {# question was} other {# questions were}} written into {path}.',

    'answers.taken':
      '{count, plural, =0 {Nothing was taken} one {# answer was taken} other {# answers were taken}}',
    'answers.row': 'row {row}: {what}: {value}',
    'answers.before': 'in place of {before}',
    'answers.said': 'said by {by}',
    'answers.saidOn': 'on {on}',
    'answers.remark': 'remark: {remark}',
    'answers.notUnderstood':
      '{count, plural, one {# row was not understood and changes nothing} other {# rows were not understood and change nothing}}',
    'answers.rowNot': 'row {row}: {what}: "{given}"',
    'answers.bare': 'row {row}: "{given}"',
    'answers.empty': '{count, plural, one {# row was} other {# rows were}} left without an answer.',
    'answers.missing':
      '{count, plural, one {# question has} other {# questions have}} no row in the sheet any more: {what}',
    'answers.written': '{path} was written with what was taken.',
    'answers.notWritten': 'The book was not changed. "--write" puts in what was taken.',
  },
};
