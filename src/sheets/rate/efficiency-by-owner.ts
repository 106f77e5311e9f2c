import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { bottlesMade, periods, ratesAboveZero, times } from './bounds.ts';
import { definition } from './sources.ts';

interface OwnersInputs {
  readonly duration: number;
  readonly setRate: number;
  readonly good: number;
  readonly machine: number;
  readonly supply: number;
  readonly people: number;
  readonly material: number;
}

interface OwnersEfficiency {
  readonly overall: number;
  readonly technical: number;
  readonly external: number;
  readonly gross: number;
  readonly technicalAvailability: number;
}

const externalOf = ({ supply, people, material }: OwnersInputs): number => supply + people + material;

/** An acceptance run of eight hours must have six that count. */
const mostExternal = 0.25;

/**
 * Efficiency of a run as the plant sees it and as the machine answers for it, from one list of stops.
 *
 * Method   E = G/(R t),  E_S = G/(R (t - t_x)),  A_S = (t - t_x - t_m)/(t - t_x)
 * Symbols  t    duration                   scalar  s      > 0
 *          R    setRate                    scalar  1/s    > 0, what the line is set to for this bottle
 *          G    good                       count          >= 0
 *          t_m  machine                    scalar  s      stopped by the machine itself
 *          t_x  supply + people + material scalar  s      stopped from outside of it
 * Returns  overall and technical efficiency, time from outside, time that counts, technical availability
 * Assumes  every stop stands in the list once, with one owner
 * Cost     O(1)
 * Source   definition; the parting is that of DIN 8743:2014 (read in an extract), the form from memory
 */
export const efficiencyByOwner = (i: OwnersInputs): OwnersEfficiency => {
  const external = externalOf(i);
  const gross = i.duration - external;
  return {
    overall: i.good / (i.setRate * i.duration),
    technical: i.good / (i.setRate * gross),
    external,
    gross,
    technicalAvailability: (gross - i.machine) / gross,
  };
};

const packagingLine: Source = {
  title: 'DIN 8743, packaging machines and lines, key figures',
  edition: '2014-01',
  place: '4.3 and 4.4: general and machine-technical figures apart; extract, the working form from memory',
  mark: 'memory',
};

const problemsOf = (i: OwnersInputs): readonly Problem[] => {
  const stopped = externalOf(i) + i.machine;
  // with nothing left there is no time over which a machine could be judged
  return stopped < i.duration
    ? []
    : [{ code: 'STOPS_FILL_RUN', path: 'duration', given: i.duration, allowed: `> ${stopped}` }];
};

const ownedTime = { ...times, assumed: 0 } as const;

export const efficiencyByOwnerSheet = defineSheet<OwnersInputs, OwnersEfficiency>({
  id: 'rate/efficiency-by-owner',
  version: 1,
  inputs: {
    duration: numberField('time', 't', periods),
    setRate: numberField('rate', 'R', ratesAboveZero),
    good: numberField('count', 'G', bottlesMade),
    machine: numberField('time', 't_m', ownedTime),
    supply: numberField('time', 't_s', ownedTime),
    people: numberField('time', 't_p', ownedTime),
    material: numberField('time', 't_b', ownedTime),
  },
  outputs: {
    overall: numberField('ratio', 'E'),
    technical: numberField('ratio', 'E_S'),
    external: numberField('time', 't_x'),
    gross: numberField('time', 't_g'),
    technicalAvailability: numberField('ratio', 'A_S'),
  },
  formula: [
    't_x = t_s + t_p + t_b, \\quad t_g = t - t_x',
    'E = \\frac{G}{R\\, t}, \\quad E_S = \\frac{G}{R\\, t_g}, \\quad A_S = \\frac{t_g - t_m}{t_g}',
  ],
  limits: [
    { code: 'EFFICIENCY_OWNERS_AGREED', broken: () => true },
    { code: 'EFFICIENCY_OVER_ONE', broken: (_, { technical }) => technical > 1 },
    {
      code: 'EFFICIENCY_MUCH_EXTERNAL',
      broken: ({ duration }, { external }) => external > mostExternal * duration,
      parts: ({ duration }, { external }) => ({ share: Math.round((100 * external) / duration) }),
    },
  ],
  sources: [definition, packagingLine],
  check: problemsOf,
  compute: efficiencyByOwner,
});
