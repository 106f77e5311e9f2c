import type { Bundle } from '../../text/index.ts';

/** Words of the page on which two revisions, or the book and a remedy, face each other. */
export const compareWords: Bundle = {
  en: {
    'compare.title': 'Before and after',
    'compare.left': 'On the left',
    'compare.right': 'On the right',
    'compare.floor': 'Floor that is looked at',
    'compare.revision': 'revision {n}',
    'compare.revision.why': 'revision {n}: {reason}',
    'compare.trial': 'on trial: {label}',
    'compare.trialGone': 'No remedy is on trial any more. What is shown is the newest revision.',
    'compare.alone.revision':
      'This book has one revision. As soon as something is changed, both can face each other here.',
    'compare.loading': 'Opening both.',
    'compare.unread':
      'One of the two can not be had: the server does not answer, or there is no such revision.',
    'compare.comparing': 'Each change is being tried on its own.',
    'compare.failed': 'The comparison broke off.',
    'compare.still': 'No figure of this floor moved.',
    'compare.same': 'Nothing: both are the same.',
    'compare.changes': 'What was changed in the book',
    'compare.oneCause': 'All that moved follows from this one change.',
    'compare.more': 'and {n} more',
    'compare.nothing': 'not known',
    'compare.list': '{n, plural, one {# entry} other {# entries}}',
    'compare.part': 'as written',
    'compare.verdict': '{from}, now {to}',
    'compare.alone': '{place}: {effect} on its own',
    'compare.alone.unknown': '{place}: on its own it leaves this not known',
    'compare.together': 'no change does it on its own, only together',
    'compare.tooMany': 'too many changes to say which does what',
    'compare.revisions': 'Revisions',
    'compare.number': 'revision',
    'compare.when': 'saved',
    'compare.reason': 'why',
    'compare.beside': 'face each other',
    'compare.withBefore': 'with revision {n}',
  },
};
