import { repliesOf } from '../proof/replies.ts';
import { accept, type Result } from '../quantity/problem.ts';
import { appendRecord, startChain } from '../record/append-record.ts';
import { keyFingerprint } from '../record/fingerprint.ts';
import { recordKinds } from '../record/kinds.ts';
import { exportRecords, type RecordFile } from '../record/record-file.ts';
import type { ReplyBody } from '../record/reply.ts';
import { importReply, largestReply } from '../record/reply-file.ts';
import { verifySigned } from '../record/verify-signed.ts';
import { shownDigest } from '../witness/index.ts';
import type { Call, Ended } from './command.ts';
import { given } from './given.ts';
import { cliProblem } from './problems.ts';
import { readRecordsFile, recordsText } from './read-records-file.ts';
import { readText } from './read-text.ts';
import type { ReplyDocument } from './reply-document.ts';
import { replyText } from './reply-text.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/**
 * Records with a reply among them, in a chain of its own that is made of the reply alone: two people who take in the same
 * one have the same record, and their records join.
 */
const withReply = ({ book, records }: RecordFile, reply: ReplyBody): Result<RecordFile> => {
  if (repliesOf(records).some((one) => one.reply.value === reply.value)) {
    return accept({ book, heads: [], records });
  }
  const writer = `reply-${reply.value.slice(0, 32)}`;
  const { revision, at: deviceTime } = reply;
  const draft = { id: `${writer}.0`, revision, kind: 'reply', version: 1, deviceTime, body: reply };
  const added = appendRecord(startChain(book, writer), draft);
  return added.ok ? accept({ book, heads: [], records: [...records, added.value.record] }) : added;
};

const answersFile = async (
  path: string | undefined,
  { file }: ReplyBody,
  world: World,
): Promise<Result<boolean | undefined>> => {
  if (path === undefined) return accept(undefined);
  const text = await readText(path, world, { ...recordsText, what: 'witnessFile' });
  return text.ok ? accept(shownDigest(text.value) === file) : text;
};

/** Says what a reply says; status 1 where it accepts nothing, answers another file, or the records have gone on since. */
export const runReply = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const [path = '-', recordsPath] = operands;
  const { file, out } = values;
  if ([path, recordsPath, file].filter((one) => one === '-').length > 1) {
    return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  }
  if (out !== undefined && !/\.records$/i.test(out)) {
    const allowed = words.say('cli.records');
    return { problems: [cliProblem('CLI_OPTION_VALUE', '--out', { given: out, allowed })] };
  }
  if (out !== undefined && recordsPath === undefined) {
    return { problems: [cliProblem('CLI_OPERAND_MISSING', 'reply', { allowed: 'REPLY RECORDS' })] };
  }
  const text = await readText(path, world, { what: 'reply', most: largestReply });
  if (!text.ok) return text;
  const records = recordsPath === undefined ? undefined : await readRecordsFile(recordsPath, world);
  if (records?.ok === false) return { problems: records.problems, heading: records.heading };
  const reply = importReply(text.value, records?.value.book);
  if (!reply.ok) return { problems: reply.problems, heading: path };
  const toFile = await answersFile(file, reply.value, world);
  if (!toFile.ok) return toFile;
  const joined = records === undefined ? undefined : withReply(records.value, reply.value);
  if (joined?.ok === false) return joined;
  if (joined !== undefined) {
    // what the witness saw must still be there as it was
    const { book, records: all } = joined.value;
    const broken = verifySigned(all, { book, kinds: recordKinds });
    if (broken.length > 0) return { problems: broken, heading: recordsPath };
  }
  if (out !== undefined && joined !== undefined) {
    const bytes = new TextEncoder().encode(exportRecords(joined.value.book, joined.value.records));
    const written = await world.writeBytes(out, bytes);
    if (!written.ok) return written;
  }
  const since =
    joined === undefined
      ? undefined
      : repliesOf(joined.value.records).find((one) => one.reply.value === reply.value.value)?.since;
  const { algorithm: _, value: __, ...said } = reply.value;
  const document: ReplyDocument = {
    document: 'twinfloor reply',
    version: 1,
    path,
    ...said,
    heads: said.heads.map((head) => ({ ...head })),
    comments: said.comments.map((comment) => ({ ...comment })),
    open: [...said.open],
    fingerprint: keyFingerprint(said.key),
    ...given({ since, toFile: toFile.value, written: out }),
  };
  world.out(flags.has('json') ? `${JSON.stringify(document, null, 2)}\n` : replyText(document, file));
  return said.accepted === 'not' || (since ?? 0) > 0 || toFile.value === false ? 1 : 0;
};
