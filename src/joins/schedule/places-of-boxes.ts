import type { Book, Section } from '../../book/index.ts';
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

/** Where boxes stand, and whether their sections had to be taken in a row. */
export interface BoxPlaces {
  readonly places: ReadonlyMap<string, Place>;
  /** The plan places no section: they were taken end to end, in the order of the book. */
  readonly inRow: boolean;
}

type Corner = Place & { readonly turned: number };

const planned = (sections: readonly Section[]): ReadonlyMap<string, Corner> =>
  new Map(
    sections.flatMap((section) => {
      const [x, y] = [sizeOf(section.x, 'length'), sizeOf(section.y, 'length')];
      if (x === undefined || y === undefined) return [];
      return [[section.tag, { x, y, turned: sizeOf(section.turned, 'angle') ?? 0 }] as const];
    }),
  );

/** Sections end to end; behind one whose length nobody says no place is known. */
const row = (sections: readonly Section[]): ReadonlyMap<string, Corner> => {
  const corners = new Map<string, Corner>();
  let x: number | undefined = 0;
  for (const { tag, length } of sections) {
    if (x === undefined) break;
    corners.set(tag, { x, y: 0, turned: 0 });
    const long: number | undefined = sizeOf(length, 'length');
    x = long === undefined ? undefined : x + long;
  }
  return corners;
};

/**
 * Where each box stands on the plan: its place on its section, turned and moved with it.
 *
 * Method   X = X_s + x cos t - y sin t;  Y = Y_s + x sin t + y cos t
 * Returns  boxes of which the book says it; those of a section without a place, or on none, have none
 * Assumes  where the plan places no section at all, they stand end to end in the order of the book, which is said
 */
export const placesOfBoxes = ({ line }: Book): BoxPlaces => {
  const sections = line?.sections ?? [];
  const onPlan = planned(sections);
  const corners = onPlan.size > 0 ? onPlan : row(sections);
  const places = new Map(
    (line?.boxes ?? []).flatMap(({ tag, section, x, y }) => {
      const corner = corners.get(section ?? '');
      const [along, across] = [sizeOf(x, 'length'), sizeOf(y, 'length')];
      if (corner === undefined || along === undefined || across === undefined) return [];
      const [cos, sin] = [Math.cos(corner.turned), Math.sin(corner.turned)];
      const place = {
        x: corner.x + along * cos - across * sin,
        y: corner.y + along * sin + across * cos,
      };
      return [[tag, place] as const];
    }),
  );
  return { places, inRow: onPlan.size === 0 && places.size > 0 };
};
