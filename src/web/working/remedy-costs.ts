import type { Remedy } from '../../floor/assessment.ts';
import { parseQuantity } from '../../quantity/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { KeptNotes } from '../state/kept-notes.ts';

/** What a person says of a remedy, as it was typed. It stands beside the book, for a lever, not in it. */
export interface RemedyCost {
  readonly effort?: string;
  readonly lead?: string;
  readonly pays?: string;
}

export type CostField = keyof RemedyCost;
export const costFields: readonly CostField[] = ['effort', 'lead', 'pays'];

/** Costs by lever. */
export type RemedyCosts = Readonly<Record<string, RemedyCost>>;

const nameOf = (book: string): string => `remedies/${book}`;

const isCost = (value: unknown): value is RemedyCost =>
  typeof value === 'object' &&
  value !== null &&
  costFields.every((field) => ['string', 'undefined'].includes(typeof (value as RemedyCost)[field]));

export const readCosts = (notes: KeptNotes, book: string): RemedyCosts => {
  const kept = notes.read(nameOf(book));
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(
    Object.entries(kept).filter((entry): entry is [string, RemedyCost] => isCost(entry[1])),
  );
};

/** Keeps one word on a lever; what another tab said of others meanwhile stays. */
export const keepCost = (
  notes: KeptNotes,
  book: string,
  lever: string,
  field: CostField,
  text: string,
): RemedyCosts => {
  const before = readCosts(notes, book);
  const costs = { ...before, [lever]: { ...before[lever], [field]: text } };
  notes.write(nameOf(book), costs);
  return costs;
};

/** What is wrong with a time that was typed; who pays takes any words. */
export const costProblem = (field: CostField, text: string): Problem | undefined => {
  if (field === 'pays' || text.trim() === '') return undefined;
  const read = parseQuantity(text, 'time', { path: field });
  return read.ok ? undefined : read.problems[0];
};

const seconds = (text: string | undefined): number => {
  const read = text === undefined ? undefined : parseQuantity(text, 'time', { path: '' });
  return read?.ok === true ? Number(read.value.value) : Number.POSITIVE_INFINITY;
};

/** What carries and breaks nothing first, then what breaks something, then what does not carry. */
const rank = (remedy: Remedy): number => (remedy.patch.length === 0 ? 2 : remedy.breaks.length > 0 ? 1 : 0);

/**
 * Remedies in the order that one asks for. What breaks something never comes before what breaks nothing: only
 * within its rank the least effort, the shortest lead time or the payer's name decides, what is not known last.
 */
export const remediesInOrder = (
  found: readonly Remedy[],
  costs: RemedyCosts,
  by: CostField | undefined,
): readonly Remedy[] => {
  const compared = (a: Remedy, b: Remedy): number => {
    const [one, other] = [costs[a.lever], costs[b.lever]];
    if (by === undefined) return 0;
    if (by === 'pays') {
      const [here, there] = [one?.pays?.trim() ?? '', other?.pays?.trim() ?? ''];
      if (here === '' || there === '') return Number(here === '') - Number(there === '');
      return here.localeCompare(there);
    }
    const [here, there] = [seconds(one?.[by]), seconds(other?.[by])];
    return here === there ? 0 : here - there;
  };
  return found.toSorted((a, b) => rank(a) - rank(b) || compared(a, b));
};
