import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore, times, timesAboveZero } from './bounds.ts';
import { authority } from './caution.ts';
import { derived } from './sources.ts';
import { wholeProblems } from './whole.ts';

/**
 * Contact in a zone that wets a bottle for a fixed share of every index.
 *
 * Method   t_c = N tau f
 * Symbols  N    stations  count
 *          tau  index     scalar  s
 *          f    share     ratio      wetted time over index
 * Returns  contact, s
 * Assumes  every index is alike: a figure for a sales sheet, not for a line
 * Cost     O(1)
 * Source   definition
 */
export const contactByShare = (stations: number, index: number, share: number): number =>
  stations * index * share;

/**
 * Smallest index at which that zone gives a contact.
 *
 * Method   tau = t_req/(N f)
 * Returns  index, s
 * Cost     O(1)
 * Source   definition
 */
export const leastIndexByShare = (stations: number, share: number, required: number): number =>
  required / (stations * share);

interface ContactShareInputs {
  readonly stations: number;
  readonly index: number;
  readonly share: number;
  readonly required: number;
}

export const contactShareSheet = defineSheet({
  id: 'hygiene/contact-share',
  version: 1,
  inputs: {
    stations: numberField('count', 'N', oneOrMore),
    index: numberField('time', '\\tau', timesAboveZero),
    share: numberField('ratio', 'f', { least: 1e-3, most: 1 }),
    required: numberField('time', 't_{\\mathrm{req}}', { ...times, assumed: 0 }),
  },
  outputs: {
    residence: numberField('time', 't_{\\mathrm{res}}'),
    contact: numberField('time', 't_c'),
    leastIndex: numberField('time', '\\tau_{\\min}'),
  },
  formula: [
    't_{\\mathrm{res}} = N \\tau, \\quad t_c = N \\tau f',
    '\\tau_{\\min} = \\frac{t_{\\mathrm{req}}}{N f}',
  ],
  limits: [
    authority,
    { code: 'CONTACT_SHORT', broken: ({ required }, { contact }) => contact < required * (1 - 1e-9) },
    { code: 'CONTACT_SHARE_NOMINAL', broken: () => true },
  ],
  sources: [derived],
  check: ({ stations }) => wholeProblems({ stations }),
  compute: (i: ContactShareInputs) => ({
    residence: i.stations * i.index,
    contact: contactByShare(i.stations, i.index, i.share),
    leastIndex: leastIndexByShare(i.stations, i.share, i.required),
  }),
});
