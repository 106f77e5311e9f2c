import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { normalFlows } from './bounds.ts';

/**
 * Share of the time that a compressor is loaded while nothing draws: the leak as a share of its delivery.
 *
 * Method   x = T_on/(T_on + T_off)
 * Symbols  T_on   loaded    scalar  s  mean of several cycles
 *          T_off  unloaded  scalar  s  > 0: one that never unloads tells only that the leak is its delivery or more
 * Returns  ratio
 * Cost     O(1)
 * Source   leak test of compressor practice, several public texts
 */
export const leakShare = (loaded: number, unloaded: number): number => loaded / (loaded + unloaded);

interface LeakLoadUnloadInputs {
  readonly loaded: number;
  readonly unloaded: number;
  readonly delivery: number;
}

export const leakLoadUnloadSheet = defineSheet({
  id: 'air/leak-load-unload',
  version: 1,
  inputs: {
    loaded: numberField('time', 'T_{on}', { above: 0, most: 1e7 }),
    unloaded: numberField('time', 'T_{off}', { least: 0, most: 1e7 }),
    delivery: numberField('normalAirFlow', 'q_c', normalFlows),
  },
  outputs: {
    share: numberField('ratio', 'x'),
    leak: numberField('normalAirFlow', 'q_l'),
  },
  formula: ['x = \\frac{T_{on}}{T_{on} + T_{off}}, \\quad q_l = x q_c'],
  limits: [
    { code: 'LEAK_NEGLECTED', broken: (_, { share }) => share > 0.1 },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    {
      title: 'Air compressor leak test method, interview notes of a mechanical engineer',
      edition: '2014',
      place: 'public article',
      mark: 'read',
    },
  ],
  check: ({ unloaded }) =>
    unloaded > 0 ? [] : [{ code: 'LEAK_NEVER_UNLOADS', path: 'unloaded', given: unloaded, allowed: '> 0' }],
  compute: ({ loaded, unloaded, delivery }: LeakLoadUnloadInputs) => {
    const share = leakShare(loaded, unloaded);
    return { share, leak: share * delivery };
  },
});
