import { shortened } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { drawingScale } from './drawing-scale.ts';
import { cornersOf, numberIn, onPlan, type Place, placedSections } from './placed-sections.ts';

/** A point on the paper, mm from the upper left corner of the drawing. */
type Dot = readonly [number, number];

export interface PlanSection {
  readonly tag: string;
  readonly name: string;
  readonly outline: readonly Dot[];
  /** Way that stays free around it. */
  readonly free?: readonly Dot[];
  readonly middle: Dot;
}

/** A tie-in point where it is on the plan, with the way in which its tag is written beside it. */
export interface PlanPoint {
  readonly tag: string;
  readonly at: Dot;
  readonly to: 'left' | 'right' | 'above' | 'below';
  /** How many tags stand between it and its own: neighbours are written one above the other. */
  readonly step: number;
}

export interface PlanRow {
  readonly tag: string;
  readonly name: string;
  readonly connection: string;
  readonly section: string;
  /** Along and across the section from its corner, and above the floor; `not said` where nobody did. */
  readonly along: string;
  readonly across: string;
  readonly height: string;
}

/** The sections' footprint to scale with the points where the line is tied in. */
export interface PlanContent {
  /** `1:50`. */
  readonly scale: string;
  readonly width: number;
  readonly height: number;
  readonly sections: readonly PlanSection[];
  readonly points: readonly PlanPoint[];
  readonly bar: { readonly length: number; readonly text: string };
  readonly alt: string;
  readonly rows: readonly PlanRow[];
  /** What is not known of it. */
  readonly told: readonly string[];
  readonly words: Readonly<Record<string, string>>;
}

/** Room for the drawing on the narrower page, mm. */
const frame = { width: 176, height: 110 } as const;
/** Room around it, mm: where a free way is drawn the tags stand in it. */
const border = { free: 6, bare: 24 } as const;
/** Letters that have room in the drawing; the table below has them all. */
const drawnTag = 12;
const drawnName = 28;
/** Tags closer than this run into each other, mm. */
const tagWidth = 13;
const barHeight = 6;

const wordKeys = [
  'title',
  'care.text',
  'tag',
  'point',
  'section',
  'along',
  'across',
  'height',
  'key',
] as const;

/** On which side of a point its tag has room: the side that it is nearest to on its section. */
const sideOf = ([x, y]: Dot, outline: readonly Dot[]): PlanPoint['to'] => {
  const xs = outline.map(([one]) => one);
  const ys = outline.map(([, one]) => one);
  const gaps: readonly (readonly [PlanPoint['to'], number])[] = [
    ['above', y - Math.min(...ys)],
    ['below', Math.max(...ys) - y],
    ['left', x - Math.min(...xs)],
    ['right', Math.max(...xs) - x],
  ];
  return gaps.reduce((nearest, one) => (one[1] < nearest[1] ? one : nearest))[0];
};

/** The same points with their tags out of each other's way. */
const stepped = (points: readonly Omit<PlanPoint, 'step'>[]): readonly PlanPoint[] => {
  const done: PlanPoint[] = [];
  for (const one of points.toSorted((a, b) => a.at[0] - b.at[0] || a.at[1] - b.at[1])) {
    const near = done.filter(
      ({ to, at }) =>
        to === one.to && Math.abs(at[0] - one.at[0]) < tagWidth && Math.abs(at[1] - one.at[1]) < tagWidth / 2,
    );
    const taken = new Set(near.map(({ step }) => step));
    let step = 0;
    while (taken.has(step)) step += 1;
    done.push({ ...one, step });
  }
  return done;
};

/** The plan of a book's line; undefined where it has neither sections nor points to draw or list. */
export const planContent = (paper: PaperWords): PlanContent | undefined => {
  const { book, say, quantity } = paper;
  const { sections, planned, sizeless } = placedSections(book);
  const tieIns = book.line?.tieIns ?? [];
  if (sections.length === 0 && sizeless.length === 0 && tieIns.length === 0) return undefined;
  const reach = sections.flatMap((one) => cornersOf(one, one.clearance));
  const ends = (axis: 0 | 1): readonly [number, number] => {
    const values = reach.map((place) => place[axis]);
    return [Math.min(...values), Math.max(...values)];
  };
  const [[left, right], [low, high]] =
    sections.length === 0
      ? [
          [0, 1],
          [0, 1],
        ]
      : [ends(0), ends(1)];
  const around = sections.every(({ clearance = 0 }) => clearance > 0) ? border.free : border.bare;
  const room = { width: frame.width - 2 * around, height: frame.height - 2 * around };
  const scale = drawingScale({ width: right - left, height: high - low }, room);
  // across is up on the paper
  const dot = ([x, y]: Place): Dot => [
    around + (x - left) * scale.perMetre,
    around + (high - y) * scale.perMetre,
  ];
  const drawn = sections.map((one) => ({ one, outline: cornersOf(one).map(dot) }));
  const spots = tieIns.map((tieIn) => {
    const on = drawn.find(({ one }) => one.tag === tieIn.section);
    const [x, y] = [numberIn(tieIn.x, 'length'), numberIn(tieIn.y, 'length')];
    const height = numberIn(tieIn.height, 'length');
    return { tieIn, on, x, y, height };
  });
  const length = (value: number | undefined): string =>
    value === undefined ? say('plan.notSaid') : quantity(value, 'length', 3).text;
  const unplaced = spots.filter(({ on, x, y }) => on === undefined || x === undefined || y === undefined);
  const text = say('plan.scale', { n: scale.to });
  return {
    scale: text,
    width: 2 * around + (right - left) * scale.perMetre,
    // the scale bar stands below it
    height: 2 * around + barHeight + (high - low) * scale.perMetre,
    sections: drawn.map(({ one, outline }) => ({
      tag: shortened(one.tag, drawnTag),
      name: shortened(one.name, drawnName),
      outline,
      middle: dot(onPlan(one, one.length / 2, one.width / 2)),
      ...(one.clearance === undefined ? {} : { free: cornersOf(one, one.clearance).map(dot) }),
    })),
    points: stepped(
      spots.flatMap(({ tieIn, on, x, y }) => {
        if (on === undefined || x === undefined || y === undefined) return [];
        const at = dot(onPlan(on.one, x, y));
        return [{ tag: shortened(tieIn.tag, drawnTag), at, to: sideOf(at, on.outline) }];
      }),
    ),
    bar: { length: scale.bar * scale.perMetre, text: quantity(scale.bar, 'length', 3).text },
    alt: say('plan.alt', { scale: text, sections: sections.map(({ name }) => name).join(', ') }),
    rows: spots.map(({ tieIn, on, x, y, height }) => ({
      tag: tieIn.tag,
      name: tieIn.name ?? tieIn.kind ?? '',
      connection: tieIn.connection ?? '',
      section: on?.one.name ?? tieIn.section ?? say('plan.notSaid'),
      along: length(x),
      across: length(y),
      height: length(height),
    })),
    told: [
      ...(planned || sections.length < 2 ? [] : [say('plan.unplanned')]),
      ...(sizeless.length === 0 ? [] : [say('plan.sizeless', { names: sizeless.join(', ') })]),
      ...(unplaced.length === 0
        ? []
        : [say('plan.unplaced', { points: unplaced.map(({ tieIn }) => tieIn.tag).join(', ') })]),
    ],
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`plan.${key}`)])),
      care: say('paper.care'),
    },
  };
};
