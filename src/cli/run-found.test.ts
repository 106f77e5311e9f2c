import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook, writeBook } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { appendRecord, startChain } from '../record/append-record.ts';
import { exportRecords } from '../record/record-file.ts';
import { assessmentSchema } from './assess-document.ts';
import { foundSchema } from './found-document.ts';
import { called, root } from './testing/called.ts';
import { utilitiesDocumentSchema } from './utilities-document.ts';

const demo = readBook(readFileSync(join(root, 'src/book/demo/flagon-line.json'), 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');
const example = readFileSync(join(root, 'examples/readings/larkmoor.json'), 'utf8');

/** Runs a command with a book `B` and readings `R` in the place of files. */
const call = (argv: readonly string[], readings: string = example, book: Book = demo.value) =>
  called(argv, { files: { B: writeBook(book), R: readings } });
const reading = (of: string, value: string, more: object = {}) => ({
  floor: 'LARKMOOR',
  of,
  value,
  by: 'the engineer',
  at: '2027-04-19T09:10:00Z',
  ...more,
});
const changed = (...patches: Patch[]): Book => {
  const result = patchBook(demo.value, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('found', () => {
  it('runs on the example: both beside each other, whether they differ, what it does, whose it is', async () => {
    const { status, out, err } = await call(['found', 'B', 'R', '--units', 'us']);
    expect([status, err]).toEqual([1, '']);
    const [air = ''] = out.split('\n\n');
    expect(air).toMatch(/^Larkmoor, air, compressor, cut in\n/);
    expect(air).toMatch(/promised +88 psig, said by Larkmoor, maintenance/);
    expect(air).toMatch(/found +71 psig \(70 … 72\); gauge on the receiver.*2 others drawing.*the engineer/);
    expect(air).toContain('differs from what was promised');
    expect(air).toMatch(/rate +[\d .]+\/h to [\d .]+\/h/);
    expect(air).toMatch(/washing +washer, its ceiling: carries \(\+\d+ %\) to/);
    expect(air).toMatch(/pressure at the drop.*AIR-1: carries \(.*\) to short \(−\d+ %\)/);
    expect(air).toContain('belongs to the site: Larkmoor, maintenance');
    expect(out).toMatch(/power, frequency\n.*60 Hz\n.*60 Hz.*\n +as promised/);
    expect(out).toMatch(/air, quality\n +promised +nothing was said/);
    expect(out).not.toMatch(/NaN|undefined|\[object|found\.[a-z]/);
  });

  it('gives the same as JSON, of which the numbers are those of the book with that reading in it', async () => {
    const { out, status } = await call(['found', 'B', 'R', '--json']);
    expect(status).toBe(1);
    const { places } = foundSchema.parse(JSON.parse(out));
    const air = places.find(({ path }) => path === '/floors/1/air/compressor/cutIn')!;
    // 71 psi by the definition of the pound per square inch, NIST SP 811 (2008), appendix B.8
    expect(air.found.value! / 6894.757).toBeCloseTo(71, 3);
    expect(air.promised!.value! / 6894.757).toBeCloseTo(88, 3);
    const alone = changed({
      path: '/floors/1/air/compressor/cutIn',
      value: { value: '71 psi', spread: '1 psi', standing: 'measured' },
    });
    const floor = assessBook(alone).floors.find((one) => one.floor === 'LARKMOOR')!;
    expect(air.rate.to).toBeCloseTo(floor.figures.runningRate!.value!, 9);
    for (const { finding, to, marginTo } of air.shifts) {
      const after = [...floor.findings, ...floor.utilities.findings].find(({ id }) => id === finding)!;
      expect([to, marginTo]).toEqual([after.verdict, after.margin]);
    }
  });

  it('ends with 0 where nothing that differs turns anything short', async () => {
    const same = JSON.stringify([reading('power/frequency', '60 Hz')]);
    expect((await call(['found', 'B', 'R'], same)).status).toBe(0);
    expect((await call(['found', 'B', 'R'], '[]')).out).toContain('Nothing was read.');
    expect((await call(['found', 'B', 'R', '--floor', 'OXBOW'])).out).toContain('Nothing was read.');
  });

  it('says of each reading that fits nowhere why, and lets the rest stand', async () => {
    const readings = JSON.stringify([
      reading('air/compressor/cutIn', '71 psi'),
      reading('air/compressor/cutInn', '71 psi'),
      reading('power/voltage', 'about two hundred'),
      reading('power/frequency', '60 Hz', { floor: 'MOON' }),
    ]);
    const { status, out } = await call(['found', 'B', 'R'], readings);
    expect(status).toBe(2);
    expect(out).toContain('Larkmoor, air, compressor, cut in');
    expect(out).toContain('3 readings fit nowhere and are left out; the rest stands.');
    expect(out).toMatch(/LARKMOOR, air\/compressor\/cutInn: 71 psi\n .*cutIn\b/);
    expect(out).toContain('The book has no floor MOON, so what was read of power/frequency fits nowhere.');
    const document = foundSchema.parse(JSON.parse((await call(['found', 'B', 'R', '--json'], readings)).out));
    expect(document.leftOut.map(({ reading: { of } }) => of).sort()).toEqual([
      'air/compressor/cutInn',
      'power/frequency',
      'power/voltage',
    ]);
  });

  it.each([
    ['{}', 'This holds nothing of what was asked for.'],
    ['[{"floor":"LARKMOOR"}]', '/0/at is missing or of the wrong form.'],
    [JSON.stringify([reading('air/compressor/cutIn', '71 psi', { users: -1 })]), '/0/users'],
    [JSON.stringify([reading('/floors/1/air', '71 psi')]), 'a place within the floor'],
  ])('answers the readings %s with status 2 and a sentence', async (readings, sentence) => {
    for (const argv of [
      ['found', 'B', 'R'],
      ['utilities', 'B', '--readings', 'R'],
    ]) {
      const { status, out, err } = await call(argv, readings);
      expect([status, out]).toEqual([2, '']);
      expect(err).toContain(sentence);
    }
  });
});

describe('an assessment on what was found', () => {
  it('says so above its figures, and gives the verdicts of what was read', async () => {
    const { status, out } = await call(['utilities', 'B', '--readings', 'R', '--floor', 'LARKMOOR']);
    expect(status).toBe(1);
    expect(out).toMatch(/^On what was found: 5 readings stand in the place of what was promised\.\n/);
    expect(out).toMatch(/pressure at the drop, filler and capper AIR-1 .* short/);
    expect((await call(['utilities', 'B', '--floor', 'LARKMOOR'])).out).toMatch(
      /pressure at the drop, filler and capper AIR-1 .* carries/,
    );
    const json = await call(['assess', 'B', '--readings', 'R', '--json']);
    const document = assessmentSchema.parse(JSON.parse(json.out));
    expect(document.on?.readings?.map(({ path }) => path)).toContain('/floors/1/air/compressor/cutIn');
    const before = assessmentSchema.parse(JSON.parse((await call(['assess', 'B', '--json'])).out));
    expect(before.on).toBeUndefined();
    expect(document.floors[1]!.figures.runningRate!.value).toBeLessThan(
      before.floors[1]!.figures.runningRate!.value!,
    );
  });

  it('takes exported records, of a reading and its correction the last', async () => {
    let chain = startChain('book', 'tablet');
    const records = [
      { id: 'a', value: '20 psi' },
      { id: 'b', value: '87 psi', supersedes: 'a' },
    ].map(({ value, ...one }) => {
      const done = appendRecord(chain, {
        ...one,
        revision: 1,
        kind: 'reading',
        version: 2,
        deviceTime: '2027-04-19T09:10:00Z',
        body: { floor: 'LARKMOOR', of: 'air/compressor/cutIn', value, by: 'the engineer' },
      });
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      chain = done.value.chain;
      return done.value.record;
    });
    const { out } = await call(['found', 'B', 'R', '--json'], exportRecords('book', records));
    expect(foundSchema.parse(JSON.parse(out)).places.map((one) => one.reading.value)).toEqual(['87 psi']);
  });

  it('runs on the temporary supply, and says on which floors', async () => {
    const floors = demo.value.floors!;
    const book = changed({
      path: '/floors/1/temporarySupply',
      value: { ...floors[1]!.supply, source: { ...floors[0]!.supply!.source } },
    });
    const { out } = await call(['assess', 'B', '--temporary'], example, book);
    expect(out).toMatch(/^On the temporary supply: Larkmoor\.\n/);
    const json = await call(['utilities', 'B', '--temporary', '--readings', 'R', '--json'], example, book);
    const { on } = utilitiesDocumentSchema.parse(JSON.parse(json.out));
    expect([on?.temporarySupply, on?.readings?.length]).toEqual([['LARKMOOR'], 5]);
    const none = await call(['assess', 'B', '--temporary']);
    expect(none.status).toBe(2);
    expect(none.err).toContain('No floor that was asked for has a temporary supply');
  });

  it('ends with 2 where a reading fits nowhere, and still gives the rest', async () => {
    const readings = JSON.stringify([reading('water/colour', 'brown')]);
    const { status, out } = await call(['utilities', 'B', '--readings', 'R'], readings);
    expect(status).toBe(2);
    expect(out).toContain('1 reading fits nowhere');
    expect(out).toContain('Compressed air');
  });
});
