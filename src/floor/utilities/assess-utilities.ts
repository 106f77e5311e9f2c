import type { BookReader } from '../book-reader.ts';
import type { Figure } from '../finding.ts';
import { onDemand } from '../on-demand.ts';
import { makeTracer, type Trace, type Tracer } from '../tracer.ts';
import { type Inquiry, inquiryOf, type Where } from './inquiry.ts';
import { askDraw, askNeed } from './judge-need.ts';
import { askedOf, trades } from './needs-of.ts';
import type { Utility, UtilityAnswers, UtilityAssessment, UtilityFinding } from './utility-finding.ts';

const keyOf = (what: string, trade: Utility, { floor, formatPath }: Where): string =>
  `${what} ${trade} ${floor} ${formatPath}`;

/** All are asked before any is judged, so that what a value changes is computed once for all of them. */
const findingsOf = (
  reader: BookReader,
  trade: Utility,
  inquiry: Inquiry,
): (() => readonly UtilityFinding[]) => {
  const asked = askedOf[trade]
    .needs(reader.book, inquiry.where.floor)
    .map((need) => askNeed(need, reader, inquiry));
  return () => asked.map((judge) => judge());
};

/** The findings alone, without their workings; of each trade they are kept as long as nothing that it looks at changes. */
export const judgeUtilities = (reader: BookReader, where: Where): readonly UtilityFinding[] =>
  trades.flatMap((trade) =>
    reader.kept(keyOf('findings', trade, where), () => findingsOf(reader, trade, inquiryOf(where))()),
  );

/** What one trade was asked and answered, with its workings. */
interface Answered extends UtilityAnswers {
  readonly workings: Trace;
}

const answersOf = (reader: BookReader, trade: Utility, where: Where, first: number): Answered => {
  const tracer = makeTracer(first);
  const inquiry = inquiryOf(where, tracer);
  const findings = findingsOf(reader, trade, inquiry);
  const figures = askedOf[trade].draws(reader.book).map((draw) => askDraw(draw, reader, inquiry));
  return { findings: findings(), figures: figures.map((judge) => judge()), workings: tracer.whole };
};

/** Answers whose workings have been moved. */
const moved = ({ findings, figures }: UtilityAnswers, first: number, by: number): UtilityAnswers => {
  if (by === 0) return { findings, figures };
  const at = (figure: Figure): Figure =>
    figure.working === undefined || figure.working < first
      ? figure
      : { ...figure, working: figure.working + by };
  return {
    findings: findings.map((each) => ({ ...each, demand: at(each.demand), have: at(each.have) })),
    figures: figures.map((each) => ({ ...each, figure: at(each.figure) })),
  };
};

/**
 * What a floor's utilities are asked against what they have, question by question.
 *
 * Symbols  tracer  has the workings of the line by now, which a utility may name; takes in those of each trade
 * Returns  findings and figures, worked out trade by trade when they are first looked at; each opens a working of the floor
 * Assumes  the line runs at its agreed rate: that is what a utility must carry
 * Cost     some dozen sheets a question, and those that rest on an uncertain value twice more; nothing where no part of the
 *          book that a trade looks at has changed
 */
export const assessUtilities = (reader: BookReader, where: Where, tracer: Tracer): UtilityAssessment => {
  const first = tracer.size();
  const made = Object.fromEntries(
    trades.map((trade) => [
      trade,
      onDemand(() => {
        const { workings, ...answers } = reader.kept(keyOf('answers', trade, where), () =>
          answersOf(reader, trade, where, first),
        );
        return moved(answers, workings.first, tracer.takeIn(workings));
      }),
    ]),
  ) as Readonly<Record<Utility, () => UtilityAnswers>>;
  const all = onDemand(
    (): UtilityAnswers => ({
      findings: trades.flatMap((trade) => made[trade]().findings),
      figures: trades.flatMap((trade) => made[trade]().figures),
    }),
  );
  return {
    get findings() {
      return all().findings;
    },
    get figures() {
      return all().figures;
    },
    of: (trade) => made[trade](),
  };
};
