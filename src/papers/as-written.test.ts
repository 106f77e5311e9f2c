import { describe, expect, it } from 'vitest';
import { bookUnits } from '../book/book-units.ts';
import { loadTranslation } from '../text/languages/load-translation.ts';
import { asWritten } from './as-written.ts';
import { makePaperWords } from './paper-words.ts';

const book = { twinfloor: 1 } as const;
const wordsIn = async (language: 'en' | 'de') =>
  makePaperWords(book, bookUnits(book, undefined), language, await loadTranslation(language));

describe('what was typed, on a paper in another language', () => {
  it('has the mark before decimals and the words of that language', async () => {
    const paper = await wordsIn('de');
    const said = (text: string) => asWritten(text, paper);
    expect(['1.5 mm2', '> 550 Mohm', '5.5 to 10', '-0.25 degC', '0.5 bar to 1.5 bar'].map(said)).toEqual([
      '1,5 mm²',
      '> 550 MΩ',
      '5,5 bis 10',
      '-0,25 °C',
      '0,5 bar bis 1,5 bar',
    ]);
  });
  it('stays where it is a name, a day, a version or an address', async () => {
    const paper = await wordsIn('de');
    for (const text of ['recipe 3.1', 'X1.2', '2027.03.08', '1.2.3', '192.168.0.1', 'hole 4 to 5', '']) {
      expect(asWritten(text, paper)).toBe(text);
    }
  });
  it('stays as it was typed in English', async () => {
    const paper = await wordsIn('en');
    expect(asWritten('5.5 to 10', paper)).toBe('5.5 to 10');
  });
});
