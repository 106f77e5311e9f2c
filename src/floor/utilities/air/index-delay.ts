import type { Book } from '../../../book/index.ts';
import type { Direction } from '../../../sheets/air/piston-force.ts';
import { strokeChangeSheet } from '../../../sheets/air/stroke-change.ts';
import type { BookReader } from '../../book-reader.ts';
import { builtOn } from '../../built-on.ts';
import { makeTracer, movedOrigin, type Tracer } from '../../tracer.ts';
import type { Doubt } from '../../uncertain-places.ts';
import { type Calculation, makeCalculation } from '../calculation.ts';
import { inquiryOf, variedBy, type Where } from '../inquiry.ts';
import type { Known } from '../known.ts';
import { dropPressure } from './drop-pressure.ts';
import { strokeAt } from './stroke-here.ts';

/** The strokes that stand in the index of the washer: a cylinder that goes out and back within it has two. */
const strokesOf = (book: Book, cylinders: readonly string[]) =>
  cylinders.flatMap((tag) => {
    const index = (book.line?.cylinders ?? []).findIndex((each) => each.tag === tag);
    const cylinder = book.line?.cylinders?.[index];
    if (cylinder === undefined) return [];
    const both: readonly Direction[] =
      (cylinder.strokesPerCycle ?? 2) >= 2 ? ['extend', 'retract'] : ['extend'];
    const drop = cylinder.drop ?? book.line?.airDrops?.[0]?.tag;
    return drop === undefined ? [] : both.map((direction) => ({ index, direction, drop }));
  });

/** What the cylinders of the index make of another air. */
export interface IndexDelay {
  /** Time by which the index takes longer than where the line was built, s; shorter where it is negative. */
  readonly added: number;
  /** What moves it: the time with each uncertain value of the air at both of its ends. */
  readonly places: readonly {
    readonly path: string;
    readonly doubt: Doubt;
    readonly ends: readonly number[];
  }[];
  /** Places for which a default was taken. */
  readonly assumed: readonly string[];
  /** Cylinder that does not move at the pressure of this floor. */
  readonly stalls?: string;
}

const nothing: IndexDelay = { added: 0, places: [], assumed: [] };

/** Time that the air of this floor adds to the index, with all that it rests on. */
export interface AddedByAir {
  readonly added?: Known;
  readonly stalls?: string;
}

/** Each stroke of the index at the pressure of its drop on both floors, and what it takes longer here. */
const strokesOnBoth = (here: Calculation, there: Calculation, cylinders: readonly string[]): AddedByAir => {
  const asBuilt: (Known | undefined)[] = [];
  const then: (Known | undefined)[] = [];
  const now: (Known | undefined)[] = [];
  for (const { index, direction, drop } of strokesOf(here.book, cylinders)) {
    const before = strokeAt(there, index, direction, dropPressure(there, drop))?.longest;
    const pressure = dropPressure(here, drop);
    if (before === undefined || pressure === undefined) continue;
    const after = strokeAt(here, index, direction, pressure)?.longest;
    if (after === undefined) return { stalls: here.book.line!.cylinders![index]!.tag };
    const path = `/line/cylinders/${index}/${direction === 'extend' ? 'out' : 'back'}`;
    asBuilt.push(here.number(path, 'time') ?? before);
    then.push(before);
    now.push(after);
  }
  const added =
    now.length === 0 ? undefined : here.run(strokeChangeSheet, { asBuilt, there: then, here: now })?.added;
  return added === undefined ? {} : { added };
};

/**
 * Time that the cylinders of a washer's index take longer on a floor than where the line was built and timed.
 *
 * Method   each stroke is computed at the pressure of its drop on both floors; the time as built is stretched by their ratio
 * Returns  nothing added on the floor that it was built on, or where the air of either is not known
 */
export const addedByAir = (c: Calculation, cylinders: readonly string[]): AddedByAir =>
  c.once(`addedByAir ${cylinders.join(' ')}`, (c) => {
    const built = builtOn(c.book);
    if (built < 0 || built === c.floor || cylinders.length === 0) return {};
    // what is not known of the air adds nothing, so that nothing of it is missed
    return c.aside(c.floor, (here) => c.aside(built, (there) => strokesOnBoth(here, there, cylinders)));
  });

const delayOf = (reader: BookReader, where: Where, cylinders: readonly string[]): IndexDelay => {
  const inquiry = inquiryOf(where);
  const { met, ...calculation } = makeCalculation(reader, inquiry);
  const { added, stalls } = addedByAir(calculation, cylinders);
  if (added === undefined) return { ...nothing, ...(stalls === undefined ? {} : { stalls }) };
  return {
    added: added.value,
    assumed: [...met.basis.assumed],
    places: [...met.basis.places].map((place) => ({
      path: place.path,
      doubt: place.doubt,
      ends: variedBy(inquiry, place).map(
        ({ changed }) => inquiry.graph.after(changed, added.ref, added.value) ?? added.value,
      ),
    })),
  };
};

/** The same for the line's own question, which varies it as one place. */
export const indexDelay = (reader: BookReader, where: Where, cylinders: readonly string[]): IndexDelay =>
  reader.kept(`index delay ${where.floor} ${where.formatPath} ${cylinders.join(' ')}`, () =>
    delayOf(reader, where, cylinders),
  );

/** The same with its workings, which a tracer takes in behind its own. */
export const traceDelay = (
  tracer: Tracer,
  reader: BookReader,
  where: Where,
  cylinders: readonly string[],
): Known | undefined => {
  const key = `workings of the index delay ${where.floor} ${where.formatPath} ${cylinders.join(' ')}`;
  const { added, workings } = reader.kept(key, () => {
    const own = makeTracer();
    const c = makeCalculation(reader.scope(), inquiryOf(where, own));
    return { added: addedByAir(c, cylinders).added, workings: own.whole };
  });
  const by = tracer.takeIn(workings);
  return added === undefined ? undefined : { ...added, from: movedOrigin(added.from, workings.first, by) };
};

/** The place that stands for the delay as a whole where an interval is sought. */
export const delayPlace = (where: Where): string => `/floors/${where.floor}/air#index delay`;
