import { milestones } from './milestones.ts';
import { day, note, oneOf, part, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { refersTo, tag } from './tag.ts';

export const sample = part(
  'A sample that goes to a laboratory.',
  {},
  {
    point: words('Where it is taken.'),
    volume: quantity('volume', 'How much is taken.', above0),
    neutraliser: words('What stops the disinfectant in the bottle.'),
    holding: quantity('time', 'Longest time from the tap to the laboratory.', above0),
    courier: words('Who brings it.'),
  },
);

export const wait = part(
  'Something that somebody outside owns and that the hand-over waits for.',
  { tag: tag('wait') },
  {
    what: words('What is waited for.'),
    kind: oneOf(
      [
        'people',
        'induction',
        'permit',
        'interpreter',
        'licensed trade',
        'lifting gear',
        'customs',
        'bottles',
        'caps',
        'detergent',
        'water flushed',
        'water quality',
        'laboratory',
        'part',
        'release',
        'other',
      ],
      'What sort of thing it is. `release`: the product may be sold from then on.',
    ),
    owner: refersTo(['person'], 'Who owns it.'),
    before: oneOf(milestones, 'Stage that may not start, or gate that may not be passed, before it is over.'),
    after: oneOf(
      milestones,
      'Stage or gate that must be over before it can begin. Absent: it can begin at once.',
    ),
    duration: quantity('time', 'How long it takes, nights and weekends in it.', above0),
    due: day,
    floor: refersTo(['floor'], 'Floor that waits. Absent: the one that the line is bound for.'),
    sample,
    note,
  },
);

export const workHere = part(
  'How work goes on while the line is tried on this floor.',
  {},
  {
    from: day,
    crew: whole('How many checks can be tried at once. Absent: one.', 1),
    hours: quantity('time', 'Working time in a day. Absent: 8 h.', { above: 0, most: 86_400 }),
    weekends: oneOf(['free', 'worked'], 'Whether Saturdays and Sundays are worked. Absent: free.'),
    note,
  },
);

export const atHand = part(
  'What is at hand on this floor for a run.',
  {},
  {
    bottles: whole('Bottles of the format that is run.'),
    caps: whole('Caps for them.'),
    detergent: quantity('mass', 'Detergent, counted as what does the work: caustic as NaOH.', least0),
  },
);

export const afterwards = part(
  'Something that is due after acceptance.',
  { tag: tag('afterwards') },
  {
    what: words('What is due.'),
    kind: oneOf(['ramp-up', 're-check', 'remote session', 'visit', 'other'], 'What sort of thing it is.'),
    after: quantity('time', 'How long after acceptance.', above0),
    check: words('Id of the check that is done again.'),
    rate: quantity('rate', 'Bottles in an hour that the line is to make by then.', above0),
    efficiency: quantity('ratio', 'Share of the time in which it is to run by then.', share),
    owner: refersTo(['person'], 'Who owns it.'),
    note,
  },
);
