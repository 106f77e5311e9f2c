import type { Problem, Result } from '../quantity/problem.ts';
import { bodyProblems } from './append-record.ts';
import { type Envelope, envelopeProblems, type Head } from './envelope.ts';
import { recordKinds } from './kinds.ts';
import { bytesToSign, type Signed, signedProblems, signFor } from './signed-body.ts';

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
export interface SignatureBody extends Statement, Signed {}

const purpose = 'twinfloor-signature-1';

/** The bytes that are signed, see bytesToSign. */
export const signedBytes = (body: Omit<SignatureBody, 'value'>): Result<Uint8Array> =>
  bytesToSign(purpose, body);

/** The body of a signature record; the book is that of the heads. */
export const signStatement = (statement: Statement, secretKey: string): Result<SignatureBody> =>
  signFor(purpose, statement, secretKey);

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
  record: SignatureRecord,
  keys: readonly string[] | undefined,
  path: string,
): readonly Problem[] => signedProblems(purpose, record, keys, path);
