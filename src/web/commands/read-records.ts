import type { Envelope } from '../../record/envelope.ts';
import type { Page } from '../state/page.ts';

/** Records and where the next reading begins, or why there are none. */
type Answer<T> =
  | ({ readonly records: readonly Envelope[] } & T)
  | { readonly refused: string }
  | 'unreachable';

export type RecordsAnswer = Answer<{ readonly position: number }>;

/** Records that stand together, the newest of those asked for. */
export type RecordsBack = Answer<{
  readonly position: number;
  /** Where the next that come before them are asked for; 0 where there are none. */
  readonly begins: number;
  /** Records that the book has. */
  readonly total: number;
}>;

type Refusal = Extract<Awaited<ReturnType<Page['client']>>, { readonly ok: false }>;

const refusalOf = (reply: Refusal): 'unreachable' | { readonly refused: string } =>
  reply.reached && reply.status < 500 ? { refused: reply.failure.message } : 'unreachable';

/**
 * The newest records of a book before a position; absent, of all.
 *
 * Symbols  least  that are wanted, where there are as many: the server gives some at once, and is asked on
 */
export const readRecordsBack = async (
  page: Page,
  id: string,
  { before = Number.MAX_SAFE_INTEGER, least = 1 }: { readonly before?: number; readonly least?: number } = {},
): Promise<RecordsBack> => {
  const answers: Envelope[][] = [];
  let count = 0;
  let end: number | undefined;
  for (let at = before; ; ) {
    const reply = await page.client('listRecords', { params: { id }, query: { before: at } });
    if (!reply.ok) return refusalOf(reply);
    const { records, begins, position, more, total } = reply.value;
    // the store has looked at every one of them
    answers.unshift(records as Envelope[]);
    count += records.length;
    end ??= position;
    at = begins;
    if (!more || count >= least) {
      return { records: answers.flat(), begins: more ? begins : 0, position: end, total };
    }
  }
};

/** Every record of a book behind a position; absent, from the first. */
export const readRecords = async (page: Page, id: string, behind = 0): Promise<RecordsAnswer> => {
  const records: Envelope[] = [];
  for (let since = behind; ; ) {
    const reply = await page.client('listRecords', {
      params: { id },
      ...(since === 0 ? {} : { query: { since } }),
    });
    if (!reply.ok) return refusalOf(reply);
    records.push(...(reply.value.records as Envelope[]));
    since = reply.value.position;
    if (!reply.value.more) return { records, position: since };
  }
};
