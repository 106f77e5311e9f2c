import type { Bundle } from '../text/index.ts';

/** Words of the command `proof`; those of checks, conditions and verdicts stand beside them. */
export const proofCommandText: Bundle = {
  en: {
    'command.proof':
      'what is to be proved on each floor, under which conditions, what was, what carries over, what the gates lack',
    'option.proof.format': 'which format of the book; the first where it is left out',
    'option.proof.floor': 'only this floor',
    'option.proof.gate': 'only this gate, with everything that it lacks',
    'option.proof.from':
      'day on which what is left begins, as 2027-03-08; that of the book where it is left out',
    'option.proof.units': 'units to print; those of the book where it is left out',

    'proof.by': ', by {by} %',
    'proof.conditions': 'Conditions',
    'proof.carried':
      '{n, plural, one {# check comes over from {from}, where it was} other {# checks come over from {from}, where they were}} not proved',
    'proof.undone': '{n, plural, one {# of them was} other {# of them were}} not tried there.',
    'proof.counts': '{n, plural, one {# check} other {# checks}}: {counts}.',
    'proof.next': 'Can be done now: {next}.',
    'proof.blocked': '{n, plural, one {# waits} other {# wait}} for what comes before.',
    'proof.days':
      'Left: {work} h of work by hand, {crew, plural, one {one check at a time} other {# checks at a time}}, {hours} h a day from {from}. The signature on {end} at the earliest.',
    'proof.days.nth': 'day {n}',
    'proof.days.over': 'over on {day}',
    'proof.days.check': '{name}',
    'proof.days.result': 'result of {name}',
    'proof.days.path': 'What decides the end: {path}.',
    'proof.waits': 'Waits that others own',
    'proof.wait.open': 'nobody has asked',
    'proof.wait.asked': 'asked',
    'proof.wait.granted': 'granted',
    'proof.wait.refused': 'refused',
    'proof.wait.delivered': 'delivered',
    'proof.wait.moves': 'one day more moves the signature',
    'proof.wait.slack': '{days} d to spare',
    'proof.wait.untimed': 'nobody says how long',
    'proof.wait.overdue': 'its day is past',
    'proof.quarantine': 'Made before release: {made} bottles, of which the records set {aside} aside.',
    'proof.afterwards': 'After acceptance',
    'proof.after.met': 'reached by the runs of its week',
    'proof.after.missed': 'not reached by the runs of its week',
    'proof.after.done': 'done',
    'proof.after.ramp-up': 'target',
    'proof.after.re-check': 'check again',
    'proof.after.remote session': 'remote session',
    'proof.after.visit': 'visit',
    'proof.after.other': 'due',
    'proof.after.warranty begins': 'warranty begins',
    'proof.after.warranty ends': 'warranty ends',
    'proof.doubts': 'Look at this before anything hangs on it',
    'proof.gate': '{gate}: {wanted}; {by}',
    'proof.gate.nothing': 'lacks nothing',
    'proof.gate.lacks': 'lacks {lacks}',
    'proof.gate.unsigned': 'nobody has signed',
    'proof.gate.passed': 'passed by {by} ({role}), with what is open named',
    'proof.gate.unnamed':
      'signed by {by} ({role}), {n, plural, one {# open point} other {# open points}} not named',
    'proof.caution':
      'A list of what to try and what was recorded. It does not judge safety: guarding, stops, electrical, pressure, lifting and chemical work follow the local code, the risk assessment and a competent person, whatever is proved here.',
  },
};
