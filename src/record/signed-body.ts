import { accept, type Problem, type Result } from '../quantity/problem.ts';
import { canonicalJson } from './canonical-json.ts';
import { isSignatureOf, publicKeyOf, signBytes } from './ed25519.ts';
import type { Head } from './envelope.ts';
import { recordProblem } from './problems.ts';

/** What a key adds to what a person says. */
export interface Signed {
  readonly algorithm: 'Ed25519';
  /** Public key, 32 bytes in hexadecimal. */
  readonly key: string;
  /** Signature, 64 bytes in hexadecimal. */
  readonly value: string;
}

/** A record's body that somebody put their key to. */
export interface SignedBody extends Signed {
  readonly by: string;
  /** Heads of all chains at that moment: they fix every record that was there. */
  readonly heads: readonly Head[];
}

/**
 * The bytes that are signed: a line with the purpose, then the canonical JSON of the body without `value`. Anyone can
 * check a signature without this program: RFC 8785 gives the bytes, RFC 8032 the rest. The purpose keeps what a key
 * signs for one from being passed off as another.
 */
export const bytesToSign = (purpose: string, body: object): Result<Uint8Array> => {
  const { value: _, ...signed } = body as Partial<Signed>;
  const text = canonicalJson(signed, '/body');
  return text.ok ? accept(new TextEncoder().encode(`${purpose}\n${text.value}`)) : text;
};

/**
 * What a person says with their signature.
 *
 * Method   Ed25519 over `bytesToSign`
 * Symbols  purpose  what the key signs for;  statement  what is said;  secretKey  32 bytes in hexadecimal
 * Returns  statement with algorithm, key and value
 * Problems those of canonicalJson
 * Assumes  the key is held by the person alone: the signature says no more than that
 * Cost     O(n) in the statement
 * Source   RFC 8032, section 5.1; RFC 8785
 */
export const signFor = <Statement extends object>(
  purpose: string,
  statement: Statement,
  secretKey: string,
): Result<Statement & Signed> => {
  const unsigned = { ...statement, algorithm: 'Ed25519', key: publicKeyOf(secretKey) } as const;
  const bytes = bytesToSign(purpose, unsigned);
  return bytes.ok ? accept({ ...unsigned, value: signBytes(secretKey, bytes.value) }) : bytes;
};

/** What is wrong with a signed body by itself: its signature, the book of its heads, its key where some are known. */
export const signedProblems = (
  purpose: string,
  { body, book }: { readonly body: SignedBody; readonly book: string },
  keys: readonly string[] | undefined,
  path: string,
): readonly Problem[] => {
  const bytes = bytesToSign(purpose, body);
  if (!bytes.ok) return bytes.problems.map((problem) => ({ ...problem, path: `${path}${problem.path}` }));
  const problems: Problem[] = [];
  if (!isSignatureOf(body.key, bytes.value, body.value)) {
    problems.push(recordProblem('RECORD_SIGNATURE_WRONG', `${path}/body/value`, { parts: { by: body.by } }));
  }
  for (const [i, head] of body.heads.entries()) {
    if (head.book === book) continue;
    const rest = { given: head.book, allowed: book };
    problems.push(recordProblem('RECORD_WRONG_BOOK', `${path}/body/heads/${i}`, rest));
  }
  if (keys !== undefined && !keys.includes(body.key)) {
    const rest = { given: body.key, allowed: keys, parts: { by: body.by } };
    problems.push(recordProblem('RECORD_SIGNATURE_STRANGE', `${path}/body/key`, rest));
  }
  return problems;
};
