import type { Join } from '../book/index.ts';

export type JoinKind = NonNullable<Join['kind']>;

/** What is led from one end to another; the rest is one thing at one place, to be done or undone. */
const led: ReadonlySet<JoinKind> = new Set(['conductor', 'tube', 'hose', 'drain', 'duct', 'bond']);

export const hasTwoEnds = (kind: JoinKind | undefined): boolean => kind !== undefined && led.has(kind);

/** What is led into a terminal or a port. */
const landed: ReadonlySet<JoinKind> = new Set(['conductor', 'tube', 'hose', 'bond']);

export const takesTerminal = (kind: JoinKind | undefined): boolean => kind !== undefined && landed.has(kind);

/** Done before the line leaves: nothing of it is made again. */
const before: ReadonlySet<JoinKind> = new Set(['drained', 'blown out', 'dried']);

export const isBeforeShipping = (kind: JoinKind | undefined): boolean =>
  kind !== undefined && before.has(kind);

/** Wires of one sort bear labels of one sort: a tube 12 and a wire 12 are not mistaken for each other. */
export const labelGroup = (kind: JoinKind | undefined): 'electric' | 'fluid' | 'other' =>
  kind === 'conductor' || kind === 'bond'
    ? 'electric'
    : kind === 'tube' || kind === 'hose' || kind === 'drain' || kind === 'duct'
      ? 'fluid'
      : 'other';
