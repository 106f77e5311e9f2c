import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { lifetimes, year } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { leastLifetime } from './classes.ts';
import { iso13849 } from './sources.ts';

export const lifetimeCaps = ['100', '2500'] as const;
export type LifetimeCap = (typeof lifetimeCaps)[number];

/**
 * Mean time to a dangerous failure of a channel: each part that fails takes it with it.
 *
 * Method   1/M = sum n_i/M_i
 * Symbols  M_i  lifetimes  [k]  s      k >= 1
 *          n_i  numbers    [k]  count  of equal parts
 * Returns  s, not capped
 * Assumes  constant rates; parts with an excluded fault are left out
 * Cost     O(k)
 * Source   ISO 13849-1:2006 annex D
 */
export const channelLifetime = (parts: readonly number[], numbers: readonly number[]): number =>
  1 / parts.reduce((sum, lifetime, i) => sum + numbers[i]! / lifetime, 0);

interface ChannelInputs {
  readonly parts: readonly number[];
  readonly numbers: readonly number[];
  readonly cap: LifetimeCap;
}

export const channelLifetimeSheet = defineSheet({
  id: 'safety/channel-lifetime',
  version: 1,
  inputs: {
    parts: listField('lifetime', 'M_i', lifetimes),
    numbers: listField('count', 'n_i', { least: 1, most: 1e4 }),
    cap: choiceField<LifetimeCap>('M_{\\max}', lifetimeCaps, '100'),
  },
  outputs: {
    lifetime: numberField('lifetime', 'M'),
    counted: numberField('lifetime', 'M_c'),
  },
  formula: ['\\frac{1}{M} = \\sum_i \\frac{n_i}{M_i}, \\quad M_c = \\min(M,\\ M_{\\max})'],
  limits: [
    guardingCaution,
    { code: 'LIFETIME_UNDER_3', broken: (_, { lifetime }) => lifetime < leastLifetime * (1 - 1e-9) },
    { code: 'CHANNEL_CAPPED', broken: ({ cap }, { lifetime }) => lifetime > Number(cap) * year },
    { code: 'CHANNEL_CAP_2500', broken: ({ cap }) => cap === '2500' },
    always('CHANNEL_WEAR_REPLACED'),
  ],
  sources: [
    iso13849,
    { title: 'ISO 13849-1', edition: 'amendment of 2015', place: '2500 years in category 4', mark: 'memory' },
  ],
  check: ({ parts, numbers }) => listLengths({ parts, numbers }),
  compute: ({ parts, numbers, cap }: ChannelInputs) => {
    const lifetime = channelLifetime(parts, numbers);
    return { lifetime, counted: Math.min(lifetime, Number(cap) * year) };
  },
});
