import type { BookReader } from '../book-reader.ts';
import type { Tracer } from '../tracer.ts';
import { groundOf, type Where } from './calculation.ts';
import { drawFigure, judgeNeed } from './judge-need.ts';
import { drawsOf, needsOf } from './needs-of.ts';
import type { UtilityAssessment, UtilityFinding } from './utility-finding.ts';

/** The findings alone, without their workings. */
export const judgeUtilities = (reader: BookReader, where: Where): readonly UtilityFinding[] => {
  const ground = groundOf(where);
  return needsOf(reader.book, where.floor).map((need) => judgeNeed(need, reader, ground));
};

/**
 * What a floor's utilities are asked against what they have, question by question.
 *
 * Returns  findings and figures; each opens a working of the floor
 * Assumes  the line runs at its agreed rate: that is what a utility must carry
 * Cost     some dozen sheets a question, and those that rest on an uncertain value twice more
 */
export const assessUtilities = (reader: BookReader, where: Where, tracer: Tracer): UtilityAssessment => {
  const ground = groundOf(where, tracer);
  return {
    findings: needsOf(reader.book, where.floor).map((need) => judgeNeed(need, reader, ground)),
    figures: drawsOf(reader.book).map((draw) => drawFigure(draw, reader, ground)),
  };
};
