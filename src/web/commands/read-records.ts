import type { Envelope } from '../../record/envelope.ts';
import type { Page } from '../state/page.ts';

/** Records and where the next reading begins, or why there are none. */
export type RecordsAnswer =
  | { readonly records: readonly Envelope[]; readonly position: number }
  | { readonly refused: string }
  | 'unreachable';

/** Every record of a book behind a position; absent, from the first. */
export const readRecords = async (page: Page, id: string, behind = 0): Promise<RecordsAnswer> => {
  const records: Envelope[] = [];
  for (let since = behind; ; ) {
    const reply = await page.client('listRecords', {
      params: { id },
      ...(since === 0 ? {} : { query: { since } }),
    });
    if (!reply.ok) {
      return reply.reached && reply.status < 500 ? { refused: reply.failure.message } : 'unreachable';
    }
    // the store has looked at every one of them
    records.push(...(reply.value.records as Envelope[]));
    since = reply.value.position;
    if (!reply.value.more) return { records, position: since };
  }
};
