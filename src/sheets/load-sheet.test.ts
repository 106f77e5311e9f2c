import { expect, it } from 'vitest';
import { loadSheet } from './load-sheet.ts';
import { sheetEntries } from './registry.ts';
import { sheetNames } from './sheet-names.ts';

it('names every sheet under its discipline, in the order of the registry', () => {
  const named = Object.entries(sheetNames).flatMap(([discipline, names]) =>
    names.map((name) => `${discipline}/${name}`),
  );
  expect(named).toEqual(sheetEntries.map(({ sheet }) => sheet.id));
});

it('gives the sheet of the registry by its id and by its name', async () => {
  for (const entry of sheetEntries) {
    expect(await loadSheet(entry.sheet.id)).toBe(entry);
    expect(await loadSheet(entry.sheet.id.split('/')[1]!)).toBe(entry);
  }
});

it('gives none for what is no sheet, were it a word that every object knows', async () => {
  expect(await loadSheet('pipe')).toBeUndefined();
  expect(await loadSheet('water/')).toBeUndefined();
  expect(await loadSheet('constructor')).toBeUndefined();
});
