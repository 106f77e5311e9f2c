import type { Book } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { Kind } from '../quantity/kinds.ts';
import type { Parts } from '../text/index.ts';
import { placesOfBook, type StablePlace } from './book-places.ts';
import type { CarryOver } from './carry-over.ts';
import { type CheckWords, checkWords } from './check-words.ts';
import type { JudgedResult } from './judge-result.ts';
import type { Limit } from './limit.ts';
import type { PlannedCheck } from './plan.ts';
import type { ProvedCheck } from './proved-check.ts';

/** What a door says with: its catalogue, and how it prints a value of a kind. */
export interface SayingOfChecks {
  readonly say: (key: string, parts?: Parts) => string;
  readonly has: (key: string) => boolean;
  readonly quantity: (value: number, kind: Kind) => string;
  /** A number of at most two digits: nobody asks for the third of a per cent. */
  readonly number: (value: number) => string;
}

/** Everything that is said of checks, alike on pages, in files and on the command line. */
export interface CheckSentences extends CheckWords {
  readonly limit: (limit: Limit) => string;
  /** All limits of a check; `seen` where it has none. */
  readonly limits: (check: PlannedCheck) => string;
  readonly condition: (id: string) => string;
  readonly conditions: (ids: readonly string[]) => string;
  readonly places: (places: readonly StablePlace[]) => string;
  /** Why a try is not proved, the first reason that tells most. */
  readonly shortfalls: (check: PlannedCheck, judged: JudgedResult) => string;
  /** Why a check stands where it does; nothing where its state says it all. */
  readonly why: (one: ProvedCheck) => string;
  /** What the floor can do with it, and why no more. */
  readonly plan: (check: PlannedCheck) => string;
  /** Why it comes over; `from` is the check as it stands there. */
  readonly reason: (one: CarryOver, from: ProvedCheck | undefined) => string;
}

/**
 * What is said of the checks of a book.
 *
 * Cost     O(size of the book) once, for the names of its things and places
 */
export const checkSentences = (
  book: Book,
  { say, has, quantity, number }: SayingOfChecks,
): CheckSentences => {
  const words = checkWords(book, say, has);
  const bookPlaces = placesOfBook(book);
  const limit = ({ sense, figure, share = 0, said }: Limit): string =>
    figure.value === undefined
      ? (said ?? say('proof.limit.unknown'))
      : say(`proof.limit.${sense}`, {
          value: quantity(figure.value, figure.kind),
          share: number(100 * share),
        });
  const condition = (id: string): string => {
    const [sort = '', ...of] = id.split(' ');
    const key = `proof.condition.${sort}`;
    // a condition of the book is its own name
    if (!has(key)) return id;
    return of.length === 0 ? say(key) : say('utility.of', { name: say(key), of: words.thing(of.join(' ')) });
  };
  const conditions = (ids: readonly string[]): string => ids.map(condition).join(', ');
  const places = (changed: readonly StablePlace[]): string =>
    changed
      .map((place) => {
        const path = bookPlaces.pathOf(place);
        return path === undefined ? `${place.of ?? ''} ${place.path}` : placeText(book, path);
      })
      .join('; ');
  const shortfalls = (check: PlannedCheck, judged: JudgedResult): string => {
    const not = (held: boolean | undefined): readonly string[] => [
      ...judged.conditions.filter((one) => one.held === held).map((one) => one.condition.id),
      ...judged.ownConditions.filter((one) => one.held === held).map(({ text }) => text),
    ];
    return judged.shortfalls
      .map((shortfall) =>
        say(`proof.shortfall.${shortfall}`, {
          conditions: conditions(not(shortfall === 'broken' ? false : undefined)),
          read: (judged.result.readings ?? []).length,
          wanted: check.readings,
          instrument: words.thing(judged.result.instrument ?? ''),
        }),
      )
      .join('; ');
  };
  return {
    ...words,
    limit,
    limits: ({ limits, ownLimit, missing }) => {
      const texts = [...limits.map(limit), ...(ownLimit === undefined ? [] : [ownLimit])];
      if (texts.length > 0) return texts.join(', ');
      return say(missing.length > 0 ? 'proof.limit.unknown' : 'proof.seen');
    },
    condition,
    conditions,
    places,
    shortfalls,
    why: ({ state, check, inForce, changed }) => {
      if (state === 'stale') return places(changed);
      if (inForce === undefined) return '';
      if (state === 'concession') return say('proof.conceded', { ...inForce.result.concession! });
      if (state === 'waits') return say('proof.awaited', { ...inForce.result.late! });
      return state === 'shown' ? shortfalls(check, inForce) : '';
    },
    plan: ({ plan, cannot, foreseen }) => {
      const why = plan === 'show only' ? conditions(cannot) : '';
      const foretold = foreseen === 'short' && plan === 'prove' ? say('proof.foreseen') : '';
      return [say(`proof.plan.${plan}`), why, foretold].filter((part) => part !== '').join(': ');
    },
    reason: (one, from) =>
      say(`proof.reason.${one.reason}`, {
        conditions: conditions(one.conditions),
        why: from?.inForce === undefined ? '' : shortfalls(from.check, from.inForce),
        until: from?.inForce?.result.concession?.until ?? '',
        places: places(one.changed),
      }),
  };
};
