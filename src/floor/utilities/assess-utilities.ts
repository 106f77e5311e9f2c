import type { BookReader } from '../book-reader.ts';
import { onDemand } from '../on-demand.ts';
import { type Inquiry, inquiryOf, type Where } from './inquiry.ts';
import { askDraw, askNeed } from './judge-need.ts';
import { drawsOf, needsOf } from './needs-of.ts';
import type { Utility, UtilityAnswers, UtilityAssessment, UtilityFinding } from './utility-finding.ts';

/** The findings alone, without their workings. */
export const judgeUtilities = (reader: BookReader, where: Where): readonly UtilityFinding[] => {
  const inquiry = inquiryOf(where);
  const asked = needsOf(reader.book, where.floor).map((need) => askNeed(need, reader, inquiry));
  return asked.map((judge) => judge());
};

/** One question in its two halves, each gone through once. */
interface Question<T> {
  readonly utility: Utility;
  readonly ask: () => unknown;
  readonly judge: () => T;
}

const questionOf = <T>(utility: Utility, ask: () => () => T): Question<T> => {
  const asked = onDemand(ask);
  return { utility, ask: asked, judge: onDemand(() => asked()()) };
};

/** All are asked before any is judged, so that what a value changes is computed once for all of them. */
const answersOf = (
  needs: readonly Question<UtilityAnswers['findings'][number]>[],
  draws: readonly Question<UtilityAnswers['figures'][number]>[],
): UtilityAnswers => {
  for (const { ask } of needs) ask();
  for (const { ask } of draws) ask();
  return { findings: needs.map(({ judge }) => judge()), figures: draws.map(({ judge }) => judge()) };
};

/**
 * What a floor's utilities are asked against what they have, question by question.
 *
 * Returns  findings and figures, worked out when they are first looked at; each opens a working of the floor
 * Assumes  the line runs at its agreed rate: that is what a utility must carry
 * Cost     some dozen sheets a question, and those that rest on an uncertain value twice more
 */
export const assessUtilities = (reader: BookReader, inquiry: Inquiry): UtilityAssessment => {
  const needs = onDemand(() =>
    needsOf(reader.book, inquiry.where.floor).map((need) =>
      questionOf(need.utility, () => askNeed(need, reader, inquiry)),
    ),
  );
  const draws = onDemand(() =>
    drawsOf(reader.book).map((draw) => questionOf(draw.utility, () => askDraw(draw, reader, inquiry))),
  );
  const all = onDemand(() => answersOf(needs(), draws()));
  return {
    get findings() {
      return all().findings;
    },
    get figures() {
      return all().figures;
    },
    of: (utility) => {
      const own = <T>(questions: readonly Question<T>[]) =>
        questions.filter((question) => question.utility === utility);
      return answersOf(own(needs()), own(draws()));
    },
  };
};
