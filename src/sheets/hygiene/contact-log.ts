import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore, times, timesAboveZero } from './bounds.ts';
import { authority } from './caution.ts';
import { derived } from './sources.ts';
import { wettedTime } from './wetted-time.ts';
import { wholeProblems } from './whole.ts';

/**
 * Sums of so many neighbours in a list, one for every full run of them.
 *
 * Method   each sum anew from its members, so that a long log gathers no rounding
 * Symbols  values  [m]
 *          n       members of a sum, 1 to m
 * Returns  m - n + 1 sums
 * Cost     O(m n)
 * Source   definition
 */
export const rollingSums = (values: readonly number[], n: number): readonly number[] =>
  Array.from({ length: values.length - n + 1 }, (_, first) => {
    let sum = 0;
    for (let k = first; k < first + n; k++) sum += values[k]!;
    return sum;
  });

/**
 * Least, middle and greatest of a list; the middle of an even number lies halfway between the two.
 *
 * Returns  three numbers in the unit of the list
 * Cost     O(n log n)
 * Source   definition
 */
export const spreadOf = (values: readonly number[]) => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return {
    least: sorted[0]!,
    median: 0.5 * (sorted[Math.floor(half)]! + sorted[Math.ceil(half)]!),
    most: sorted[sorted.length - 1]!,
  };
};

interface ContactLogInputs {
  readonly intervals: readonly number[];
  readonly stations: number;
  readonly dead: number;
  readonly timeOut: number;
  readonly required: number;
  readonly longest: number;
}

export const contactLogSheet = defineSheet({
  id: 'hygiene/contact-log',
  version: 1,
  inputs: {
    intervals: listField('time', '\\tau_i', times),
    stations: numberField('count', 'N', oneOrMore),
    dead: numberField('time', 't_d', { ...times, assumed: 0 }),
    timeOut: numberField('time', 't_{\\max}', { ...timesAboveZero, assumed: 1e7 }),
    required: numberField('time', 't_{\\mathrm{req}}', { ...times, assumed: 0 }),
    // longer than a log: no longest soak is asked
    longest: numberField('time', 't_{\\mathrm{soak}}', { above: 0, most: 1e12, assumed: 1e12 }),
  },
  outputs: {
    judged: numberField('count', 'm - N + 1'),
    notJudged: numberField('count', '2 (N - 1)'),
    leastResidence: numberField('time', '\\min t_{\\mathrm{res}}'),
    medianResidence: numberField('time', '\\mathrm{med}\\, t_{\\mathrm{res}}'),
    mostResidence: numberField('time', '\\max t_{\\mathrm{res}}'),
    leastContact: numberField('time', '\\min t_c'),
    medianContact: numberField('time', '\\mathrm{med}\\, t_c'),
    mostContact: numberField('time', '\\max t_c'),
    under: numberField('count', 'n_<'),
    over: numberField('count', 'n_>'),
    nominal: numberField('time', 'N \\bar{\\tau}'),
    residences: listField('time', 't_{\\mathrm{res},k}'),
    contacts: listField('time', 't_{c,k}'),
  },
  formula: [
    't_{\\mathrm{res},k} = \\sum_{i=k}^{k+N-1} \\tau_i, \\quad t_{c,k} = \\sum_{i=k}^{k+N-1} \\min ( \\max ( \\tau_i - t_d, 0 ), t_{\\max} )',
    'n_< = | \\{ k : t_{c,k} < t_{\\mathrm{req}} \\} |, \\quad n_> = | \\{ k : t_{\\mathrm{res},k} > t_{\\mathrm{soak}} \\} |',
  ],
  limits: [
    authority,
    {
      code: 'CONTACT_UNDER',
      broken: (_, { under }) => under > 0,
      parts: (_, { under, judged }) => ({ under, judged }),
    },
    {
      code: 'CONTACT_OVER',
      broken: (_, { over }) => over > 0,
      parts: (_, { over, judged }) => ({ over, judged }),
    },
    { code: 'CONTACT_PARTIAL', broken: (_, { notJudged }) => notJudged > 0 },
    {
      code: 'CONTACT_MEAN_HIDES',
      broken: (_, { nominal, leastResidence }) => leastResidence < nominal * (1 - 1e-9),
    },
    { code: 'CONTACT_DEAD_TIME', broken: () => true },
  ],
  sources: [derived],
  check: ({ intervals, stations }) => {
    const problems = wholeProblems({ stations });
    return problems.length > 0 || intervals.length >= stations
      ? problems
      : [
          {
            code: 'CONTACT_LOG_SHORT',
            path: 'intervals',
            given: intervals.length,
            allowed: `>= ${stations}`,
          },
        ];
  },
  compute: ({ intervals, stations, dead, timeOut, required, longest }: ContactLogInputs) => {
    const residences = rollingSums(intervals, stations);
    const contacts = rollingSums(
      intervals.map((interval) => wettedTime(interval, dead, timeOut)),
      stations,
    );
    const residence = spreadOf(residences);
    const contact = spreadOf(contacts);
    return {
      judged: residences.length,
      notJudged: 2 * (stations - 1),
      leastResidence: residence.least,
      medianResidence: residence.median,
      mostResidence: residence.most,
      leastContact: contact.least,
      medianContact: contact.median,
      mostContact: contact.most,
      under: contacts.filter((each) => each < required * (1 - 1e-9)).length,
      over: residences.filter((each) => each > longest * (1 + 1e-9)).length,
      nominal: (stations * intervals.reduce((a, b) => a + b, 0)) / intervals.length,
      residences,
      contacts,
    };
  },
});
