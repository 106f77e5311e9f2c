import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore, times, timesAboveZero } from './bounds.ts';
import { authority } from './caution.ts';
import { derived } from './sources.ts';
import { wholeProblems } from './whole.ts';

/**
 * Contact of a bottle that is immersed.
 *
 * Method   t_c = max(N tau - t_e, 0)
 * Symbols  N    stations  count
 *          tau  index     scalar  s
 *          t_e  emptying  scalar  s  draining or above the liquid
 * Returns  contact, s
 * Cost     O(1)
 * Source   definition
 */
export const soakContact = (stations: number, index: number, emptying: number): number =>
  Math.max(stations * index - emptying, 0);

interface ContactSoakInputs {
  readonly stations: number;
  readonly index: number;
  readonly emptying: number;
  readonly required: number;
}

export const contactSoakSheet = defineSheet({
  id: 'hygiene/contact-soak',
  version: 1,
  inputs: {
    stations: numberField('count', 'N', oneOrMore),
    index: numberField('time', '\\tau', timesAboveZero),
    emptying: numberField('time', 't_e', times),
    required: numberField('time', 't_{\\mathrm{req}}', { ...times, assumed: 0 }),
  },
  outputs: {
    residence: numberField('time', 't_{\\mathrm{res}}'),
    contact: numberField('time', 't_c'),
    leastIndex: numberField('time', '\\tau_{\\min}'),
  },
  formula: [
    't_{\\mathrm{res}} = N \\tau, \\quad t_c = \\max ( N \\tau - t_e, 0 )',
    '\\tau_{\\min} = \\frac{t_{\\mathrm{req}} + t_e}{N}',
  ],
  limits: [
    authority,
    { code: 'CONTACT_SHORT', broken: ({ required }, { contact }) => contact < required * (1 - 1e-9) },
    { code: 'CONTACT_STOP_SOAK', broken: () => true },
  ],
  sources: [derived],
  check: ({ stations }) => wholeProblems({ stations }),
  compute: ({ stations, index, emptying, required }: ContactSoakInputs) => ({
    residence: stations * index,
    contact: soakContact(stations, index, emptying),
    leastIndex: (required + emptying) / stations,
  }),
});
