import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { appendRecord, startChain } from '../record/append-record.ts';
import { exportRecords } from '../record/record-file.ts';
import { problemsSchema } from './problem-document.ts';
import { type ProofDocument, proofSchema } from './proof-document.ts';
import { called, root } from './testing/called.ts';

const demo = join(root, 'src/book/demo/flagon-line.json');

/** What the command says of the demonstration book, with some records beside it. */
const call = (argv: readonly string[], records = '') =>
  called(['proof', demo, ...argv], { files: { R: records } });

/** Records of one tablet that tried checks. */
const tries = (...bodies: readonly object[]): string => {
  let chain = startChain('flagon-line', 'tablet');
  const records = bodies.map((body, i) => {
    const done = appendRecord(chain, {
      id: `r${i}`,
      revision: 1,
      kind: 'check',
      version: 2,
      deviceTime: '2027-04-20T09:00:00Z',
      body: { by: 'the engineer', ...body },
    });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    chain = done.value.chain;
    return done.value.record;
  });
  return exportRecords('flagon-line', records);
};

const plain = await call(['--json']);
const document = proofSchema.parse(JSON.parse(plain.out));
const checkOn = (floor: string, id: string): ProofDocument['floors'][number]['checks'][number] =>
  document.floors.find((one) => one.floor === floor)!.checks.find((one) => one.id === id)!;

describe('proof', () => {
  it('prints each floor’s protocol with limits and plan, conditions, what comes over, and the gates', async () => {
    const { status, out } = await call([]);
    expect(status).toBe(0);
    expect(out).toContain('Oxbow (built on)\n66 checks: not tried 66.');
    expect(out).toMatch(
      /manifold pressure, all lanes open +within 15 % of 0\.1571 bar\(g\) +0\.05464 bar\(g\) +can’t be so, by 50 %/,
    );
    expect(out).toMatch(
      /rate over the agreed run.* +witness +at least 1.050\/h +to show only: manifold pressure/,
    );
    const { carryOver } = document.floors.find(({ floor }) => floor === 'LARKMOOR')!;
    const undone = carryOver.filter(({ reason }) => reason === 'undone').length;
    expect(out).toContain(`${carryOver.length} checks come over from Oxbow, where they were not proved`);
    expect(out).toContain(`  ${undone} of them were not tried there.`);
    expect(out).toMatch(/ready to ship: lacks checks 66, joins not recorded as done 2; nobody has signed/);
    expect(out).toContain('It does not judge safety');
    // a key without words would stand there as it is
    expect(out).not.toMatch(/\bproof\.[a-z]|\{[a-z]+\}/i);
  });

  it('says in JSON what must be seen, the sheet behind a limit, and what the book says where a check hangs on', () => {
    expect(checkOn('LARKMOOR', 'effect -S2 -M1').expected).toBe(
      'Cause given: stops, controlled, then without power, category 1.',
    );
    expect(checkOn('LARKMOOR', 'cycleTime FLAGON-2L').limits[0]?.working?.sheet).toBe('rate/agreed-period');
    expect(checkOn('LARKMOOR', 'current -M2').basis.map(({ of, path }) => `${of ?? ''}${path}`)).toContain(
      '-M2/current',
    );
    expect(plain.status).toBe(0);
    expect(plain.out).not.toMatch(/"proof\.[a-z]/);
  });

  it('judges what was recorded over that basis; a failure is status 1', async () => {
    const { basis } = checkOn('LARKMOOR', 'effect -S1 -M1');
    const tried = (seen: boolean) => tries({ check: 'effect -S1 -M1', floor: 'LARKMOOR', basis, seen });
    const good = await call(['R', '--floor', 'LARKMOOR'], tried(true));
    expect(good.status).toBe(0);
    expect(good.out).toMatch(/stop button, filler -S1 → washer index -M1 +hold +seen +to prove +proved/);
    const bad = await call(['R', '--floor', 'LARKMOOR'], tried(false));
    expect(bad.status).toBe(1);
    expect(bad.out).toMatch(/washer index -M1 +hold +seen +to prove +failed/);
    const other = basis.map((one) => ({ ...one, sha256: '0'.repeat(64) }));
    const stale = await call(
      ['R', '--floor', 'LARKMOOR'],
      tries({ check: 'effect -S1 -M1', floor: 'LARKMOOR', basis: other, seen: true }),
    );
    expect(stale.out).toContain('stale: stop button, filler, effects 1');
  });

  it('lays out what is left in days, and says who owns what is waited for and what moves the signature', async () => {
    const { out, status } = await call(['--floor', 'LARKMOOR']);
    expect(status).toBe(0);
    expect(out).toMatch(
      /Left: [\d.]+ h of work by hand, one check at a time, 8 h a day from 2027-04-19\. The signature on 2027-\d\d-\d\d at the earliest\./,
    );
    expect(out).toMatch(/juice of the run released +the laboratory LAB +nobody has asked/);
    expect(out).toMatch(/What decides the end: .* → /);
    expect(out).toContain('Made before release: 0 bottles');
    expect(out).toMatch(/After acceptance\n.*target +rate by the end of the second week/s);
    const { days } = document.floors.find(({ floor }) => floor === 'LARKMOOR')!;
    const later = proofSchema.parse(JSON.parse((await call(['--json', '--from', '2027-05-03'])).out));
    const moved = later.floors.find(({ floor }) => floor === 'LARKMOOR')!.days;
    expect([moved.from, moved.overdue]).toEqual([
      '2027-05-03',
      ['W-CREW', 'W-LIFT', 'W-FLUSH', 'W-INDUCTION'],
    ]);
    expect(moved.work).toBe(days.work);
    expect((await call(['--from', '2027-02-30'])).status).toBe(2);
  });

  it('gives one gate with everything that it lacks; not passed is status 1', async () => {
    const { status, out } = await call(['--gate', 'ready to travel']);
    expect(status).toBe(1);
    expect(out).toMatch(/findings without an owner +voltage drop, running +site/);
    expect(out).toMatch(/questions not answered +Larkmoor, water, hardness +site/);
    expect(out).not.toContain('ready to ship');
  });

  it('takes the example records, whose signatures name the gates', async () => {
    const { status, out } = await call([
      join(root, 'examples/records/oxbow.records'),
      '--gate',
      'ready to ship',
    ]);
    expect(status).toBe(1);
    expect(out).toMatch(/signed by the engineer \(Oxbow Works\), \d+ open points not named/);
  });

  it('takes the example of a protocol half-way: what failed and what is awaited stand, whatever the book becomes', async () => {
    const { status, out, err } = await call([join(root, 'examples/records/protocol.records')]);
    expect([status, err]).toEqual([1, '']);
    expect(out).toMatch(/level: -Y12 .* to prove +failed/);
    expect(out).toMatch(
      /residue after the rinse.* result awaited: rinse water.*, by the laboratory, 2027-04-26/,
    );
  });

  it('refuses records that are not whole, and tells of results that are of no check', async () => {
    const codes = async (argv: readonly string[], records = '') => {
      const { status, out } = await call([...argv, '--json'], records);
      expect(status).toBe(2);
      return problemsSchema.parse(JSON.parse(out)).problems.map(({ code }) => code);
    };
    const strange = tries({ check: 'effect -S9 -M1', floor: 'LARKMOOR', basis: [], seen: true });
    expect(await codes(['R'], strange)).toEqual(['PROOF_CHECK_UNKNOWN']);
    expect(await codes(['R'], strange.replace('-S9', '-S1'))).toEqual(['RECORD_CHANGED']);
    expect(await codes(['R'], readFileSync(demo, 'utf8'))).toEqual(['RECORD_FILE_UNREADABLE']);
    expect(await codes(['--floor', 'NOWHERE'])).toEqual(['CLI_FLOOR_UNKNOWN']);
    expect(await codes(['--gate', 'ready'])).toEqual(['CLI_OPTION_VALUE']);
  });
});
