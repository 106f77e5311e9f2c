import type { Verdict } from '../../floor/assessment.ts';
import type { BarShape } from '../../floor/bar-shape.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { type PlanContent, planContent } from '../plan/plan-content.ts';
import type { Marks } from '../workings/citations.ts';
import type { WorkingsContent } from '../workings/workings-content.ts';
import type { Glance } from './power-glance.ts';

/** The trades, in the order of their pages; each brings one utility, and the last is whoever runs the floor. */
export const trades = ['power', 'water', 'air', 'heat', 'drains', 'building', 'site'] as const;
export type Trade = (typeof trades)[number];

/** One thing that a trade brings to one point of the line, everything in words and in the units of the reader. */
export interface PreparationRow {
  /** Where the line takes it; the tag stands on the plate at the point. */
  readonly tieIn: { readonly tag?: string; readonly name: string };
  readonly what: string;
  /** What the two values are, where the name does not say it. */
  readonly asks?: string;
  readonly gives?: string;
  /** What the line asks and what the floor has; `not known` where nobody said. */
  readonly demand: string;
  readonly has: string;
  /** Marks of their workings. */
  readonly demandMark: Marks;
  readonly hasMark: Marks;
  readonly verdict: Verdict;
  /** `carries`, `short of 6 bar(g)`, `not known, asks 6 bar(g)`. */
  readonly said: string;
  readonly margin?: string;
  /** The least change that carries it. */
  readonly fix?: string;
  /** Rests on what somebody stated without saying how sure. */
  readonly ifSaid: boolean;
  /** What of it was assumed, or would not be taken as the book says it. */
  readonly marks: readonly string[];
  readonly bar?: BarShape & { readonly most: boolean };
}

/** Something that the floor shall tell, with room to write beside it. */
export interface PreparationQuestion {
  readonly text: string;
  /** Unit in which the answer is wanted. */
  readonly unit?: string;
  /** Place in the book, so that the answer finds its way back. */
  readonly place: string;
  readonly who?: string;
  /** What the answer settles. */
  readonly why?: string;
}

/** A load that is good to know. */
export interface PreparationDraw {
  readonly name: string;
  readonly value: string;
  readonly working: Marks;
  readonly marks: readonly string[];
}

export interface TradePage {
  readonly trade: Trade;
  /** What is looked for first, before all the rows. */
  readonly glance?: readonly Glance[];
  readonly rows: readonly PreparationRow[];
  /** Sentences to be known with the rows, each once. */
  readonly notes: readonly string[];
  /** What the line draws: loads that nothing is held against. */
  readonly draws: readonly PreparationDraw[];
  readonly questions: readonly PreparationQuestion[];
}

/** What the preparation sheet of one floor is made from. */
export interface Preparation {
  readonly floor: string;
  /** Whom the filled sheet goes back to. */
  readonly sendTo?: string;
  readonly pages: readonly TradePage[];
  /** What its figures rest on, where it is not bound with others. */
  readonly workings?: WorkingsContent;
}

/** The rows of one tie-in point. */
export interface TieInGroup {
  readonly tieIn: PreparationRow['tieIn'];
  readonly rows: readonly PreparationRow[];
}

/** Everything that stands on the sheet. */
export interface PreparationContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly about: string;
  readonly pages: readonly (Omit<TradePage, 'rows'> & {
    readonly title: string;
    readonly caution: string;
    readonly groups: readonly TieInGroup[];
  })[];
  readonly sendTo: string;
  readonly plan?: PlanContent & { readonly title: string };
  readonly workings?: WorkingsContent;
  readonly words: Readonly<Record<string, string>>;
}

const groupsOf = (rows: readonly PreparationRow[]): readonly TieInGroup[] => {
  const groups = new Map<string, PreparationRow[]>();
  for (const row of rows) {
    const key = JSON.stringify(row.tieIn);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].flatMap((of) =>
    of[0] === undefined ? [] : [{ tieIn: of[0].tieIn, rows: of }],
  );
};

const wordKeys = [
  'glance',
  'rows',
  'rows.none',
  'draws',
  'done',
  'what',
  'asks',
  'has',
  'verdict',
  'notes',
  'ifSaid',
  'questions',
  'questions.none',
  'number',
  'question',
  'answer',
  'how',
  'how.measured',
  'how.plate',
  'how.stated',
  'sign',
  'sign.name',
  'sign.firm',
  'sign.licence',
  'sign.date',
  'sign.phone',
];

/** Every trade has its page, also where nothing is asked of it yet: then it says so. The floor has one where it is asked. */
export const preparationContent = (
  { floor, sendTo, pages, workings }: Preparation,
  options: PaperOptions,
  paper: PaperWords,
): PreparationContent => {
  const { say } = paper;
  const plan = planContent(paper);
  const keys = ['asked', 'most', 'has', 'missing', 'unknown', 'interval'];
  return {
    head: paperHead(say('preparation.title'), options, paper),
    subtitle: subtitleOf(paper),
    about: say('preparation.about', { floor }),
    pages: trades.flatMap((trade) => {
      const page = pages.find((one) => one.trade === trade);
      if (trade === 'site' && page === undefined) return [];
      const { rows, ...rest } = page ?? { trade, rows: [], notes: [], draws: [], questions: [] };
      return [
        {
          ...rest,
          groups: groupsOf(rows),
          title: say('preparation.page', { trade: say(`trade.${trade}`), floor }),
          caution: say(`caution.${trade}`),
        },
      ];
    }),
    sendTo:
      sendTo === undefined ? say('preparation.sendTo.book') : say('preparation.sendTo', { whom: sendTo }),
    ...(plan === undefined ? {} : { plan: { ...plan, title: say('plan.of', { floor }) } }),
    ...(workings === undefined ? {} : { workings }),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`preparation.${key}`)])),
      ...Object.fromEntries(keys.map((key) => [`key.${key}`, say(`paper.key.${key}`)])),
      care: say('paper.care'),
      workingKey: say('workings.key'),
    },
  };
};
