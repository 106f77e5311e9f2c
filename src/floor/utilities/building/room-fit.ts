import { lineExtentSheet } from '../../../sheets/building/line-extent.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { lengthOfAll } from './length-of-all.ts';
import { type SectionAt, sectionsOf } from './sections-of.ts';

/** Free way for work and service on every side where nobody said, common practice. */
const usualClearance = 0.8;

const zero = (path: string): Known => ({ value: 0, from: { path, assumed: true } });

/** Sections stand one after the other along the line where the book has no plan. */
const extent = (c: Calculation) =>
  c.once('extent', (c) => {
    const sections = sectionsOf(c.book);
    const planned = sections.every(({ section }) => section.x !== undefined && section.y !== undefined);
    const lengths = sections.map(({ path }) => c.needed(`${path}/length`, 'length'));
    if (!planned) for (const { path } of sections) c.assume(`${path}/x`);
    const x = sections.map(({ path }, i): Known | undefined => {
      if (planned) return c.number(`${path}/x`, 'length');
      const before = lengths.slice(0, i);
      return i === 0 ? zero(`${path}/x`) : before.length === 1 ? before[0] : lengthOfAll(c, before);
    });
    return c.run(lineExtentSheet, {
      x,
      y: sections.map(({ path }) => (planned ? c.number(`${path}/y`, 'length') : zero(`${path}/y`))),
      lengths,
      widths: sections.map(({ path }) => c.needed(`${path}/width`, 'length')),
      turned: sections.map(({ path }) =>
        planned ? (c.number(`${path}/turned`, 'angle') ?? zero(`${path}/turned`)) : zero(`${path}/turned`),
      ),
      clearances: sections.map(({ path }) => c.numberOr(`${path}/clearance`, 'length', usualClearance)),
    });
  });

export const lengthAnswer = (c: Calculation): Answer => ({
  demand: extent(c)?.length,
  have: c.needed(`${c.floorPath}/room/length`, 'length'),
});

export const widthAnswer = (c: Calculation): Answer => ({
  demand: extent(c)?.width,
  have: c.needed(`${c.floorPath}/room/width`, 'length'),
});

export const heightAnswer = (c: Calculation, { path }: SectionAt): Answer => {
  const height = c.needed(`${path}/height`, 'length');
  const over = c.number(`${path}/overhead`, 'length');
  if (over === undefined) c.assume(`${path}/overhead`);
  return {
    demand: over === undefined ? height : lengthOfAll(c, [height, over]),
    have: c.needed(`${c.floorPath}/room/ceiling`, 'length'),
  };
};
