import type { Note } from '../../sheets/frame.ts';
import type { Tracer } from '../tracer.ts';
import type { UncertainPlace } from '../uncertain-places.ts';
import { type Graph, makeGraph, type Variation } from './graph.ts';
import type { Known } from './known.ts';
import type { Refusal } from './utility-finding.ts';

/** What a calculation met on its way. */
export interface Met {
  readonly notes: Note[];
  readonly refusals: Refusal[];
  readonly basis: Basis;
}

/** What an answer rests on. */
export interface Basis {
  /** Values that are not sure. */
  readonly places: Set<UncertainPlace>;
  /** Places for which a default was taken, and those that were wanted and are not there. */
  readonly assumed: Set<string>;
  readonly missing: Set<string>;
}

/** Adds what another answer rests on. */
export const gather = (into: Basis, from: Basis): void => {
  for (const place of from.places) into.places.add(place);
  for (const path of from.assumed) into.assumed.add(path);
  for (const path of from.missing) into.missing.add(path);
};

/** On which floor, with which format. */
export interface Where {
  readonly floor: number;
  readonly formatPath: string;
}

/** An intermediate result with what it rests on. */
interface Shared {
  readonly value: unknown;
  readonly met: Met;
}

/** A number of the book, and its place where it is not sure. */
export interface Numbered {
  readonly known?: Known;
  readonly place?: UncertainPlace | undefined;
}

/** Everything that the questions of one floor have in common. */
export interface Inquiry {
  readonly where: Where;
  readonly graph: Graph;
  /** Intermediate results of the floor. */
  readonly shared: Map<string, Shared>;
  /** What each uncertain value changes at both of its ends. */
  readonly varied: Map<UncertainPlace, readonly [Variation, Variation]>;
  /** Words and plain numbers of the book that were looked up. */
  readonly looked: Map<string, unknown>;
  /** Numbers of the book that were asked for, by path, there or not. */
  readonly numbers: Map<string, Numbered>;
  /** Widths of the defaults that were taken, by path. */
  readonly defaults: Map<string, UncertainPlace | undefined>;
  /** Keeps the workings; without it nothing is shown of what was computed. */
  readonly tracer?: Tracer;
}

export const inquiryOf = (where: Where, tracer?: Tracer): Inquiry => ({
  where,
  graph: makeGraph(),
  shared: new Map(),
  varied: new Map(),
  looked: new Map(),
  numbers: new Map(),
  defaults: new Map(),
  ...(tracer === undefined ? {} : { tracer }),
});

/** What changes with one value of the book at both of its ends, among all steps by now; found once for all questions. */
export const variedBy = (
  { graph, varied }: Inquiry,
  place: UncertainPlace,
): readonly [Variation, Variation] => {
  const found = varied.get(place);
  if (found !== undefined && found[0].looked === graph.size()) return found;
  const [low, high] = place.ends;
  const now = [graph.vary(place.path, low, found?.[0]), graph.vary(place.path, high, found?.[1])] as const;
  varied.set(place, now);
  return now;
};
