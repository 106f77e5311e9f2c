import type { Book } from '../../book/index.ts';
import type { Kind } from '../../quantity/index.ts';
import { readEntry } from '../../quantity/read-entry.ts';

/** A place on the plan of the line, m. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

const sizeOf = (given: unknown, kind: Kind): number | undefined => {
  const read = given === undefined ? undefined : readEntry(given, kind, { path: '' });
  return read?.ok ? read.value.value : undefined;
};

/**
 * Where each box stands on the plan: its place on its section, turned and moved with it.
 *
 * Method   X = X_s + x cos t - y sin t;  Y = Y_s + x sin t + y cos t
 * Returns  boxes of which the book says it; those of a section without a place, or on none, have none
 */
export const placesOfBoxes = ({ line }: Book): ReadonlyMap<string, Place> => {
  const sections = new Map((line?.sections ?? []).map((section) => [section.tag, section]));
  return new Map(
    (line?.boxes ?? []).flatMap(({ tag, section, x, y }) => {
      const host = section === undefined ? undefined : sections.get(section);
      const [left, across] = [sizeOf(x, 'length'), sizeOf(y, 'length')];
      const [from, beside] = [sizeOf(host?.x, 'length'), sizeOf(host?.y, 'length')];
      if (left === undefined || across === undefined || from === undefined || beside === undefined) return [];
      const turned = sizeOf(host?.turned, 'angle') ?? 0;
      const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
      return [[tag, { x: from + left * cos - across * sin, y: beside + left * sin + across * cos }] as const];
    }),
  );
};
