import type { Book } from '../../../book/index.ts';
import { rampPushSheet } from '../../../sheets/building/ramp-push.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Draw } from '../need.ts';
import { roomHeat, roomMoisture, ventilationAir } from './room-load.ts';
import { type SectionAt, sectionsOf } from './sections-of.ts';

/** Pull that a section takes up the steepest ramp of the way in; nothing where the way is level. */
const rampPull = (c: Calculation, { path }: SectionAt): Known | undefined => {
  const slopes = (c.book.floors![c.floor]!.room?.route ?? []).flatMap((piece, i) =>
    piece.slope === undefined ? [] : [c.number(`${c.floorPath}/room/route/${i}/slope`, 'ratio')],
  );
  const slope = greatestOf(c, slopes);
  return c.run(rampPushSheet, {
    mass: c.needed(`${path}/mass`, 'mass'),
    slope: slope ?? { value: 0, from: { path: `${c.floorPath}/room/route`, assumed: true } },
  })?.upForce;
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
  ];
};
