import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keyFingerprint } from '../record/fingerprint.ts';
import { exportRecords, importRecords } from '../record/record-file.ts';
import { type ReplyStatement, signReply } from '../record/reply.ts';
import { exportReply } from '../record/reply-file.ts';
import { problemsSchema } from './problem-document.ts';
import { proofSchema } from './proof-document.ts';
import { replySchema } from './reply-document.ts';
import { called, root } from './testing/called.ts';
import { verificationSchema } from './verify-document.ts';
import { witnessSchema } from './witness-document.ts';

const at = (path: string): string => join(root, path);
const demo = at('src/book/demo/flagon-line.json');
const protocol = at('examples/records/protocol.records');
const secret = '4b'.repeat(32);

const call = async (argv: readonly string[], files: Readonly<Record<string, string>> = {}) => {
  const { written, ...rest } = await called(argv, { files, today: () => '2027-04-20' });
  const texts = [...written].map(([path, bytes]) => [path, new TextDecoder().decode(bytes)] as const);
  return { ...rest, written: Object.fromEntries<string>(texts) };
};

const problemsOf = (out: string): readonly string[] =>
  problemsSchema.parse(JSON.parse(out)).problems.map(({ code }) => code);

const file = await call(['witness', demo, protocol, '--out', 'w.html', '--json']);
const made = witnessSchema.parse(JSON.parse(file.out));
const html = file.written['w.html'] ?? '';

const replyTo = (rest: Partial<ReplyStatement> = {}): string => {
  const signed = signReply(
    {
      by: 'the witness',
      role: 'Larkmoor Juice Cooperative',
      book: made.book,
      revision: made.revision,
      file: made.shows,
      heads: made.heads,
      at: '2027-04-21T07:30:00Z',
      accepted: 'with open points',
      comments: [{ check: 'placed +S1', floor: 'OXBOW', text: 'is the third foot down?' }],
      open: ['P1'],
      ...rest,
    },
    secret,
  );
  const text = signed.ok ? exportReply(signed.value) : signed;
  if (!text.ok) throw new Error(JSON.stringify(text.problems));
  return text.value;
};

describe('witness', () => {
  it('writes one file and says what it shows, how far the records reach and what was left out', async () => {
    expect(file.status).toBe(0);
    const [first = ''] = readFileSync(protocol, 'utf8').split('\n');
    const { records, heads } = JSON.parse(first) as { records: number; heads: unknown };
    expect(made).toMatchObject({ book: 'flagon-line', date: '2027-04-20', records, heads, leftOut: [] });
    expect(html).toContain('Made on 2027-04-20');
    expect(made.bytes).toBe(new TextEncoder().encode(html).length);
    const { out, written } = await call(['witness', demo, protocol]);
    expect(Object.keys(written)).toEqual(['flagon-line-witness.html']);
    expect(out).toContain(`what it shows has the digest ${made.shows}`);
  });

  it('refuses a name, a day or a size that is none, and records that are not whole', async () => {
    const wrong = ['--out', 'book.json', '--date', '2027-02-30', '--most', 'much'];
    const { out, status, written } = await call(['witness', demo, protocol, ...wrong, '--json']);
    expect([status, problemsOf(out)]).toEqual([2, Array.from({ length: 3 }, () => 'CLI_OPTION_VALUE')]);
    expect(written).toEqual({});
    const R = readFileSync(protocol, 'utf8').replace('paint of the frame', 'paint of the floor');
    const broken = await call(['witness', demo, 'R', '--json'], { R });
    expect(problemsOf(broken.out)).toContain('RECORD_CHANGED');
  });
});

describe('reply', () => {
  it('says who accepts what, and writes the records with the reply among them, twice the same', async () => {
    const files = { A: replyTo(), 'W.html': html };
    const first = await call(
      ['reply', 'A', protocol, '--file', 'W.html', '--out', 'b.records', '--json'],
      files,
    );
    expect(first.status).toBe(0);
    const reply = replySchema.parse(JSON.parse(first.out));
    expect(reply).toMatchObject({ accepted: 'with open points', open: ['P1'], since: 0, toFile: true });
    expect(reply.fingerprint).toBe(keyFingerprint(reply.key));
    const R = first.written['b.records'] ?? '';
    expect(R.split('\n').length).toBe(readFileSync(protocol, 'utf8').split('\n').length + 1);
    const again = await call(['reply', 'A', 'R', '--out', 'b.records'], { ...files, R });
    expect(again.written['b.records']).toBe(R);
    expect(again.out).toContain('OXBOW, placed +S1: is the third foot down?');
    expect(again.out).toContain('Nothing was recorded after what was shown.');
    const proof = await call(['proof', demo, 'R'], { R });
    expect(proof.out).toContain('the witness (Larkmoor Juice Cooperative) accepts it with open points');
    const told = proofSchema.parse(JSON.parse((await call(['proof', demo, 'R', '--json'], { R })).out));
    expect(told.replies).toMatchObject([{ comments: [{ check: 'placed +S1' }], since: 0 }]);
    const verified = await call(['verify', 'R', '--json'], { R });
    expect(verificationSchema.parse(JSON.parse(verified.out)).whole).toBe(true);
  });

  it('of a file over fewer records says how many came since; one that accepts nothing is status 1', async () => {
    const all = importRecords(readFileSync(protocol, 'utf8'));
    if (!all.ok) throw new Error('the example does not read');
    const heads = made.heads.map((head) => {
      if (head.writer !== 'proof-tablet') return head;
      const sequence = head.sequence - 7;
      const { hash } = all.value.records.find(
        (one) => one.writer === head.writer && one.sequence === sequence,
      )!;
      return { ...head, sequence, hash };
    });
    const older = await call(['reply', 'A', protocol], {
      A: replyTo({ heads, accepted: 'as it is', open: [] }),
    });
    expect(older.status).toBe(1);
    expect(older.out).toContain('7 records came after what was shown: the reply does not speak of them.');
    const not = await call(['reply', 'A'], { A: replyTo({ accepted: 'not', remark: 'send pictures' }) });
    expect([not.status, not.out]).toEqual([1, expect.stringContaining('does not accept it')]);
    expect(not.out).toContain('To the whole: send pictures');
  });

  it('is refused where it was changed, is of another book, or the records were written anew since', async () => {
    const changed = replyTo().replace('third foot', 'fourth foot');
    expect(problemsOf((await call(['reply', 'A', '--json'], { A: changed })).out)).toEqual([
      'RECORD_SIGNATURE_WRONG',
    ]);
    const other = replyTo({ book: 'other', heads: [] });
    const ofOther = await call(['reply', 'A', protocol, '--json'], { A: other });
    expect(problemsOf(ofOther.out)).toContain('RECORD_WRONG_BOOK');
    const anew = replyTo({ heads: made.heads.map((head) => ({ ...head, hash: 'ab'.repeat(32) })) });
    const rewritten = await call(['reply', 'A', protocol, '--out', 'b.records', '--json'], { A: anew });
    expect(problemsOf(rewritten.out)).toEqual(made.heads.map(() => 'RECORD_HEAD_DIFFERS'));
    expect(rewritten.written).toEqual({});
    const cut = importRecords(readFileSync(protocol, 'utf8'));
    if (!cut.ok) throw new Error('the example does not read');
    const R = exportRecords(cut.value.book, cut.value.records.slice(0, -1));
    expect(problemsOf((await call(['reply', 'A', 'R', '--json'], { A: replyTo(), R })).out)).toContain(
      'RECORD_TRUNCATED',
    );
  });

  it('to another file than the one that was sent says so', async () => {
    const W = html.replace('Made on 2027-04-20', 'Made on 2027-04-22');
    const { status, out } = await call(['reply', 'A', '--file', 'W'], { A: replyTo(), W });
    expect(status).toBe(1);
    expect(out).toContain(`It does not answer W, but a file that shows ${made.shows}.`);
  });

  it('in the examples answers the protocol beside it', async () => {
    // where the protocol was made anew: `npx vitest run src/cli/run-witness -u`
    const text = replyTo({
      // what the file showed that was sent; it differs from today's where words have changed since
      file: '9a1a1d3aaa0fba3832373c660d5c99b00e3a9b91e00dbd04001b6c3b0d8248f9',
      comments: [
        {
          check: 'current -M3',
          floor: 'OXBOW',
          text: 'Please read it again at 60 Hz before the first product.',
        },
      ],
      remark: 'Send the pictures of the anchors with the next file.',
    });
    await expect(text).toMatchFileSnapshot('../../examples/records/protocol.reply');
    const { status, out } = await call(['reply', at('examples/records/protocol.reply'), protocol]);
    expect(status).toBe(0);
    expect(out).toContain('Stays open: P1.');
  });
});
