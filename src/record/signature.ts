import { accept, type Problem, type Result } from '../quantity/problem.ts';
import { bodyProblems } from './append-record.ts';
import { canonicalJson } from './canonical-json.ts';
import { isSignatureOf, publicKeyOf, signBytes } from './ed25519.ts';
import { type Envelope, envelopeProblems, type Head } from './envelope.ts';
import { recordKinds } from './kinds.ts';
import { recordProblem } from './problems.ts';

/** What a person puts their name to. */
export interface Statement {
  readonly by: string;
  readonly role: string;
  /** What is declared, in the words that the person had before them. */
  readonly statement: string;
  /** Heads of all chains at that moment: they fix every record that was there. */
  readonly heads: readonly Head[];
  /** What is passed, such as a gate, and on which floor. */
  readonly passes?: string;
  readonly floor?: string;
  /** Points that stay open, each named. */
  readonly open?: readonly string[];
  /** Digest of a picture of the handwritten name. */
  readonly image?: string;
}

/** Body of a signature, version 2. */
export interface SignatureBody extends Statement {
  readonly algorithm: 'Ed25519';
  /** Public key, 32 bytes in hexadecimal. */
  readonly key: string;
  /** Signature, 64 bytes in hexadecimal. */
  readonly value: string;
}

// what this key signs for another purpose can't be passed off as a signature of a book
const PURPOSE = 'twinfloor-signature-1\n';

/**
 * The bytes that are signed: a line with the purpose, then the canonical JSON of the body without `value`. Anyone can
 * check a signature without this program: RFC 8785 gives the bytes, RFC 8032 the rest.
 */
export const signedBytes = (body: Omit<SignatureBody, 'value'>): Result<Uint8Array> => {
  const { value: _, ...signed } = body as SignatureBody;
  const text = canonicalJson(signed, '/body');
  return text.ok ? accept(new TextEncoder().encode(PURPOSE + text.value)) : text;
};

/**
 * The body of a signature record.
 *
 * Method   Ed25519 over `signedBytes`
 * Symbols  statement  what is declared, with the heads of all chains;  secretKey  32 bytes in hexadecimal
 * Returns  body; the book is that of the heads
 * Problems those of canonicalJson
 * Assumes  the key is held by the person alone: the signature says no more than that
 * Cost     O(n) in the statement
 * Source   RFC 8032, section 5.1; RFC 8785
 */
export const signStatement = (statement: Statement, secretKey: string): Result<SignatureBody> => {
  const unsigned = { ...statement, algorithm: 'Ed25519', key: publicKeyOf(secretKey) } as const;
  const bytes = signedBytes(unsigned);
  return bytes.ok ? accept({ ...unsigned, value: signBytes(secretKey, bytes.value) }) : bytes;
};

/** A signature record whose body is one. */
export type SignatureRecord = Envelope<SignatureBody>;

/** Whether it is a signature with a key; a name that was only written down is none. */
export const isSignature = (value: unknown): value is SignatureRecord => {
  const { kind, version } = (value ?? {}) as Partial<Envelope>;
  return (
    kind === 'signature' &&
    version === 2 &&
    envelopeProblems(value, '').length === 0 &&
    bodyProblems(value as Envelope, recordKinds, '').length === 0
  );
};

/** What is wrong with a signature by itself. */
export const signatureProblems = (
  { body, book }: SignatureRecord,
  keys: readonly string[] | undefined,
  path: string,
): readonly Problem[] => {
  const problems: Problem[] = [];
  const bytes = signedBytes(body);
  if (!bytes.ok) return bytes.problems.map((problem) => ({ ...problem, path: `${path}${problem.path}` }));
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
