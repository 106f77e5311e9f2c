import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { assessBook, figureKinds, remediesFor } from '../../floor/index.ts';
import { sheetEntries } from '../../sheets/registry.ts';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { allWords } from './all-words.ts';
import { placeName, thingName } from './place-name.ts';
import { entryText, makeWords } from './words.ts';

const catalogue = allWords(sheetEntries, [utilityWords]);
const words = makeWords(catalogue, 'en');
const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');
const book = demo.value;
const assessment = assessBook(book);

describe('the words of the pages', () => {
  it('name every figure and finding', () => {
    const ids = [
      ...Object.keys(figureKinds),
      ...assessment.floors.flatMap((f) => f.findings.map(({ id }) => id)),
    ];
    expect(ids.filter((id) => !words.has(`figure.${id}`))).toEqual([]);
  });
  it('name every step of the chain that sets the pace', () => {
    const steps = assessment.floors.flatMap((floor) => floor.hold?.chain.map(({ step }) => step) ?? []);
    expect(steps.length).toBeGreaterThan(0);
    expect(steps.filter((step) => !words.has(`step.${step}`))).toEqual([]);
  });
  it('name every lever of a remedy, with an answer and without', () => {
    const levers = assessment.floors.flatMap(({ floor, findings }) =>
      findings.flatMap(({ id, levers: own }) => [
        ...own,
        ...remediesFor(book, { floor, finding: id }).map(({ lever }) => lever),
      ]),
    );
    expect(new Set(levers).size).toBeGreaterThan(5);
    expect(
      levers.filter((lever) => !words.has(`lever.${lever}`) || !words.has(`lever.alone.${lever}`)),
    ).toEqual([]);
  });
  it('name every note that comes with the demo book', () => {
    const notes = assessment.floors.flatMap((floor) => [
      ...floor.notes,
      ...floor.findings.flatMap((finding) => finding.notes),
      ...floor.workings.flatMap((working) => working.notes),
    ]);
    expect(notes.filter(({ code }) => !words.has(code)).map(({ code }) => code)).toEqual([]);
  });
});

describe('a place of the book in words', () => {
  const { say, has } = words;
  it('is the names on the way to it and the field', () => {
    expect(placeName(book, '/floors/0/supply/run/1/bore', say, has)).toBe('Oxbow, hose, 1 in, bore');
    expect(thingName(book, '/floors/0/supply/run/1/bore')).toBe('hose, 1 in');
  });
  it('is readable where a field has no word of its own', () => {
    expect(placeName(book, '/floors/0/air/freeAirFlow', say, has)).toBe('Oxbow, free air flow');
  });
});

describe('a quantity of the book as one would type it', () => {
  it('keeps the unit, and shows spread and range', () => {
    expect(entryText('80 psi')).toBe('80 psi');
    expect(entryText({ value: '2.55 m', spread: '0.05 m' })).toBe('2.55 m ± 0.05 m');
    expect(entryText({ value: ['2 bar', '3 bar'] })).toBe('2 bar to 3 bar');
    expect(entryText('12 degC')).toBe('12 °C');
    expect(entryText('1.05 m2')).toBe('1.05 m²');
    expect(entryText(undefined)).toBe('');
  });
});

describe('a number that a person types', () => {
  it('is read by the marks of the locale', () => {
    expect(makeWords(catalogue, 'de').readNumber('0,5')).toBe(0.5);
    expect(words.readNumber('1 050')).toBe(1050);
    expect(words.readNumber('many')).toBeUndefined();
  });
});
