import { lineExtentSheet } from '../../../sheets/building/line-extent.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer, UtilityLever } from '../need.ts';
import { falling, quantityLever, rising } from '../steps.ts';
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

/** A wall is moved by five centimetres, up to ten metres of them. */
const wall = 0.05;
const walls = 200;

/** The line set the other way round in the room: what was its length is now its width. */
const turnedLever = (c: Calculation): readonly UtilityLever[] => {
  const path = `${c.floorPath}/room`;
  const { length, width } = c.book.floors![c.floor]!.room ?? {};
  if (length === undefined || width === undefined) return [];
  return [
    {
      id: 'lineTurned',
      path: `${path}/length`,
      kind: 'count',
      steps: () => [
        {
          patches: [
            { path: `${path}/length`, value: width },
            { path: `${path}/width`, value: length },
          ],
          value: 1,
          text: '90 deg',
        },
      ],
    },
  ];
};

/** The line turned, or a longer or wider place for it. */
export const placeLevers = (c: Calculation, field: 'length' | 'width'): readonly UtilityLever[] => [
  ...turnedLever(c),
  ...quantityLever(c.book, {
    id: field === 'length' ? 'roomLength' : 'roomWidth',
    path: `${c.floorPath}/room/${field}`,
    kind: 'length',
    numbers: rising('length', wall, walls),
  }),
];

/** Less that is wanted above the section, or a higher room. */
export const heightLevers = (c: Calculation, { path }: SectionAt): readonly UtilityLever[] => [
  ...quantityLever(c.book, {
    id: 'overhead',
    path: `${path}/overhead`,
    kind: 'length',
    numbers: falling('length', wall, walls),
  }),
  ...quantityLever(c.book, {
    id: 'ceiling',
    path: `${c.floorPath}/room/ceiling`,
    kind: 'length',
    numbers: rising('length', wall, walls),
  }),
];
