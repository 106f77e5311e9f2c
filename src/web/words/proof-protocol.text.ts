import type { Bundle } from '../../text/index.ts';

/** Words of the protocol of a floor. */
export const proofProtocolWords: Bundle = {
  en: {
    'proving.order': 'Order of the checks',
    'proving.order.stage': 'As they are done',
    'proving.order.place': 'Along the line',
    'proving.order.whole': 'the line as a whole',
    'proving.states': 'Only checks that stand here',
    'proving.states.all': 'all',
    'proving.place': 'Only at',
    'proving.place.all': 'everywhere',
    'proving.place.whole': 'all of it: {place}',
    'proving.none': 'No check stands there.',
    'proving.row.missing': 'The book does not say:',
    'proving.row.untold': 'Not known whether it can be so: {conditions}.',
    'proving.row.waits': 'waits for the server',
    'proving.conditions.lacking':
      '{n, plural, one {# condition} other {# conditions}} that {floor} can’t give, or does not say',
    'proving.conditions.lacking.table': 'Conditions that are not given here',
    'proving.conditions.all': '{floor} can give every condition that the book tells of',
    'proving.conditions.others': '{n, plural, one {# other condition} other {# other conditions}}',
    'proving.conditions.each': '{n, plural, one {The condition} other {The # conditions}}',
    'proving.conditions.others.table': 'Conditions that can be so, or are told on the day',
    'proving.conditions.what': 'What must be so',
    'proving.conditions.must': 'Must be',
    'proving.conditions.have': 'Is here',
    'proving.conditions.can': 'Can it be so',
    'proving.conditions.by': ', by {by} %',
    'proving.carried':
      '{n, plural, one {# check comes over from {from}, where it was} other {# checks come over from {from}, where they were}} not proved',
    'proving.carried.undone': '{n, plural, one {# of them was} other {# of them were}} not tried there.',
    'proving.caution':
      'A list of what to try and what was recorded. It does not judge safety: guarding, stops, electrical, pressure, lifting and chemical work follow the local code, the risk assessment and a competent person, whatever is proved here.',
  },
};
