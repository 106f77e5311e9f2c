import { type SlingLegs, slingPlanSheet } from '../../../sheets/lifting/sling-plan.ts';
import type { Calculation } from '../calculation.ts';
import type { Answer, UtilityLever } from '../need.ts';
import { quantityLever, rising, upTo } from '../steps.ts';
import { centreOf } from './centre-of.ts';
import type { SectionAt } from './sections-of.ts';

/** A hook is hung higher by decimetres, up to six metres. */
const decimetre = 0.1;
const hooks = 60;

/**
 * The sling of a section by its measures.
 *
 * Assumes  the hook stands over the centre of gravity, wherever that is: legs are chosen or shortened until it does
 */
export const slingPlan = (c: Calculation, at: SectionAt) =>
  c.once(`sling ${at.path}`, (c) => {
    const { path } = at;
    const place = (field: string) => c.needed(`${path}/sling/${field}`, 'length');
    return c.run(slingPlanSheet, {
      mass: c.needed(`${path}/mass`, 'mass'),
      legs: c.neededWord<SlingLegs>(`${path}/sling/legs`),
      centreAlong: centreOf(c, at, 'along'),
      centreAcross: centreOf(c, at, 'across'),
      firstAlong: place('x'),
      apartAlong: place('along'),
      firstAcross: place('y'),
      apartAcross: place('across'),
      height: place('height'),
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
