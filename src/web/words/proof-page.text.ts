import type { Bundle } from '../../text/index.ts';

/** Words of the frame of the page of the proof; each of its questions brings its own. */
export const proofPageWords: Bundle = {
  en: {
    'proving.steps': 'Questions, in their order',
    'proving.step.protocol': 'Protocol',
    'proving.step.run': 'Run it',
    'proving.step.settings': 'Settings',
    'proving.step.open': 'What is open',
    'proving.step.gates': 'Gates',
    'proving.step.send': 'Send it',
    'proving.question.protocol': 'What must be shown here, and what can be proved?',
    'proving.question.run': 'Which check is next, and does it hold?',
    'proving.question.settings': 'What is set, and what has changed?',
    'proving.question.open': 'What keeps it open, and who holds it?',
    'proving.question.gates': 'May it go on, and who signs?',
    'proving.question.send': 'How do the others see it?',
    'proving.next': 'Next: {question}',
    'proving.floor': 'Floor',
    'proving.noFloor': 'The book has no floor yet: nothing can be proved anywhere.',
    'proving.noFloor.write': 'Write the floors',
    'proving.reading': 'The records are being read: what is said holds without them.',
    'proving.unreachable': 'The server is away: what is recorded waits in this browser.',
    'proving.waiting': '{n, plural, one {One record waits} other {# records wait}} for the server.',
    'proving.media.camera': 'Take a photograph',
    'proving.media.attach': 'Add a photograph, film or sound',
    'proving.media.one': 'file {n}',
    'proving.media.of': 'evidence {n}: {of}',
    'proving.media.leave': 'leave out file {n}',
    'proving.loose': 'This browser is full: what is recorded is in this page alone. Leave it open.',
  },
};
