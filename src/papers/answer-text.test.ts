import { describe, expect, it } from 'vitest';
import { bookUnits } from '../book/book-units.ts';
import type { Remedy, RemedyChange } from '../floor/assessment.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { answerText, smallerText } from './answer-text.ts';
import { makePaperWords } from './paper-words.ts';

const book = { twinfloor: 1 } as const;
const inUnits = (system: UnitSystem) => makePaperWords(book, bookUnits(book, system), 'en');
const plain = (text: string): string => text.replace(/\s/g, ' ');

const opening: RemedyChange = {
  lever: 'openingWidth',
  path: '/floors/0/room/route/0/width',
  kind: 'length',
  value: 1.3208,
  text: '52 in',
};
const remedy = (change: RemedyChange, smaller: string): Remedy => ({
  lever: change.lever,
  path: change.path,
  finding: 'routeWidth S1',
  floor: 'A',
  patch: [],
  changes: [change],
  breaks: [],
  nextSmaller: { text: smaller, margin: -0.01 },
});

describe('what a lever is turned to, on paper', () => {
  it('stands in the units of the reader, with what would stand in the book', () => {
    // 52 and 51.5 in of 25.4 mm
    expect(plain(answerText(opening, inUnits('metric')))).toBe('1.321 m (52 in)');
    expect(plain(smallerText(remedy(opening, '51.5 in'), inUnits('metric')))).toBe('1.308 m (51.5 in)');
    const motor: RemedyChange = {
      ...opening,
      lever: 'motorSize',
      kind: 'power',
      value: 2200,
      text: '2.2 kW',
    };
    // 2200 W over 745.70 W
    expect(plain(answerText(motor, inUnits('us')))).toBe('2.95 hp (2.2 kW)');
  });
  it('stands alone where the reader has that unit', () => {
    const metric: RemedyChange = { ...opening, value: 1.33, text: '1.33 m' };
    expect(answerText(metric, inUnits('metric'))).toBe('1.33 m');
  });
  it('stays as it is made or named where it is no quantity, and a nominal size is not converted', () => {
    const word: RemedyChange = {
      ...opening,
      kind: 'temperature',
      value: 253.15,
      text: 'desiccant, -20 degC',
    };
    expect(answerText(word, inUnits('us'))).toBe('desiccant, -20 °C');
    const pipe: RemedyChange = { ...opening, lever: 'bore', value: 0.0348, text: '1 1/2 in' };
    expect(plain(answerText(pipe, inUnits('metric')))).toBe('34.8 mm (1 1/2 in)');
    expect(smallerText(remedy(pipe, '1 in'), inUnits('metric'))).toBe('1 in');
  });
});
