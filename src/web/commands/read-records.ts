import type { Envelope } from '../../record/envelope.ts';
import type { Standing } from '../../record/standing.ts';
import type { KnownRecords } from '../state/known-records.ts';
import type { Page } from '../state/page.ts';

/** What was asked for, or why it is not there. */
type Answer<T> = T | { readonly refused: string } | 'unreachable';

export type RecordsAnswer = Answer<{ readonly records: readonly Envelope[]; readonly position: number }>;

export type StandingAnswer = Answer<KnownRecords>;

type Refusal = Extract<Awaited<ReturnType<Page['client']>>, { readonly ok: false }>;

const refusalOf = (reply: Refusal): 'unreachable' | { readonly refused: string } =>
  reply.reached && reply.status < 500 ? { refused: reply.failure.message } : 'unreachable';

/** By what the answer of `readStanding` is found that was asked for ahead. */
export const standingName = (id: string): string => `standing/${id}`;

/** What counts of the records of a book, in as many answers as it takes. */
export const readStanding = async (page: Page, id: string): Promise<StandingAnswer> => {
  const placed: { readonly record: Envelope; readonly moment: number }[] = [];
  for (let query: { until?: number; since?: number } = {}; ; ) {
    const reply = await page.client('readStanding', { params: { id }, query });
    if (!reply.ok) return refusalOf(reply);
    const { records, ends, replacing, doubts, until, position, more } = reply.value;
    // the store has looked at every one of them
    placed.push(...(records as typeof placed));
    query = { until, since: position };
    if (more) continue;
    const standing: Standing = {
      records: placed.map(({ record }) => record),
      moments: new Map(placed.map(({ record, moment }) => [record.id, moment])),
      ends: new Map(ends.map((end) => [end.writer, end])),
      replacing,
      doubts,
      isWanting: false,
    };
    return { standing, position: until };
  }
};

/** The last tries of a check that a server told. */
export interface KnownTries {
  readonly records: readonly { readonly record: Envelope; readonly moment: number }[];
  /** Tries in all. */
  readonly total: number;
  /** Id of the try that counted when they were asked for. */
  readonly of?: string;
}

/** The last tries of a check on a floor; undefined where the server does not answer. */
export const readTries = async (
  page: Page,
  id: string,
  floor: string,
  check: string,
): Promise<KnownTries | undefined> => {
  const reply = await page.client('listTries', { params: { id }, query: { floor, check } });
  return reply.ok ? (reply.value as KnownTries) : undefined;
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
