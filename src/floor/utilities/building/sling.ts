import { type SlingLegs, slingPlanSheet } from '../../../sheets/lifting/sling-plan.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Answer, UtilityLever } from '../need.ts';
import { quantityLever, rising, upTo } from '../steps.ts';
import { centreOf } from './centre-of.ts';
import type { SectionAt } from './sections-of.ts';

/** A hook is hung higher by decimetres, up to six metres. */
const decimetre = 0.1;
const hooks = 60;

/** Points of one way, each from the centre of gravity: before it and beyond it. */
const pointsOf = (
  c: Calculation,
  at: SectionAt,
  way: 'along' | 'across',
): { readonly first: Known | undefined; readonly second: Known | undefined } => {
  const { path } = at;
  const centre = centreOf(c, at, way);
  const from = c.needed(`${path}/sling/${way === 'along' ? 'x' : 'y'}`, 'length');
  const apart = c.needed(`${path}/sling/${way}`, 'length');
  return {
    first: c.derive([centre, from], (middle, start) => middle - start, centre?.from),
    second: c.derive([from, apart, centre], (start, on, middle) => start + on - middle, centre?.from),
  };
};

/** Across it is the farther point that counts, on whichever side of the centre it lies. */
const acrossOf = (c: Calculation, at: SectionAt): Known | undefined => {
  const { first, second } = pointsOf(c, at, 'across');
  const sides = [first, second].map((one) => c.derive([one], Math.abs, one?.from));
  return sides.includes(undefined) ? undefined : greatestOf(c, sides);
};

/**
 * The sling of a section by its measures.
 *
 * Assumes  the hook stands over the centre of gravity, wherever that is: legs are chosen or shortened until it does
 */
export const slingPlan = (c: Calculation, at: SectionAt) =>
  c.once(`sling ${at.path}`, (c) => {
    const { path } = at;
    const { first, second } = pointsOf(c, at, 'along');
    return c.run(slingPlanSheet, {
      mass: c.needed(`${path}/mass`, 'mass'),
      legs: c.neededWord<SlingLegs>(`${path}/sling/legs`),
      first,
      second,
      across: acrossOf(c, at),
      height: c.needed(`${path}/sling/height`, 'length'),
      legCapacity: c.needed(`${path}/sling/legCapacity`, 'mass'),
    });
  });

/** The pull of the harder leg as a mass, against what a leg carries by its plate. */
export const slingAnswer = (c: Calculation, at: SectionAt): Answer => {
  const plan = slingPlan(c, at);
  c.note('SLING_RIGGER');
  return {
    demand: plan?.tensionMass,
    have: c.needed(`${at.path}/sling/legCapacity`, 'mass'),
  };
};

/** A hook that hangs higher, so that the legs stand steeper; or legs that carry more. */
export const slingLevers = (c: Calculation, { path }: SectionAt): readonly UtilityLever[] => [
  ...quantityLever(c.book, {
    id: 'slingHeight',
    path: `${path}/sling/height`,
    kind: 'length',
    numbers: rising('length', decimetre, hooks),
  }),
  ...quantityLever(c.book, {
    id: 'slingCapacity',
    path: `${path}/sling/legCapacity`,
    kind: 'mass',
    numbers: upTo(40),
  }),
];
