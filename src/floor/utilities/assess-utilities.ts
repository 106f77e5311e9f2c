import type { BookReader } from '../book-reader.ts';
import { type Inquiry, inquiryOf, type Where } from './inquiry.ts';
import { askDraw, askNeed } from './judge-need.ts';
import { drawsOf, needsOf } from './needs-of.ts';
import type { UtilityAssessment, UtilityFinding } from './utility-finding.ts';

/** The findings alone, without their workings. */
export const judgeUtilities = (reader: BookReader, where: Where): readonly UtilityFinding[] => {
  const inquiry = inquiryOf(where);
  const asked = needsOf(reader.book, where.floor).map((need) => askNeed(need, reader, inquiry));
  return asked.map((judge) => judge());
};

/**
 * What a floor's utilities are asked against what they have, question by question.
 *
 * Returns  findings and figures; each opens a working of the floor
 * Assumes  the line runs at its agreed rate: that is what a utility must carry
 * Cost     some dozen sheets a question, and those that rest on an uncertain value twice more
 */
export const assessUtilities = (reader: BookReader, inquiry: Inquiry): UtilityAssessment => {
  const needs = needsOf(reader.book, inquiry.where.floor).map((need) => askNeed(need, reader, inquiry));
  const draws = drawsOf(reader.book).map((draw) => askDraw(draw, reader, inquiry));
  return { findings: needs.map((judge) => judge()), figures: draws.map((judge) => judge()) };
};
