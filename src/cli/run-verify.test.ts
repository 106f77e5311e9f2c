import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { publicKeyOf } from '../record/ed25519.ts';
import type { Envelope } from '../record/envelope.ts';
import { headsOf } from '../record/heads.ts';
import { exportRecords } from '../record/record-file.ts';
import { signStatement } from '../record/signature.ts';
import { appended, testedBook } from '../record/testing/appended.ts';
import { problemsSchema } from './problem-document.ts';
import { called, root } from './testing/called.ts';
import { verificationSchema } from './verify-document.ts';

const secret = '01'.repeat(32);

const call = (argv: readonly string[], files: Readonly<Record<string, string>> = {}) =>
  called(['verify', ...argv], { files });

let notes: readonly Envelope[] = [];
for (let i = 0; i < 3; i++) notes = appended(notes, 'tablet', {});
const body = signStatement(
  {
    by: 'the witness',
    role: 'customer',
    statement: 'ready to ship',
    heads: headsOf(notes),
    open: ['paint of the frame'],
  },
  secret,
);
if (!body.ok) throw new Error('not signed');
const signed = appended(notes, 'phone', { kind: 'signature', version: 2, body: body.value });

describe('verify', () => {
  it('says that a set is whole, what was signed with which key, what stays open, and what it can’t see', async () => {
    const { status, out, err } = await call(['R'], { R: exportRecords(testedBook, signed) });
    expect([status, err]).toEqual([0, '']);
    expect(out).toMatch(/^R: 4 records of book oxbow-1, and nothing broken\.\nHeld against itself alone/);
    expect(out).toContain('the witness (customer): “ready to ship”\n  Stays open: paint of the frame.');
    expect(out).toContain(`Made with key ${publicKeyOf(secret)} over what it stands under.`);
    expect(out).toContain(headsOf(notes)[0]!.hash);
    const { document } = {
      document: verificationSchema.parse(
        JSON.parse((await call(['R', '--json'], { R: exportRecords(testedBook, signed) })).out),
      ),
    };
    expect(document).toMatchObject({
      whole: true,
      records: 4,
      heldAgainst: 0,
      signatures: [{ right: true }],
    });
  });

  it('shows by an earlier export, of which the first line is enough, that the end was cut off', async () => {
    const [first = ''] = exportRecords(testedBook, notes).split('\n');
    const cut = exportRecords(testedBook, notes.slice(0, 2));
    expect((await call(['R'], { R: cut })).status).toBe(0);
    const { status, out } = await call(['R', '--heads', 'H'], { R: cut, H: first });
    expect(status).toBe(1);
    expect(out).toContain('The records of tablet end at number 1, but number 2 was handed over before.');
    expect(
      (await call(['R', '--heads', 'H'], { R: exportRecords(testedBook, signed), H: first })).status,
    ).toBe(0);
  });

  it('says which device’s records are gone altogether, and that heads are of another book', async () => {
    const both = exportRecords(testedBook, appended(notes, 'phone', {}));
    const gone = await call(['R', '--heads', 'H'], { R: exportRecords(testedBook, notes), H: both });
    expect(gone.status).toBe(1);
    expect(gone.out).toContain('No record of phone is here, but number 0 of them was handed over before.');
    const H = both.replaceAll(testedBook, 'other-book');
    const other = await call(['R', '--heads', 'H'], { R: both, H });
    expect(other.status).toBe(1);
    expect(other.out).toContain(
      `What was handed over of tablet belongs to book other-book, not to ${testedBook}.`,
    );
  });

  it('says what kind of file it wanted where one is empty or is no text', async () => {
    const R = exportRecords(testedBook, notes);
    expect((await call(['R'], { R: '' })).err).toContain('R is empty. Expected: exported records, UTF-8.');
    const heads = await call(['R', '--heads', 'H'], { R, H: '\u0000\u0001' });
    expect(heads.err).toContain('H is not text: 00 01. Expected: exported records, UTF-8.');
  });

  it('names the record that was changed, and the signature that this makes wrong', async () => {
    const text = exportRecords(testedBook, signed);
    const note = await call(['R'], { R: text.replace('"text":"seen"', '"text":"seem"') });
    expect(note.status).toBe(1);
    expect(note.out).toContain('Record 0 of tablet was changed after it was written');
    const statement = await call(['R'], { R: text.replace('ready to ship', 'ready to sail') });
    expect(statement.out).toContain(
      'The signature of the witness was not made over what it now stands under',
    );
    expect(statement.out).toContain(`Not right: see below. Key ${publicKeyOf(secret)}.`);
  });

  it('holds signatures against the keys that are known', async () => {
    const R = exportRecords(testedBook, signed);
    expect((await call(['R', '--key', publicKeyOf(secret)], { R })).status).toBe(0);
    const strange = await call(['R', '--key', publicKeyOf('02'.repeat(32))], { R });
    expect(strange.status).toBe(1);
    expect(strange.out).toMatch(/was made with key \w{64}, which is none of those that were given/);
  });

  it('refuses what is no file of records, a key that is none, and says where a line is damaged', async () => {
    const R = exportRecords(testedBook, signed);
    const problems = async (argv: readonly string[], files: Readonly<Record<string, string>>) => {
      const { status, out } = await call([...argv, '--json'], files);
      expect(status).toBe(2);
      return problemsSchema.parse(JSON.parse(out)).problems.map(({ code }) => code);
    };
    expect(await problems(['R'], { R: '{"twinfloor":1}' })).toEqual(['RECORD_FILE_UNREADABLE']);
    expect(await problems(['R'], { R: R.replace('"book"', '"bok"') })).toEqual(['RECORD_FILE_UNREADABLE']);
    expect(await problems(['R'], { R: R.slice(0, -40) })).toEqual(['RECORD_LINE_UNREADABLE']);
    expect(await problems(['R', '--key', 'abc'], { R })).toEqual(['CLI_OPTION_VALUE']);
    expect(await problems(['R', '--heads', 'H'], { R, H: 'nothing' })).toEqual(['RECORD_FILE_UNREADABLE']);
    expect(await problems(['-', '--heads', '-'], {})).toEqual(['CLI_INPUT_TWICE']);
    expect(await problems(['nowhere.records'], {})).toEqual(['CLI_FILE_ABSENT']);
  });

  it('runs on the example, against what was handed over when it was shipped', async () => {
    const at = (name: string): string => join(root, 'examples/records', name);
    const { status, out } = await call([at('oxbow.records'), '--heads', at('oxbow-shipped.records')]);
    expect(status).toBe(0);
    expect(out).toContain('nothing broken');
    expect(readFileSync(at('oxbow-shipped.records'), 'utf8').split('\n').length).toBeGreaterThan(2);
  });
});
