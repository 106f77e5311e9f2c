import type { Calculation } from '../calculation.ts';
import type { UtilityLever } from '../need.ts';
import { cooler, quantityLever, warmer } from '../steps.ts';
import { bottleBefore } from './bottle-path.ts';
import { type ZoneAt, zonesOf } from './zones-of.ts';

const zoneLever = (
  c: Calculation,
  { path }: ZoneAt,
  numbers: (now: number) => readonly number[],
): readonly UtilityLever[] =>
  quantityLever(c.book, { id: 'zoneTemperature', path: `${path}/temperature`, kind: 'temperature', numbers });

/** The zone nearer to what comes before it. */
export const zoneStepLevers = (c: Calculation, at: ZoneAt): readonly UtilityLever[] => {
  const before = bottleBefore(c, at);
  const here = c.number(`${at.path}/temperature`, 'temperature');
  if (before === undefined || here === undefined) return [];
  return zoneLever(c, at, here.value > before.value ? cooler : warmer);
};

/** The last zone cooler, so that what is filled meets less of a step. */
export const fillStepLevers = (c: Calculation): readonly UtilityLever[] => {
  const last = zonesOf(c.book).findLast(({ zone }) => zone.temperature !== undefined);
  return last === undefined ? [] : zoneLever(c, last, cooler);
};

/** The hottest zone cooler. */
export const bottleTemperatureLevers = (c: Calculation): readonly UtilityLever[] => {
  const warm = zonesOf(c.book).flatMap((at) => {
    const known = c.number(`${at.path}/temperature`, 'temperature');
    return known === undefined ? [] : [{ at, kelvin: known.value }];
  });
  const [hottest] = warm.toSorted((a, b) => b.kelvin - a.kelvin);
  return hottest === undefined ? [] : zoneLever(c, hottest.at, cooler);
};
