import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBook } from '../read-book.ts';
import { writeBook } from '../write-book.ts';
import { blankLine } from './blank-line.ts';
import { answerProblems, bookFromAnswers } from './book-from-answers.ts';
import type { Answers } from './question.ts';
import { firstVerdictAfter, mostQuestions, questions, questionsFor } from './questions.ts';

const good: Record<string, string> = {
  title: 'Bottle line 2',
  rate: '900 bottles/h',
  level: '1 L',
  row: '3',
  index: '11 s',
  lanes: '3',
  kv: 'Kv 1.8',
  product: 'juice',
  siteSource: 'tank above',
  siteSurface: '4.2 m',
  siteBore: '38 mm',
  builderSource: 'main',
  builderPressure: '3 bar',
  builderBore: '1 in',
};

const answered = (answers: Answers) => {
  const result = bookFromAnswers(answers);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('the short form', () => {
  it('puts at most 25 questions whatever the answers are', () => {
    for (const site of ['tank above', 'main', 'pump']) {
      for (const builder of ['tank above', 'main', 'pump']) {
        const put = questionsFor({ ...good, siteSource: site, builderSource: builder });
        expect(put.length).toBeLessThanOrEqual(mostQuestions);
      }
    }
  });
  it('asks for all that the first verdict wants within its first twelve questions', () => {
    const first = questionsFor(good)
      .slice(0, firstVerdictAfter)
      .map(({ id }) => id);
    expect(first).toContain('siteBore');
    expect(first).toContain('rate');
  });
  it('starts from a line that reads, whatever has been answered', () => {
    expect(readBook(writeBook(blankLine)).ok).toBe(true);
    expect(bookFromAnswers({}).ok).toBe(true);
  });
  it('puts an answer into the book as it was typed', () => {
    const book = answered(good);
    expect(book.floors?.[0]?.supply?.run?.[0]).toMatchObject({ bore: '1 in' });
    expect(book.agreement?.rates?.[0]?.rate).toBe('900 bottles/h');
    expect(book.line?.stations?.[2]).toMatchObject({ lanes: [{ kv: 'Kv 1.8' }, {}, {}] });
  });
  it('takes the usual source where only its details are answered, and knows no run without a bore', () => {
    const book = answered({ ...good, siteSource: '', siteBore: '', siteArea: '1.5 m2' });
    expect(book.floors?.[1]?.supply?.source).toMatchObject({ kind: 'gravity', area: '1.5 m2' });
    const [piece] = book.floors?.[1]?.supply?.run ?? [];
    expect(piece).toMatchObject({ kind: 'pipe', name: 'run' });
    expect(piece).not.toHaveProperty('bore');
  });
  it('tells an answer that can not be read at its question, and keeps the others', () => {
    const kv = questions.find(({ id }) => id === 'kv')!;
    expect(answerProblems(kv, '3 bar')[0]?.code).toBe('QUANTITY_WRONG_KIND');
    expect(answered({ ...good, kv: '3 bar' }).agreement?.rates?.[0]?.rate).toBe('900 bottles/h');
    const row = questions.find(({ id }) => id === 'row')!;
    expect(answerProblems(row, '3.5')).toHaveLength(1);
    expect(answerProblems(row, '')).toEqual([]);
  });
  it('makes a book of any answers at all', () => {
    const any = fc.dictionary(
      fc.constantFrom(...questions.map(({ id }) => id)),
      fc.string({ maxLength: 30 }),
    );
    fc.assert(
      fc.property(any, (answers) => {
        expect(bookFromAnswers({ ...good, ...answers }).ok).toBe(true);
      }),
      { numRuns: 200, seed: 12 },
    );
  });
});
