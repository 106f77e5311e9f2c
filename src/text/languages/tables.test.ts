import { describe, expect, it } from 'vitest';
import { misfits } from '../misfits.ts';
import { englishMessages, isWorded } from '../testing/english-messages.ts';
import { languages } from './languages.ts';
import { loadTranslation } from './load-translation.ts';

const files = import.meta.glob<Readonly<Record<string, string>>>('./*/*.json', {
  eager: true,
  import: 'default',
});
const messages = englishMessages();

const tablesOf = (language: string): readonly (readonly [string, Readonly<Record<string, string>>])[] =>
  Object.entries(files).flatMap(([path, table]) => {
    const [, folder, area = ''] = /^\.\/(\w+)\/(\w+)\.json$/.exec(path) ?? [];
    return folder === language ? [[area, table] as const] : [];
  });

describe.each(languages.filter((one) => one !== 'en'))('the tables in %s', (language) => {
  it('are loaded whole', async () => {
    const loaded = await loadTranslation(language);
    const held = tablesOf(language).flatMap(([, table]) => Object.entries(table));
    expect(new Map(held)).toEqual(loaded?.texts);
    expect(held.length).toBe(loaded?.texts.size);
  });
  // what is wanting goes to a file by `node scripts/translations.mjs missing`
  it('say every English message of pages and papers', async () => {
    const loaded = await loadTranslation(language);
    expect(messages.size).toBeGreaterThan(8000);
    expect([...messages.keys()].filter((text) => isWorded(text) && !loaded?.texts.has(text))).toEqual([]);
  });
  it('have the parts of the English and the plural forms of the language', () => {
    const wrong = tablesOf(language).flatMap(([, table]) =>
      Object.entries(table).flatMap(([english, text]) =>
        misfits(english, text, language).map((misfit) => ({ english, text, ...misfit })),
      ),
    );
    expect(wrong).toEqual([]);
  });
  it('hold no text that nobody says, and no empty one', () => {
    for (const [, table] of tablesOf(language)) {
      expect(Object.keys(table).filter((text) => !messages.has(text))).toEqual([]);
      expect(Object.values(table)).not.toContain('');
    }
  });
});
