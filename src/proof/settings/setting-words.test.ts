import { describe, expect, it } from 'vitest';
import { makeCatalogue } from '../../text/index.ts';
import { demo } from '../testing/demo-proof.ts';
import { settingNames } from './setting-names.ts';
import { settingWords } from './setting-words.ts';
import { settingsText } from './settings.text.ts';
import { settingsOfBook } from './settings-of-book.ts';

const { say } = makeCatalogue([settingsText]);
const words = settingWords(demo, say, 'en');
const dwell = settingsOfBook(demo).find(({ id }) => id === 'dwell +WASH')!;

describe('a setting in words', () => {
  it('stands in the unit of its row, in whichever it was typed', () => {
    expect(words.value(dwell, '9800 ms').replace(/\s/gu, ' ')).toBe('9.8 s');
    expect(words.value(dwell, '10.2 s')).toBe('10.2 s');
  });
  it('stays as it was typed where it is no quantity, or a range', () => {
    for (const text of ['as it was', '9 to 10 s', '9 bar']) expect(words.value(dwell, text)).toBe(text);
  });
  it('is called by what it is and what it belongs to, by its id where the book has it no more', () => {
    const name = settingNames(demo, say);
    const called = settingsOfBook(demo).map(({ id }) => [id, name(id)] as const);
    expect(called.filter(([id, told]) => told === id || told.includes('setting.'))).toEqual([]);
    expect(name('dwell +OVEN')).toBe('dwell +OVEN');
  });
});
