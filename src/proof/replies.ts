import { type Clocked, clockOn } from '../record/clocked.ts';
import type { Envelope, Head } from '../record/envelope.ts';
import { byText } from '../record/heads.ts';
import { isReply, type ReplyBody, replyProblems } from '../record/reply.ts';

/** What a witness wrote who had the witness file alone. */
export interface HeardReply {
  /** Id of its record. */
  readonly record: string;
  readonly reply: ReplyBody;
  /** Records that came after what the witness saw, replies left out: an acceptance does not speak of them. */
  readonly since: number;
}

/** Records that heads don't cover, replies left out; of a chain that they don't name, all. */
const after = (records: readonly Envelope[], ends: Clocked['ends'], heads: readonly Head[]): number => {
  const last = new Map(heads.map(({ writer, sequence }) => [writer, sequence]));
  const lastOf = (writer: string): number => last.get(writer) ?? -1;
  const isBehind = ({ writer, sequence }: Pick<Head, 'writer' | 'sequence'>): boolean =>
    sequence > lastOf(writer);
  // a chain has no gaps, so its end tells how many there are
  const all = [...ends.values()]
    .filter(isBehind)
    .reduce((sum, { writer, sequence }) => sum + sequence - lastOf(writer), 0);
  return all - records.filter((one) => one.kind === 'reply' && isBehind(one)).length;
};

/**
 * The replies of witnesses, first to last.
 *
 * Method   those that are right by their own key; the same reply that was taken in twice counts once. Their order is by
 *          the moment that the witness's clock claims, then by signature
 * Symbols  records  the set, whole by verifyRecords; of it at least the replies;  ends  of its chains
 * Returns  replies with how far the records have gone on since
 * Assumes  whose key it is was compared by another way
 * Cost     O(records) and about a millisecond a reply
 */
export const repliesOf = (
  records: readonly Envelope[],
  ends: Clocked['ends'] = clockOn(records).ends,
): readonly HeardReply[] => {
  const right = records.filter(isReply).filter((one) => replyProblems(one, undefined, '').length === 0);
  const once = new Map(
    right
      .toSorted((a, b) => byText(b.id, a.id))
      .map(({ id, body }) => [
        body.value,
        { record: id, reply: body, since: after(records, ends, body.heads) },
      ]),
  );
  return [...once.values()].sort(
    (a, b) => Date.parse(a.reply.at) - Date.parse(b.reply.at) || byText(a.reply.value, b.reply.value),
  );
};
