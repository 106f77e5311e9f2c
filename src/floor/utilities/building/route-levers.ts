import type { Calculation } from '../calculation.ts';
import type { UtilityLever } from '../need.ts';
import { countLever, falling, levelLever, quantityLever, rising, upTo } from '../steps.ts';
import type { SectionAt } from './sections-of.ts';

/** A door is widened, or a frame taken out, by centimetres. */
const centimetre = 0.01;
/** Up to two metres more: beyond that it is another way in. */
const openings = 200;
/** Wheels that are put under one section at most, common practice. */
const mostWheels = 32;

const piecesOf = (c: Calculation) => c.book.floors![c.floor]!.room?.route ?? [];
const pathOf = (c: Calculation, i: number): string => `${c.floorPath}/room/route/${i}`;

/** Every place that is too narrow, or too low, opened to the same width. */
export const openingLever = (c: Calculation, field: 'width' | 'height'): readonly UtilityLever[] =>
  levelLever(c.book, {
    id: field === 'width' ? 'openingWidth' : 'openingHeight',
    paths: piecesOf(c).map((_, i) => `${pathOf(c, i)}/${field}`),
    kind: 'length',
    numbers: rising('length', centimetre, openings),
  });

/** Corners opened on both of their sides. */
export const turnLever = (c: Calculation): readonly UtilityLever[] =>
  levelLever(c.book, {
    id: 'turnWidth',
    paths: piecesOf(c).flatMap(({ kind }, i) =>
      kind === 'turn' ? [`${pathOf(c, i)}/width`, `${pathOf(c, i)}/widthAfter`] : [],
    ),
    kind: 'length',
    numbers: rising('length', centimetre, openings),
  });

/** Cranes and plates that take more. */
export const wayMassLever = (c: Calculation): readonly UtilityLever[] =>
  levelLever(c.book, {
    id: 'wayMass',
    paths: piecesOf(c).flatMap(({ kind }, i) => (kind === 'lift' ? [] : [`${pathOf(c, i)}/mass`])),
    kind: 'mass',
    numbers: upTo(40),
  });

/** A lift that takes more. */
export const liftLever = (c: Calculation): readonly UtilityLever[] =>
  levelLever(c.book, {
    id: 'wayMass',
    paths: piecesOf(c).flatMap(({ kind }, i) => (kind === 'lift' ? [`${pathOf(c, i)}/mass`] : [])),
    kind: 'mass',
    numbers: upTo(40),
  });

/** Lower skates, by twentieths of what they lift now. */
export const gearHeightLever = (c: Calculation, { path }: SectionAt): readonly UtilityLever[] =>
  quantityLever(c.book, {
    id: 'gear',
    path: `${path}/gear/height`,
    kind: 'length',
    numbers: (now) =>
      Array.from({ length: 19 }, (_, i) => Number((now * (1 - 0.05 * (i + 1))).toPrecision(3))),
  });

/** Gear with more wheels; where the book says how many carry, one of the new ones hangs free. */
export const gearWheelsLever = ({ section, path }: SectionAt): readonly UtilityLever[] =>
  countLever('gearWheels', `${path}/gear/wheels`, {
    now: section.gear?.wheels,
    most: mostWheels,
    patches: (wheels) =>
      section.gear?.carrying === undefined ? [] : [{ path: `${path}/gear/carrying`, value: wheels - 1 }],
  });

/** Half a per cent of slope. */
const flatter = 0.005;

/** Gear that stands wider, or lower, or ramps that are less steep: every one that is steeper, to the same slope. */
export const tippingLevers = (c: Calculation, at: SectionAt): readonly UtilityLever[] => [
  ...levelLever(c.book, {
    id: 'gearStand',
    paths: [`${at.path}/gear/base`, `${at.path}/gear/track`],
    kind: 'length',
    numbers: rising('length', 5 * centimetre, 40),
  }),
  ...gearHeightLever(c, at),
  ...levelLever(c.book, {
    id: 'rampSlope',
    paths: piecesOf(c).map((_, i) => `${pathOf(c, i)}/slope`),
    kind: 'ratio',
    numbers: falling('ratio', flatter, 60),
    down: true,
  }),
];
