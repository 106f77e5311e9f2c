import type { Bundle } from '../text/index.ts';

/** Words that all papers share: the head, the foot, marks in place. */
export const papersText: Bundle = {
  en: {
    'paper.untitled': 'A line without a title',
    'paper.revision': 'revision {revision}',
    'paper.hash': 'book {hash}',
    'paper.stamp': '{parts}',
    'paper.caution':
      'A prediction from what the book says. Electrical, pressure, lifting, chemical and guarding work follow the local code and licensed practice.',
    'paper.care': 'Take care.',
    'paper.unreviewed': 'Translated, not reviewed: where it matters, the English holds.',
    'paper.bottles': 'bottles{per}',
    'paper.interval': '{low} … {high}',
    'paper.range': '{low} to {high}',
    'paper.percent': '{n} %',
    'paper.unknown': 'not known',
    'paper.assumed': 'assumed',
    'paper.ifSaid': 'if what was said holds',
    'paper.margin.ample': 'more than ten times',
    'paper.margin.over': '{percent} to spare',
    'paper.margin.under.least': '{percent} missing',
    'paper.margin.under.most': '{percent} too much',
    'paper.answer.both': '{printed} ({text})',
    'paper.from': '{builder} to {customer}',
    'paper.serial': 'serial {serial}',
    'paper.format': 'format {format}',
    'paper.whole': 'Book of this paper, SHA-256: {hash}',
    'paper.key.asked': 'asked, at least',
    'paper.key.most': 'asked, at most',
    'paper.key.has': 'the floor has',
    'paper.key.missing': 'missing, or too much',
    'paper.key.unknown': 'not known',
    'paper.key.interval': '95 % interval',
  },
};
