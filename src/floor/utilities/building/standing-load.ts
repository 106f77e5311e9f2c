import { footDiameterSheet } from '../../../sheets/building/foot-diameter.ts';
import { footLoadSheet } from '../../../sheets/building/foot-load.ts';
import { liquidMassSheet } from '../../../sheets/building/liquid-mass.ts';
import { massAboardSheet } from '../../../sheets/building/mass-aboard.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer, UtilityLever } from '../need.ts';
import { countLever, quantityLever, upTo } from '../steps.ts';
import type { SectionAt } from './sections-of.ts';

/** Stands for a foot where only its force is asked. */
const anyFoot = 0.1;

/** What fills the baths and the manifold of the stations on a section. */
const liquidMass = (c: Calculation, { section }: SectionAt): Known | undefined => {
  const volumes = (c.book.line?.stations ?? []).flatMap((station, s) => {
    if (section.holds?.includes(station.tag) !== true) return [];
    const path = `/line/stations/${s}`;
    if (station.kind === 'fill') {
      return station.manifoldVolume === undefined ? [] : [c.number(`${path}/manifoldVolume`, 'volume')];
    }
    if (station.kind !== 'washer') return [];
    return (station.zones ?? []).flatMap((zone, z) =>
      zone.tank === undefined ? [] : [c.number(`${path}/zones/${z}/tank`, 'volume')],
    );
  });
  return volumes.length === 0 ? undefined : c.run(liquidMassSheet, { volumes })?.mass;
};

/** Load of a section on its feet as it stands: with full baths, and with one foot that hangs free. */
const footLoad = (c: Calculation, at: SectionAt, foot: Known | undefined) => {
  const { path } = at;
  const mass = c.needed(`${path}/mass`, 'mass');
  const full = c.number(`${path}/full`, 'mass');
  const liquid = full === undefined ? liquidMass(c, at) : c.run(massAboardSheet, { full, empty: mass })?.mass;
  const feet = c.plain(`${path}/feet`);
  if (feet === undefined) c.miss(`${path}/feet`);
  return c.run(footLoadSheet, {
    dryMass: mass,
    ...(liquid === undefined ? {} : { waterMass: liquid }),
    feet,
    footDiameter: foot,
  });
};

/** Diameter of a round foot of the area that the book gives. */
const footDiameter = (c: Calculation, { path }: SectionAt): Known | undefined =>
  c.run(footDiameterSheet, { area: c.needed(`${path}/foot`, 'area') })?.diameter;

export const pressureAnswer = (c: Calculation, at: SectionAt): Answer => ({
  demand: c.needed(`${c.floorPath}/room/slab/bearing`, 'pressureDifference'),
  have: footLoad(c, at, footDiameter(c, at))?.unevenPressure,
});

export const pointAnswer = (c: Calculation, at: SectionAt): Answer => ({
  demand: c.needed(`${c.floorPath}/room/slab/point`, 'force'),
  have: footLoad(c, at, { value: anyFoot, from: { path: `${at.path}/foot`, assumed: true } })?.unevenForce,
});

/** Larger feet, or plates under them. */
export const footLevers = (c: Calculation, { path }: SectionAt): readonly UtilityLever[] =>
  quantityLever(c.book, {
    id: 'footArea',
    path: `${path}/foot`,
    kind: 'area',
    numbers: upTo(60),
  });

/** Most feet that a section of a bottling line is given; common practice. */
const mostFeet = 16;

/** More feet, so that each stands less. */
export const feetLevers = (c: Calculation, { path }: SectionAt): readonly UtilityLever[] =>
  countLever('feet', `${path}/feet`, { now: c.plain(`${path}/feet`)?.value, most: mostFeet });
