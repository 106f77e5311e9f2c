import type { Book, Wait } from '../book/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import type { ClaimedMoments } from './claimed-moments.ts';
import { placeFigure } from './place-figure.ts';
import { proofProblem } from './problems.ts';

/** Where a wait stands: nobody has asked yet, or what was answered last. */
export type WaitState = 'open' | 'asked' | 'granted' | 'refused' | 'delivered';

/** Something that somebody outside owns, as it stands now. */
export interface ProofWait extends Omit<Wait, 'tag' | 'duration' | 'floor'> {
  readonly wait: string;
  /** Place in the book. */
  readonly path: string;
  /** Tag of the floor that waits; none where the book has none that it could be. */
  readonly floor?: string;
  readonly state: WaitState;
  /** s, as the book says. */
  readonly duration?: number;
  /** Day of the last word. */
  readonly on?: string;
  readonly by?: string;
  readonly why?: string;
  /** First day on which it was asked for. */
  readonly asked?: string;
}

interface Body {
  readonly wait: string;
  readonly state: Exclude<WaitState, 'open'>;
  readonly by: string;
  readonly due?: string;
  readonly on?: string;
  readonly why?: string;
  readonly floor?: string;
}

/** Whether nothing is waited for any more. */
export const isOver = ({ state }: ProofWait): boolean => state === 'granted' || state === 'delivered';

const dayOf = ({ body, deviceTime }: Envelope<Body>): string => body.on ?? deviceTime.slice(0, 10);

const stood = (wait: ProofWait, words: readonly Envelope<Body>[]): ProofWait => {
  const last = words.at(-1);
  if (last === undefined) return wait;
  const { state, by, why } = last.body;
  // a day that was promised holds until another is, or the answer is no
  const due = words.findLast(({ body }) => body.due !== undefined)?.body.due ?? wait.due;
  const asked = words.find(({ body }) => body.state === 'asked');
  return {
    ...wait,
    state,
    by,
    on: dayOf(last),
    ...(due === undefined ? {} : { due }),
    ...(why === undefined ? {} : { why }),
    ...(asked === undefined ? {} : { asked: dayOf(asked) }),
  };
};

/**
 * The waits of a book as they stand.
 *
 * Method   of the records of a wait the last by `moments`; the day that was promised last is the one that counts
 * Returns  waits in the order of the book; a record of a wait or floor that the book does not have, told
 * Cost     O(waits times records of waits)
 */
export const waitsOf = (
  book: Book,
  records: readonly Envelope[],
  { sorted }: ClaimedMoments,
): { readonly waits: readonly ProofWait[]; readonly problems: readonly Problem[] } => {
  const said = sorted(
    currentRecords(records).current.filter(({ kind, version }) => kind === 'wait' && version === 1),
  ) as readonly Envelope<Body>[];
  const site = book.floors?.find(({ role }) => role === 'bound for')?.tag;
  const waits = (book.waits ?? []).map(({ tag, duration: _, floor = site, ...rest }, i) => {
    const path = `/waits/${i}`;
    const duration = placeFigure(book, `${path}/duration`, 'time').value;
    const wait: ProofWait = {
      ...rest,
      wait: tag,
      path,
      state: 'open',
      ...(floor === undefined ? {} : { floor }),
      ...(duration === undefined ? {} : { duration }),
    };
    return stood(
      wait,
      said.filter(({ body }) => body.wait === tag),
    );
  });
  const known = new Set(waits.map(({ wait }) => wait));
  const floors = (book.floors ?? []).map(({ tag }) => tag);
  const problems = said.flatMap(({ id, body }) => [
    ...(known.has(body.wait)
      ? []
      : [
          proofProblem('PROOF_WAIT_UNKNOWN', `/records/${id}/body/wait`, {
            given: body.wait,
            allowed: [...known],
          }),
        ]),
    ...(body.floor === undefined || floors.includes(body.floor)
      ? []
      : [
          proofProblem('PROOF_FLOOR_UNKNOWN', `/records/${id}/body/floor`, {
            given: body.floor,
            allowed: floors,
          }),
        ]),
  ]);
  return { waits, problems };
};
