import type { Book } from '../../../book/index.ts';
import { rampPushSheet } from '../../../sheets/building/ramp-push.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Draw } from '../need.ts';
import { centreOf } from './centre-of.ts';
import { roomHeat, roomMoisture, ventilationAir } from './room-load.ts';
import { type SectionAt, sectionsOf } from './sections-of.ts';
import { slingPlan } from './sling.ts';
import { steepest, tippingAt } from './tipping.ts';

/** Pull that a section takes up the steepest ramp of the way in; that of its rolling where the way is level. */
const rampPull = (c: Calculation, { path }: SectionAt): Known | undefined =>
  c.run(rampPushSheet, {
    mass: c.needed(`${path}/mass`, 'mass'),
    slope: steepest(c),
  })?.upForce;

/** Legs of the sling as they are to be rigged, and the centre over which the hook stands. */
const slingDraws = (at: SectionAt): readonly Draw[] => {
  const common = { utility: 'building', of: at.section.tag } as const;
  const length = { ...common, kind: 'length' } as const;
  return [
    { ...length, id: 'centreAlong', answer: (c) => centreOf(c, at, 'along') },
    { ...length, id: 'centreAcross', answer: (c) => centreOf(c, at, 'across') },
    { ...length, id: 'slingFirst', answer: (c) => slingPlan(c, at)?.firstLength },
    { ...length, id: 'slingSecond', answer: (c) => slingPlan(c, at)?.secondLength },
    { ...common, id: 'slingAngle', kind: 'angle', answer: (c) => slingPlan(c, at)?.angle },
    { ...common, id: 'slingTensionFirst', kind: 'force', answer: (c) => slingPlan(c, at)?.firstTension },
    { ...common, id: 'slingTensionSecond', kind: 'force', answer: (c) => slingPlan(c, at)?.secondTension },
  ];
};

/** Figures of the building that nothing is held against. */
export const buildingDraws = (book: Book): readonly Draw[] => {
  const utility = 'building';
  const sections = sectionsOf(book);
  const open = (book.line?.stations ?? []).some(
    (station) =>
      station.kind === 'washer' && (station.zones ?? []).some(({ surface }) => surface !== undefined),
  );
  if (sections.length === 0) return [];
  return [
    { id: 'roomHeat', utility, kind: 'heatFlow', answer: (c) => roomHeat(c)?.heat },
    ...(open ? [{ id: 'roomMoisture', utility, kind: 'massFlow', answer: roomMoisture } satisfies Draw] : []),
    { id: 'ventilationAir', utility, kind: 'actualAirFlow', answer: ventilationAir },
    ...sections.map(
      (at): Draw => ({
        id: 'rampPull',
        of: at.section.tag,
        utility,
        kind: 'force',
        answer: (c) => rampPull(c, at),
      }),
    ),
    ...sections.filter(({ section }) => section.sling !== undefined).flatMap(slingDraws),
    ...sections.flatMap((at): Draw[] =>
      at.section.centre === undefined
        ? []
        : [
            {
              id: 'tipAngle',
              of: at.section.tag,
              utility,
              kind: 'angle',
              answer: (c) => tippingAt(c, at).tips?.tipAngle,
            },
            {
              id: 'tipPush',
              of: at.section.tag,
              utility,
              kind: 'force',
              answer: (c) => tippingAt(c, at).tips?.pushForce,
            },
          ],
    ),
  ];
};
