import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostQuestions, questions } from '../../book/first-book/questions.ts';
import { allWords } from '../words/all-words.ts';
import { newBookWords } from '../words/new-book.text.ts';
import { makeWords } from '../words/words.ts';
import { firstVerdict } from './answers-verdict.ts';

const words = makeWords(allWords([], [newBookWords]), 'en');
const twelve: Record<string, string> = {
  title: 'Bottle line 2',
  rate: '1050 bottles/h',
  level: '1 L',
  row: '3',
  index: '8 s',
  lanes: '3',
  kv: 'Kv 2',
  product: 'juice',
  siteSource: 'tank above',
  siteSurface: '3 m',
  siteBore: '25 mm',
  builderSource: 'main',
};

describe('the words of the short form', () => {
  it('ask every question and say where its answer is found', () => {
    const keys = questions.flatMap(({ id, whence }) => [
      `question.${id}.ask`,
      `question.${id}.find`,
      `first.whence.${whence}`,
      `field.${id}`,
    ]);
    expect(keys.filter((key) => !words.has(key))).toEqual([]);
  });
  it('name every answer that can be chosen', () => {
    const options = questions.flatMap(({ form }) => (form.is === 'choice' ? form.options : []));
    expect(options.filter((option) => !words.has(`first.answer.${option}`))).toEqual([]);
  });
});

describe('the verdict of the answers so far', () => {
  it('stands after the first twelve', () => {
    const verdict = firstVerdict(twelve);
    expect(verdict.open).toEqual([]);
    expect(verdict.rate?.have.value).toBeGreaterThan(0);
    expect(verdict.rate?.have.low).toBeLessThan(verdict.rate!.have.high!);
  });
  it('is not told while the way to the filler is not known: a run of no length would carry anything', () => {
    const { siteBore: _, ...rest } = twelve;
    expect(firstVerdict(rest).rate).toBeUndefined();
    expect(firstVerdict({ ...rest, siteBore: '25 kg' }).rate).toBeUndefined();
    expect(firstVerdict(rest).open).toEqual(['siteBore']);
  });
  it('counts a blank answer as not known and one that does not read as left out', () => {
    const verdict = firstVerdict({ ...twelve, rate: '  ', kv: '3 bar' });
    expect(verdict.open).toEqual(['rate', 'kv']);
    expect(verdict.unread).toEqual(['kv']);
    expect(verdict.book?.agreement?.rates).toBeUndefined();
  });
  it('is the same whether a blank answer stands there or none', () => {
    expect(firstVerdict({ ...twelve, cap: '' }).book).toEqual(firstVerdict(twelve).book);
  });
  it('makes a book of any answers in any order, and never asks more than the form may', () => {
    const text = fc.constantFrom(
      '',
      '  ',
      '3',
      '2 m',
      'Kv 2',
      '3 bar',
      'main',
      'tank above',
      'pump',
      'oil',
      '{',
    );
    const answers = fc.dictionary(fc.constantFrom(...questions.map(({ id }) => id)), text);
    fc.assert(
      fc.property(answers, (given) => {
        const verdict = firstVerdict(given);
        expect(verdict.book).toBeDefined();
        expect(verdict.questions.length).toBeLessThanOrEqual(mostQuestions);
      }),
      { numRuns: 150, seed: 7 },
    );
  });
});
