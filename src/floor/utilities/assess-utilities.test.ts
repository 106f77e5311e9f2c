import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { assessBook } from '../assess-book.ts';
import type { FloorAssessment } from '../assessment.ts';
import { type UtilityAnswers, utilities } from './utility-finding.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const siteOf = (): FloorAssessment => assessBook(read.value).floors[1]!;

/** Answers with what their workings gave in the place of the number of each, which says only when it was asked for. */
const answersOf = ({ findings, figures }: UtilityAnswers, { workings }: FloorAssessment): unknown =>
  JSON.parse(
    JSON.stringify({ findings, figures }, (key, value) =>
      key === 'working' ? [workings[value]!.sheet, workings[value]!.outputs] : value,
    ),
  );

describe('the utilities of a floor', () => {
  it('answer for one trade alone, and for the others behind it, as they do all at once', () => {
    const whole = siteOf();
    for (const first of ['heat', 'power'] as const) {
      const floor = siteOf();
      const alone = floor.utilities.of(first);
      const own = <T extends { readonly utility: string }>(all: readonly T[]) =>
        all.filter(({ utility }) => utility === first);
      const expected = { findings: own(whole.utilities.findings), figures: own(whole.utilities.figures) };
      expect(answersOf(alone, floor)).toEqual(answersOf(expected, whole));
      expect(answersOf(floor.utilities, floor)).toEqual(answersOf(whole.utilities, whole));
    }
  });
  it('have every answer in one trade', () => {
    const { utilities: all } = siteOf();
    expect(utilities.flatMap((each) => all.of(each).findings.map(({ id }) => id)).sort()).toEqual(
      all.findings.map(({ id }) => id).sort(),
    );
  });
});
