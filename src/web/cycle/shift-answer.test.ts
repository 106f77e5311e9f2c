import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { boundsOf } from '../../line/shift/index.ts';
import { partsOf, type ShiftAnswer, type ShiftQuestion, shiftAnswers } from './shift-answer.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const question: ShiftQuestion = { of: 'shifts', book: read.value, floor: 'LARKMOOR', seed: 3, shifts: 40 };
const all = (asked: ShiftQuestion): readonly ShiftAnswer[] => [...shiftAnswers(asked)];

describe('the parts of a run', () => {
  it('are every shift once, the first few soon', () => {
    for (const shifts of [2, 10, 11, 400]) {
      const numbers = partsOf(shifts).flatMap((part) =>
        Array.from({ length: part.shifts }, (_, i) => part.first + i),
      );
      expect(numbers).toEqual(Array.from({ length: shifts }, (_, i) => i));
      expect(partsOf(shifts)[0]!.shifts).toBeLessThanOrEqual(10);
    }
  });
});

describe('the shifts of a floor', () => {
  it('are the same for the same seed and others for another', () => {
    const [one, again] = [all(question).at(-1)!, all(question).at(-1)!];
    expect(again.figures).toEqual(one.figures);
    expect(all({ ...question, seed: 4 }).at(-1)!.figures).not.toEqual(one.figures);
  });
  it('narrow while more come, and end when they are over', () => {
    const answers = all(question);
    const widths = answers.map(({ figures }) => {
      const { low, high } = boundsOf(figures!.good, figures!.shifts, 0.95)!;
      return high - low;
    });
    expect(widths.at(-1)).toBeLessThan(widths[0]!);
    expect(answers.map(({ done }) => done)).toEqual(answers.map((_, i) => i === answers.length - 1));
  });
  it('give minutes that add up to the shift', () => {
    const { figures, ground } = all(question).at(-1)!;
    const sum = figures!.minutes.reduce((seconds, time) => seconds + time.seconds.mean, 0);
    // sums of some thousand stretches of a shift
    expect(sum).toBeCloseTo(ground.line!.duration, 5);
  });
  it('cost no bottle when a cause is gone, and tell each change once', () => {
    const last = all({ ...question, of: 'changes' }).at(-1)!;
    const causes = last.worth.filter(({ change }) => change.change === 'cause');
    expect(causes.length).toBeGreaterThan(2);
    for (const { worth } of causes) {
      const { high } = boundsOf(worth.good, worth.shifts, 0.99)!;
      expect(high).toBeGreaterThanOrEqual(0);
    }
    const names = last.worth.map(({ change }) => `${change.change} ${change.cause}`);
    expect(new Set(names).size).toBe(names.length);
    expect(last.done).toBe(true);
  });
  it('are not run where a station does not say what makes it stand', () => {
    const stations = question.book.line!.stations!.map((station) =>
      station.kind === 'closing' ? { ...station, stops: undefined } : station,
    );
    const book = { ...question.book, line: { ...question.book.line, stations } } as typeof question.book;
    const [answer] = all({ ...question, book });
    expect(answer!.figures).toBeUndefined();
    expect(answer!.ground.missing.length).toBeGreaterThan(0);
    expect(answer!.ground.runningRate).toBeGreaterThan(0);
  });
});
