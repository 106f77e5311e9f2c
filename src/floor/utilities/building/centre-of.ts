import { cornerWeighingSheet } from '../../../sheets/lifting/corner-weighing.ts';
import { twoPointWeighingSheet } from '../../../sheets/lifting/two-point-weighing.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { lengthOfAll } from './length-of-all.ts';
import type { SectionAt } from './sections-of.ts';

type Way = 'along' | 'across';

const coordinate = { along: 'x', across: 'y' } as const;

/** A distance from the first support, counted from the corner of the section; a support at the corner adds nothing. */
const fromCorner = (c: Calculation, place: string, found: Known | undefined): Known | undefined => {
  const from = c.needed(place, 'length');
  if (from === undefined || found === undefined) return undefined;
  return from.value === 0 ? found : lengthOfAll(c, [from, found]);
};

const byCorners = (c: Calculation, at: string, way: Way): Known | undefined => {
  const corner = (name: string): Known | undefined => c.needed(`${at}/${name}`, 'mass');
  const found = c.run(cornerWeighingSheet, {
    firstLeft: corner('firstLeft'),
    firstRight: corner('firstRight'),
    secondLeft: corner('secondLeft'),
    secondRight: corner('secondRight'),
    base: c.needed(`${at}/base`, 'length'),
    track: c.needed(`${at}/track`, 'length'),
  })?.[way];
  return fromCorner(c, `${at}/${coordinate[way]}`, found);
};

const byTwoPoints = (c: Calculation, at: string): Known | undefined => {
  const found = c.run(twoPointWeighingSheet, {
    first: c.needed(`${at}/first`, 'mass'),
    second: c.needed(`${at}/second`, 'mass'),
    distance: c.needed(`${at}/distance`, 'length'),
  })?.fromFirst;
  return fromCorner(c, `${at}/from`, found);
};

/** Centre of gravity of a section from its corner: as the book says it, else as it was weighed. */
export const centreOf = (c: Calculation, { section, path }: SectionAt, way: Way): Known | undefined => {
  const { centre, weighing } = section;
  const axis = coordinate[way];
  if (centre?.[axis] === undefined) {
    if (weighing?.corners !== undefined) return byCorners(c, `${path}/weighing/corners`, way);
    if (weighing?.[way] !== undefined) return byTwoPoints(c, `${path}/weighing/${way}`);
  }
  return c.needed(`${path}/centre/${axis}`, 'length');
};
