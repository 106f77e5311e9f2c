import type { Book } from '../../book/index.ts';
import type { Kind } from '../../quantity/index.ts';
import { readEntry } from '../../quantity/read-entry.ts';

/** A place on the plan of the line, m. */
export type Place = readonly [x: number, y: number];

/** A section where it stands, by its corner, in its own measures and turned by an angle. */
export interface PlacedSection {
  readonly tag: string;
  readonly name: string;
  readonly corner: Place;
  /** rad */
  readonly turned: number;
  readonly length: number;
  readonly width: number;
  /** Way that stays free around it; absent where nobody says. */
  readonly clearance?: number;
}

export interface PlacedSections {
  readonly sections: readonly PlacedSection[];
  /** The book says where each stands; else they are drawn one after the other. */
  readonly planned: boolean;
  /** Names of those whose length or width is not known: they can't be drawn. */
  readonly sizeless: readonly string[];
}

type Entry = Parameters<typeof readEntry>[0];

/** The number that an entry of the book gives in SI; undefined where it gives none. */
export const numberIn = (entry: Entry | undefined, kind: Kind): number | undefined => {
  if (entry === undefined) return undefined;
  const read = readEntry(entry, kind, { path: '' });
  return read.ok ? read.value.value : undefined;
};

/** From the corner of a section along and across it to the plan. */
export const onPlan = ({ corner: [x, y], turned }: PlacedSection, along: number, across: number): Place => [
  x + along * Math.cos(turned) - across * Math.sin(turned),
  y + along * Math.sin(turned) + across * Math.cos(turned),
];

/** Its four corners, further out by a margin on each side. */
export const cornersOf = (section: PlacedSection, margin = 0): readonly Place[] => {
  const { length, width } = section;
  return [
    onPlan(section, -margin, -margin),
    onPlan(section, length + margin, -margin),
    onPlan(section, length + margin, width + margin),
    onPlan(section, -margin, width + margin),
  ];
};

/** The sections of a book as they stand, or one after the other where it has no plan of all of them. */
export const placedSections = ({ line }: Book): PlacedSections => {
  const all = (line?.sections ?? []).map((section) => ({
    section,
    name: section.name ?? section.tag,
    length: numberIn(section.length, 'length'),
    width: numberIn(section.width, 'length'),
    x: numberIn(section.x, 'length'),
    y: numberIn(section.y, 'length'),
  }));
  const planned = all.every(({ x, y }) => x !== undefined && y !== undefined);
  const sections: PlacedSection[] = [];
  let after = 0;
  for (const { section, name, length, width, x = 0, y = 0 } of all) {
    if (length === undefined || width === undefined) continue;
    const clearance = numberIn(section.clearance, 'length');
    sections.push({
      tag: section.tag,
      name,
      corner: planned ? [x, y] : [after, 0],
      turned: planned ? (numberIn(section.turned, 'angle') ?? 0) : 0,
      length,
      width,
      ...(clearance === undefined ? {} : { clearance }),
    });
    after += length;
  }
  return {
    sections,
    planned,
    sizeless: all
      .filter(({ length, width }) => length === undefined || width === undefined)
      .map(({ name }) => name),
  };
};
