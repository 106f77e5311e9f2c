import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const intervals = [12, 12, 12, 20, 12, 9, 9, 9, 12, 45, 12, 12];

export const contactLogCases: readonly SheetCase[] = [
  {
    name: 'twelve indexes, four stations, dead time 4 s, time-out 15 s: contact 23 to 39 s, 2 of 9 under 25 s',
    source: script,
    inputs: { intervals, stations: 4, dead: 4, timeOut: 15, required: 25 },
    outputs: {
      judged: 9,
      notJudged: 6,
      residences: [56, 56, 53, 50, 39, 39, 75, 78, 81],
      contacts: [39, 39, 36, 33, 23, 23, 33, 36, 39],
      leastResidence: 39,
      medianResidence: 56,
      mostResidence: 81,
      leastContact: 23,
      medianContact: 36,
      mostContact: 39,
      under: 2,
    },
    tolerance: { relative: 1e-12, reason: 'exact' },
    notes: ['CONTACT_UNDER', 'CONTACT_PARTIAL', 'CONTACT_MEAN_HIDES'],
  },
  {
    name: 'the mean of the same log times four stations is 58.67 s and hides it; 3 of 9 soak over 60 s',
    source: script,
    inputs: { intervals, stations: 4, longest: 60 },
    outputs: { nominal: 58.67, over: 3 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
    notes: ['CONTACT_OVER'],
  },
];
