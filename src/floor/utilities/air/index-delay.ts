import type { Book } from '../../../book/index.ts';
import type { Direction } from '../../../sheets/air/piston-force.ts';
import { strokeChange, strokeChangeSheet } from '../../../sheets/air/stroke-change.ts';
import { type BookReader, gather } from '../../book-reader.ts';
import type { Tracer } from '../../tracer.ts';
import { type Calculation, type Known, makeCalculation, sharedResults, type Where } from '../calculation.ts';
import { dropPressure } from './drop-pressure.ts';
import { strokeAt, strokeTimeNear } from './stroke-here.ts';

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

const floorCalculation = (reader: BookReader, where: Where, tracer?: Tracer): Calculation =>
  makeCalculation(reader, {
    where,
    shared: sharedResults(),
    ...(tracer === undefined ? {} : { tracer }),
  });

const builtOn = (book: Book): number => (book.floors ?? []).findIndex((floor) => floor.role === 'built on');

/** What the cylinders of the index make of another air. */
export interface IndexDelay {
  /** Time by which the index takes longer than where the line was built, s; shorter where it is negative. */
  readonly added: number;
  /** Cylinder that does not move at the pressure of this floor. */
  readonly stalls?: string;
}

const nothing: IndexDelay = { added: 0 };

/**
 * Time that the cylinders of a washer's index take longer on a floor than where the line was built and timed.
 *
 * Method   each stroke is computed at the pressure of its drop on both floors; the time as built is stretched by their ratio
 * Returns  nothing added on the floor that it was built on, or where the air of either is not known
 */
export const indexDelay = (reader: BookReader, where: Where, cylinders: readonly string[]): IndexDelay => {
  const built = builtOn(reader.book);
  if (built < 0 || built === where.floor || cylinders.length === 0) return nothing;
  const scopes = [reader.scope(), reader.scope()] as const;
  const here = floorCalculation(scopes[0], where);
  const there = floorCalculation(scopes[1], { ...where, floor: built });
  let added = 0;
  let found = false;
  for (const { index, direction, drop } of strokesOf(reader.book, cylinders)) {
    const pressure = dropPressure(here, drop);
    const then = strokeTimeNear(there, index, direction, dropPressure(there, drop));
    if (then === undefined || pressure === undefined) continue;
    const now = strokeTimeNear(here, index, direction, pressure);
    if (now === undefined) return { added: 0, stalls: reader.book.line!.cylinders![index]!.tag };
    const path = `/line/cylinders/${index}/${direction === 'extend' ? 'out' : 'back'}`;
    const asBuilt = here.number(path, 'time')?.value ?? then;
    added += strokeChange(asBuilt, then, now) - asBuilt;
    found = true;
  }
  if (!found) return nothing;
  // what is missing of the air makes no rate unknown: the line is then taken as it was built
  for (const scope of scopes) scope.account.missing.clear();
  gather(reader, scopes);
  return { added };
};

/** The same with its workings. */
export const traceIndexDelay = (
  reader: BookReader,
  where: Where,
  cylinders: readonly string[],
  tracer: Tracer,
): Known | undefined => {
  const built = builtOn(reader.book);
  if (built < 0 || built === where.floor) return undefined;
  const here = floorCalculation(reader.scope(), where, tracer);
  const there = floorCalculation(reader.scope(), { ...where, floor: built }, tracer);
  const strokes = strokesOf(reader.book, cylinders).map(({ index, direction, drop }) => {
    const then = strokeAt(there, index, direction, dropPressure(there, drop))?.longest;
    const path = `/line/cylinders/${index}/${direction === 'extend' ? 'out' : 'back'}`;
    return {
      asBuilt: here.number(path, 'time') ?? then,
      there: then,
      here: strokeAt(here, index, direction, dropPressure(here, drop))?.longest,
    };
  });
  return here.run(strokeChangeSheet, {
    asBuilt: strokes.map((each) => each.asBuilt),
    there: strokes.map((each) => each.there),
    here: strokes.map((each) => each.here),
  })?.added;
};
