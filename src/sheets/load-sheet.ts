import type { SheetEntry } from './sheet-entry.ts';
import { type Discipline, sheetNames } from './sheet-names.ts';

/** The sheets of one discipline, which are loaded without those of the others. */
const disciplines: Readonly<Record<Discipline, () => Promise<readonly SheetEntry[]>>> = {
  water: async () => (await import('./water/entries.ts')).waterEntries,
  rate: async () => (await import('./rate/entries.ts')).rateEntries,
  air: async () => (await import('./air/entries.ts')).airEntries,
  power: async () => (await import('./power/entries.ts')).powerEntries,
  hygiene: async () => (await import('./hygiene/entries.ts')).hygieneEntries,
  heat: async () => (await import('./heat/entries.ts')).heatEntries,
  building: async () => (await import('./building/entries.ts')).buildingEntries,
  lifting: async () => (await import('./lifting/entries.ts')).liftingEntries,
  contents: async () => (await import('./contents/entries.ts')).contentsEntries,
  safety: async () => (await import('./safety/entries.ts')).safetyEntries,
};

/** Every sheet as it is called, `water/pipe-loss`. */
const ids = Object.entries(sheetNames).flatMap(([discipline, names]) =>
  names.map((name) => ({ id: `${discipline}/${name}`, name, discipline: discipline as Discipline })),
);

/** One sheet by its id, or by its name alone where only one discipline has it; undefined where it can't be told. */
export const loadSheet = async (given: string): Promise<SheetEntry | undefined> => {
  const [found, ...others] = ids.filter(({ id, name }) => id === given || name === given);
  if (found === undefined || others.length > 0) return undefined;
  const entries = await disciplines[found.discipline]();
  return entries.find(({ sheet }) => sheet.id === found.id);
};
