import type { Book } from '../../book/index.ts';
import { groupBy } from '../integrity/group-by.ts';
import type { LaidJoin } from '../laid-join.ts';
import { type Place, placesOfBoxes } from './places-of-boxes.ts';
import { type RebuildStage, stageOf, stageOrder, stages } from './stage.ts';
import { walkOrder, wayLength } from './walk-order.ts';

/** One stop on the way: a box, with what is made in it before one walks on. */
export interface Stop {
  /** Absent: joins of which nobody says where they are made. */
  readonly box?: string;
  /** The book does not say where the box stands, so that it counts for nothing in the way. */
  readonly unplaced: boolean;
  readonly joins: readonly string[];
}

export interface StagePlan {
  readonly stage: RebuildStage;
  /** Sections that are set down, levelled or aligned. */
  readonly sections: readonly string[];
  readonly stops: readonly Stop[];
  /** Walked between the boxes whose place is known, in a straight line, m. */
  readonly distance: number;
}

export interface Schedule {
  /** Done before the line leaves: drained, blown out, dried. */
  readonly beforeShipping: readonly string[];
  readonly stages: readonly StagePlan[];
  readonly distance: number;
  /** Assumed: sections end to end, since the plan places none. */
  readonly inRow: boolean;
}

interface Placed {
  readonly join: LaidJoin;
  readonly stage: number;
  /** How many joins of the same stage come before it one after the other. */
  readonly depth: number;
}

/**
 * Stage and depth of each join: what must come after another is not made in an earlier stage, nor before it in the same.
 *
 * Assumes  `after` runs in no circle, which the reading of the book refuses; a join in one would count as first
 */
const placed = (joins: readonly LaidJoin[]): readonly Placed[] => {
  const byTag = new Map(joins.map((join) => [join.tag, join]));
  const known = new Map<string, Placed>();
  const open = new Set<string>();
  const placeOf = (join: LaidJoin): Placed | undefined => {
    const done = known.get(join.tag);
    const own = stageOf(join);
    if (done !== undefined || own === undefined || open.has(join.tag)) return done;
    open.add(join.tag);
    let [stage, depth] = [stageOrder(own), 0];
    for (const tag of join.after) {
      const before = byTag.get(tag);
      const at = before === undefined ? undefined : placeOf(before);
      if (at === undefined || at.stage < stage) continue;
      [stage, depth] = [at.stage, at.stage > stage ? at.depth + 1 : Math.max(depth, at.depth + 1)];
    }
    const made = { join, stage, depth };
    known.set(join.tag, made);
    return made;
  };
  return joins.flatMap((join) => placeOf(join) ?? []);
};

/** `X1:2` comes before `X1:10`. */
const natural = new Intl.Collator('en', { numeric: true });
const byLabel = ({ join: a }: Placed, { join: b }: Placed): number =>
  natural.compare(a.to.label ?? a.from.label ?? '', b.to.label ?? b.from.label ?? '') ||
  natural.compare(a.tag, b.tag);

const stopOf = (box: string, here: readonly Placed[], places: ReadonlyMap<string, Place>): Stop => ({
  ...(box === '' ? {} : { box }),
  unplaced: !places.has(box),
  joins: here.toSorted(byLabel).map(({ join }) => join.tag),
});

/** The stops of joins that may be made in any order: known places in walking order, then the rest by name. */
const stopsOf = (
  joins: readonly Placed[],
  places: ReadonlyMap<string, Place>,
  start: Place | undefined,
): readonly Stop[] => {
  const boxes = [...groupBy(joins, ({ join }) => join.box ?? '')].map(([box, here]) =>
    stopOf(box, here, places),
  );
  const near = boxes.filter(({ unplaced }) => !unplaced);
  const rest = boxes.filter(({ unplaced }) => unplaced);
  return [
    ...walkOrder(start, near, ({ box = '' }) => places.get(box)!),
    // what stands nowhere comes last
    ...rest.toSorted(
      (a, b) =>
        Number(a.box === undefined) - Number(b.box === undefined) ||
        natural.compare(a.box ?? '', b.box ?? ''),
    ),
  ];
};

/** What happens to whole sections before anything is joined. */
const withSections: ReadonlySet<RebuildStage> = new Set(['set down', 'level', 'align']);

/**
 * The order of the rebuild: stage by stage, in each from box to box on a short way.
 *
 * Method   a join stands in the stage of its kind, or in that of the latest join that it comes after; within a stage
 *          those that come after others of it are a round of their own
 * Symbols  joins  those of the book, laid by `laidJoins`
 * Returns  stages that have something to do, and the way in m
 * Cost     O(joins log joins + boxes^2)
 */
export const scheduleOf = (joins: readonly LaidJoin[], book: Book): Schedule => {
  const { places, inRow } = placesOfBoxes(book);
  const all = placed(joins);
  const byStage = groupBy(all, ({ stage }) => `${stage}`);
  const sections = (book.line?.sections ?? []).map(({ tag }) => tag);
  let at: Place | undefined;
  const plans = stages.map((stage, order): StagePlan => {
    const rounds = groupBy(byStage.get(`${order}`) ?? [], ({ depth }) => `${depth}`);
    const depths = [...rounds.keys()].map(Number).sort((a, b) => a - b);
    const stops: Stop[] = [];
    let distance = 0;
    for (const depth of depths) {
      const round = stopsOf(rounds.get(`${depth}`) ?? [], places, at);
      const way = round.flatMap(({ box = '' }) => places.get(box) ?? []);
      distance += wayLength(at, way);
      at = way.at(-1) ?? at;
      stops.push(...round);
    }
    return { stage, sections: withSections.has(stage) ? sections : [], stops, distance };
  });
  const busy = plans.filter((plan) => plan.sections.length + plan.stops.length > 0);
  return {
    beforeShipping: joins.filter((join) => stageOf(join) === undefined).map(({ tag }) => tag),
    stages: busy,
    distance: busy.reduce((sum, { distance }) => sum + distance, 0),
    inRow,
  };
};
