import { describe, expect, it } from 'vitest';
import { bookUnits } from '../book/book-units.ts';
import { settingForm } from '../book/setting-value.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { makePaperWords } from './paper-words.ts';
import { settingText } from './setting-text.ts';

const book = { twinfloor: 1 } as const;
const said = (text: string, unit: string, system: UnitSystem): string =>
  settingText(settingForm(unit), text, makePaperWords(book, bookUnits(book, system), 'en')).replace(
    /\s/g,
    ' ',
  );

describe('a setting on paper', () => {
  it('stands in the units of the reader, as it was typed behind it where the conversion rounds', () => {
    // 1 lbf/in2 = 6894.757 Pa, NIST SP 811:2008, B.8 (memory): 80 psi are 5.5158 bar
    expect(said('80 psi', 'bar(g)', 'metric')).toBe('5.516 bar(g) (80 psi)');
    // 55 degC are 131 degF, to the degree
    expect(said('55 degC', 'degC', 'us')).toBe('131 °F');
    expect(said('9800 ms', 's', 'metric')).toBe('9.8 s');
  });

  it('stays as it was typed where the reader has that unit, where it is counted, and where it is words', () => {
    expect(said('5.5 bar(g)', 'bar(g)', 'metric')).toBe('5.5 bar(g)');
    expect(said('2.5 turns', 'turns', 'metric')).toBe('2.5 turns');
    expect(said('recipe 3', '', 'us')).toBe('recipe 3');
    expect(said('hole 4', 'holes', 'us')).toBe('hole 4');
  });

  it('of a range keeps both ends', () => {
    expect(said('70 to 80 psi', 'bar(g)', 'metric')).toBe('4.826 … 5.516 bar(g) (70 to 80 psi)');
  });
});
