import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore, times, timesAboveZero } from './bounds.ts';
import { authority } from './caution.ts';
import { derived } from './sources.ts';
import { wettedTime } from './wetted-time.ts';
import { wholeProblems } from './whole.ts';

/**
 * Smallest index at which a gated spray gives a contact.
 *
 * Method   tau = t_req/N + t_d, only if t_req/N <= t_max
 * Symbols  N      stations  count
 *          t_req  required  scalar  s
 *          t_d    dead      scalar  s
 *          t_max  timeOut   scalar  s
 * Returns  index, s; NaN where no index gives it and more stations are needed
 * Cost     O(1)
 * Source   definition
 */
export const leastGatedIndex = (stations: number, required: number, dead: number, timeOut: number): number =>
  required / stations <= timeOut * (1 + 1e-12) ? required / stations + dead : Number.NaN;

interface ContactGatedInputs {
  readonly stations: number;
  readonly index: number;
  readonly dead: number;
  readonly timeOut: number;
  readonly required: number;
}

export const contactGatedSheet = defineSheet({
  id: 'hygiene/contact-gated',
  version: 1,
  inputs: {
    stations: numberField('count', 'N', oneOrMore),
    index: numberField('time', '\\tau', timesAboveZero),
    dead: numberField('time', 't_d', times),
    // as long as the widest time that is taken: a spray that never shuts by itself
    timeOut: numberField('time', 't_{\\max}', { ...timesAboveZero, assumed: 1e7 }),
    required: numberField('time', 't_{\\mathrm{req}}', { ...times, assumed: 0 }),
  },
  outputs: {
    residence: numberField('time', 't_{\\mathrm{res}}'),
    wetted: numberField('time', 't_{\\mathrm{on}}'),
    contact: numberField('time', 't_c'),
    leastIndex: numberField('time', '\\tau_{\\min}'),
  },
  formula: [
    't_{\\mathrm{on}} = \\min ( \\max ( \\tau - t_d, 0 ), t_{\\max} )',
    't_{\\mathrm{res}} = N \\tau, \\quad t_c = N\\, t_{\\mathrm{on}}',
    '\\tau_{\\min} = \\frac{t_{\\mathrm{req}}}{N} + t_d, \\quad \\frac{t_{\\mathrm{req}}}{N} \\le t_{\\max}',
  ],
  limits: [
    authority,
    { code: 'CONTACT_SHORT', broken: ({ required }, { contact }) => contact < required * (1 - 1e-9) },
    { code: 'CONTACT_NEVER_WET', broken: (_, { wetted }) => wetted === 0 },
    { code: 'CONTACT_DEAD_TIME', broken: () => true },
  ],
  sources: [derived],
  check: ({ stations, required, dead, timeOut }) => {
    const problems = wholeProblems({ stations });
    return problems.length > 0 || Number.isFinite(leastGatedIndex(stations, required, dead, timeOut))
      ? problems
      : [
          {
            code: 'CONTACT_NO_INDEX',
            path: 'required',
            given: required,
            allowed: `<= ${stations * timeOut}`,
            parts: { stations: Math.ceil(required / timeOut) },
          },
        ];
  },
  compute: ({ stations, index, dead, timeOut, required }: ContactGatedInputs) => {
    const wetted = wettedTime(index, dead, timeOut);
    return {
      residence: stations * index,
      wetted,
      contact: stations * wetted,
      leastIndex: leastGatedIndex(stations, required, dead, timeOut),
    };
  },
});
