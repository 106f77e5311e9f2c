import { accept, type Result, refuse } from '../quantity/problem.ts';
import { bodyProblems } from './append-record.ts';
import { canonicalJson } from './canonical-json.ts';
import { recordKinds } from './kinds.ts';
import { recordProblem } from './problems.ts';
import { type ReplyBody, replyProblems } from './reply.ts';

/*
 * A file of a reply is one line of canonical JSON (RFC 8785) in UTF-8:
 *
 *   {"format":"twinfloor-reply","reply":{ … the body of a record of kind `reply` … },"version":1}
 */

const FORMAT = 'twinfloor-reply';
const VERSION = 1;

/** Comments to every check of a long line stay far below it. */
export const largestReply = 1_048_576;

/** The text of a file of a reply, as described above. */
export const exportReply = (reply: ReplyBody): Result<string> => {
  const text = canonicalJson({ format: FORMAT, version: VERSION, reply });
  return text.ok ? accept(`${text.value}\n`) : text;
};

const parsed = (text: string): Readonly<Record<string, unknown>> | undefined => {
  try {
    // what a mail program put before or behind it is passed over, nothing else
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, '').trim());
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as Readonly<Record<string, unknown>>)
      : undefined;
  } catch {
    return undefined;
  }
};

/**
 * Reads a file of a reply.
 *
 * Method   form, then the body by its kind, then its signature; how it stands to the records is told by repliesOf
 * Symbols  text  content of the file;  book  whose records it is to be put beside, where they are at hand
 * Returns  the reply, signed over what it says
 * Problems RECORD_REPLY_UNREADABLE, RECORD_REPLY_FROM_FUTURE, RECORD_BODY, RECORD_WRONG_BOOK, RECORD_SIGNATURE_WRONG
 * Assumes  nothing about the text; whose key it is was compared by another way
 * Cost     O(n), and about a millisecond for the signature
 * Source   the description above
 */
export const importReply = (text: string, book?: string): Result<ReplyBody> => {
  const { format, version, reply, ...rest } = parsed(text) ?? {};
  if (format !== FORMAT || typeof version !== 'number' || Object.keys(rest).length > 0) {
    return refuse(recordProblem('RECORD_REPLY_UNREADABLE', '/', { allowed: FORMAT }));
  }
  if (version > VERSION) {
    const problem = { given: version, allowed: String(VERSION) };
    return refuse(recordProblem('RECORD_REPLY_FROM_FUTURE', '/version', problem));
  }
  const wrong = bodyProblems({ kind: 'reply', version: 1, body: reply }, recordKinds, '');
  if (wrong.length > 0) return refuse(...wrong);
  const body = reply as ReplyBody;
  const problems = replyProblems({ body, book: book ?? body.book }, undefined, '');
  return problems.length > 0 ? refuse(...problems) : accept(body);
};
