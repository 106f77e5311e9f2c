import { bookUnits } from '../../src/book/book-units.ts';
import { readBook } from '../../src/book/index.ts';
import { assessBook } from '../../src/floor/index.ts';
import { inTime } from '../../src/proof/index.ts';
import { headsOf } from '../../src/record/heads.ts';
import { toHex } from '../../src/record/hex.ts';
import { exportRecords } from '../../src/record/record-file.ts';
import { signReply } from '../../src/record/reply.ts';
import { exportReply } from '../../src/record/reply-file.ts';
import { sha256 } from '../../src/record/sha256.ts';
import { makeWitnessFile } from '../../src/witness/index.ts';
import { keyOf, protocolRecords, type Step } from './protocol-records.ts';

/** The example of a protocol in its files: the records, and what a witness answered who saw them. */
export const protocolFiles = (
  text: string,
  story: readonly Step[],
): { readonly records: string; readonly reply: string } => {
  const read = readBook(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const book = read.value;
  const records = protocolRecords(book, story);
  const revision = 3;
  const { digest } = makeWitnessFile({
    book,
    id: 'flagon-line',
    revision,
    hash: toHex(sha256(new TextEncoder().encode(text))),
    assessment: assessBook(book),
    recorded: inTime(records),
    date: '2027-04-20',
    units: bookUnits(book, undefined),
  });
  const reply = signReply(
    {
      by: 'the witness',
      role: 'Larkmoor Juice Cooperative',
      book: 'flagon-line',
      revision,
      file: digest,
      heads: headsOf(records),
      at: '2027-04-21T07:30:00Z',
      accepted: 'with open points',
      comments: [
        {
          check: 'current -M3',
          floor: 'OXBOW',
          text: 'Please read it again at 60 Hz before the first product.',
        },
      ],
      open: ['P1'],
      remark: 'Send the pictures of the anchors with the next file.',
    },
    keyOf('the witness'),
  );
  const exported = reply.ok ? exportReply(reply.value) : reply;
  if (!exported.ok) throw new Error(JSON.stringify(exported.problems));
  return { records: exportRecords('flagon-line', records), reply: exported.value };
};
