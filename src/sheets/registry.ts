import { airEntries } from './air/entries.ts';
import { buildingEntries } from './building/entries.ts';
import { contentsEntries } from './contents/entries.ts';
import { heatEntries } from './heat/entries.ts';
import { hygieneEntries } from './hygiene/entries.ts';
import { liftingEntries } from './lifting/entries.ts';
import { powerEntries } from './power/entries.ts';
import { rateEntries } from './rate/entries.ts';
import { safetyEntries } from './safety/entries.ts';
import type { SheetEntry } from './sheet-entry.ts';
import { waterEntries } from './water/entries.ts';

/** Every sheet with its evidence and its words. A new sheet is one line here. */
export const sheetEntries: readonly SheetEntry[] = [
  ...waterEntries,
  ...rateEntries,
  ...airEntries,
  ...powerEntries,
  ...hygieneEntries,
  ...heatEntries,
  ...buildingEntries,
  ...liftingEntries,
  ...contentsEntries,
  ...safetyEntries,
];

/** The same by id: `water/pipe-loss`. */
export const registry: ReadonlyMap<string, SheetEntry> = new Map(
  sheetEntries.map((entry) => [entry.sheet.id, entry]),
);
