import type { Envelope } from '../record/envelope.ts';
import { byText } from '../record/heads.ts';
import { isReply, type ReplyRecord, replyProblems } from '../record/reply.ts';
import { isSignature, type SignatureRecord, signatureProblems } from '../record/signature.ts';
import type { GateName } from './gate-names.ts';
import type { Lack } from './lack.ts';
import type { ProvedCheck } from './proved-check.ts';

/** A signature that a gate was signed with; the reply of a witness who accepts a gate is one. */
export interface GateSignature {
  /** Id of its record. */
  readonly record: string;
  readonly by: string;
  readonly role: string;
  readonly statement: string;
  /** The moment that the device claims. */
  readonly at: string;
  readonly key: string;
  /** What it leaves open, as it names it. */
  readonly open: readonly string[];
  /** Whether it is right by its own key. */
  readonly right: boolean;
  /** What the gate lacks now and it does not name: it was left out, or has come up since. */
  readonly unnamed: readonly string[];
}

/** Whether a text of a signature names a lack: the id alone, or the id and what is to be said of it. */
const names = (text: string, id: string): boolean => text === id || text.startsWith(`${id}:`);

/** Checks that failed after a signature was made: who named one as untried did not know of it. */
const failedSince = (
  { body: { heads } }: SignatureRecord | ReplyRecord,
  checks: readonly ProvedCheck[],
  byId: ReadonlyMap<string, Envelope>,
): ReadonlySet<string> => {
  const last = new Map(heads.map(({ writer, sequence }) => [writer, sequence]));
  const after = ({ writer, sequence }: Envelope): boolean => sequence > (last.get(writer) ?? -1);
  return new Set(
    checks
      .filter(({ state, inForce }) => {
        const tried = inForce === undefined ? undefined : byId.get(inForce.result.id);
        return state === 'failed' && tried !== undefined && after(tried);
      })
      .map(({ check }) => check.id),
  );
};

/** What one who signed says, and whether it is right by their own key. */
const saidBy = (one: SignatureRecord | ReplyRecord): Pick<GateSignature, 'statement' | 'at' | 'right'> =>
  isReply(one)
    ? {
        statement: one.body.remark ?? one.body.accepted,
        at: one.body.at,
        right: replyProblems(one, undefined, '').length === 0,
      }
    : {
        statement: one.body.statement,
        at: one.deviceTime,
        right: signatureProblems(one, undefined, '').length === 0,
      };

/**
 * Who signed for a gate, and what of its lacks each signature leaves unnamed.
 *
 * Method   a signature knows what its heads hold: a lack counts as named where its text begins with the id, but a check
 *          that failed in a record after the heads is unnamed, whatever was said of it before
 * Symbols  lacks  what the gate wants now;  checks  of its floor
 * Returns  signatures in the order of their moments
 * Cost     a millisecond a signature
 */
export const gateSignatures = (
  gate: GateName,
  floor: string,
  lacks: readonly Pick<Lack, 'id' | 'sort'>[],
  checks: readonly ProvedCheck[],
  records: readonly Envelope[],
): readonly GateSignature[] => {
  const own = [
    ...records.filter(isSignature),
    ...records.filter(isReply).filter(({ body }) => body.accepted !== 'not'),
  ].filter(({ body }) => body.passes === gate && body.floor === floor);
  if (own.length === 0) return [];
  const byId = new Map(records.map((record) => [record.id, record]));
  return own
    .map((signature) => {
      const { by, role, key, open = [] } = signature.body;
      const failed = failedSince(signature, checks, byId);
      return {
        record: signature.id,
        by,
        role,
        key,
        open,
        ...saidBy(signature),
        unnamed: lacks
          .filter(
            ({ id, sort }) => !open.some((text) => names(text, id)) || (sort === 'check' && failed.has(id)),
          )
          .map(({ id }) => id),
      };
    })
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || byText(a.record, b.record));
};
