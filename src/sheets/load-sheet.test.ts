import { expect, it } from 'vitest';
import { loadSheet } from './load-sheet.ts';
import { registry, sheetEntries } from './registry.ts';
import { sheetNames } from './sheet-names.ts';

const namesBy = (): ReadonlyMap<string, readonly string[]> => {
  const names = new Map<string, string[]>();
  for (const { sheet } of sheetEntries) {
    const [discipline = '', name = ''] = sheet.id.split('/');
    names.set(discipline, [...(names.get(discipline) ?? []), name]);
  }
  return names;
};

/** The file as it is to be: written anew with `-u`, as the pages are. */
const fileOf = (names: ReadonlyMap<string, readonly string[]>): string =>
  [
    '/** Names of the sheets by their discipline, so that one is loaded without the others. Made from the registry. */',
    '// biome-ignore format: a name to the line, however many a discipline has',
    'export const sheetNames = {',
    ...[...names].flatMap(([discipline, all]) => [
      `  ${discipline}: [`,
      ...all.map((name) => `    '${name}',`),
      '  ],',
    ]),
    '} as const;',
    '',
    'export type Discipline = keyof typeof sheetNames;',
    '',
  ].join('\n');

it('names every sheet under its discipline', async () => {
  await expect(fileOf(namesBy())).toMatchFileSnapshot('./sheet-names.ts');
});

it('gives the sheet of the registry by its id and by its name', async () => {
  for (const [discipline, names] of Object.entries(sheetNames)) {
    for (const name of names) {
      const entry = registry.get(`${discipline}/${name}`);
      expect(await loadSheet(`${discipline}/${name}`)).toBe(entry);
      expect(await loadSheet(name)).toBe(entry);
    }
  }
});

it('gives none for what is no sheet, were it a word that every object knows', async () => {
  expect(await loadSheet('pipe')).toBeUndefined();
  expect(await loadSheet('water/')).toBeUndefined();
  expect(await loadSheet('constructor')).toBeUndefined();
});
