import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook, writeBook } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { assessmentSchema } from './assess-document.ts';
import { called, root } from './testing/called.ts';
import { utilitiesDocumentSchema } from './utilities-document.ts';

const demoPath = join(root, 'src/book/demo/flagon-line.json');
const demo = readBook(readFileSync(demoPath, 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const call = (command: string, book: Book, ...argv: string[]) =>
  called([command, '-', ...argv], { files: { '-': writeBook(book) } });
const changed = (...patches: Patch[]): Book => {
  const result = patchBook(demo.value, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const documentOf = async (book: Book, ...argv: string[]) =>
  utilitiesDocumentSchema.parse(JSON.parse((await call('utilities', book, ...argv, '--json')).out));

describe('utilities', () => {
  it('says of each question what is asked, what is there, the verdict and the margin, under its trade', async () => {
    const { out, err } = await call('utilities', demo.value, '--floor', 'LARKMOOR');
    expect(err).toBe('');
    expect(out).toMatch(/Larkmoor \(bound for\): Compressed air/);
    expect(out).toMatch(/load of the motor, wash pump -M2 +100 % +137\.\d % +short, −\d+ %/);
    expect(out).toMatch(/water in the air pipe .* short, [\d.]+ K lacking/);
    expect(out).toContain('not known without Larkmoor, air, quality');
    expect(out).toContain('licensed electrician');
    expect(out).not.toMatch(/NaN|Infinity|undefined|\[object|Oxbow \(/);
    expect(out).not.toMatch(/utilit(y|ies)\.[a-z]/);
    expect(out.toLowerCase()).not.toContain('safe ');
  });

  it('ends with 1 where a utility is short, and with 0 where none is', async () => {
    for (const floor of ['OXBOW', 'LARKMOOR']) {
      const found = assessBook(demo.value).floors.find((one) => one.floor === floor)!;
      const short = found.utilities.findings.some(({ verdict }) => verdict === 'short');
      expect((await call('utilities', demo.value, '--floor', floor)).status).toBe(short ? 1 : 0);
    }
    expect((await call('utilities', demo.value, '--floor', 'LARKMOOR')).status).toBe(1);
  });

  it('gives as JSON every question with its workings, and the assessment gives the same', async () => {
    const document = await documentOf(demo.value, '--floor', 'LARKMOOR');
    const [floor] = document.floors;
    expect(document.floors.map((one) => one.floor)).toEqual(['LARKMOOR']);
    const opened = floor!.findings.flatMap(({ have }) => (have.working === undefined ? [] : [have]));
    expect(opened.length).toBeGreaterThan(5);
    for (const { working, output, value } of opened) {
      const out = floor!.workings[working!]!.outputs[output!]!;
      if ('value' in out && typeof out.value === 'number') expect(out.value).toBeCloseTo(value!, 9);
    }
    expect(document.cautions.power).toContain('licensed electrician');
    const whole = assessmentSchema.parse(
      JSON.parse((await call('assess', demo.value, '--floor', 'LARKMOOR', '--json')).out),
    );
    expect(whole.floors[0]!.utilities.findings).toEqual(floor!.findings);
    expect(whole.floors[0]!.utilities.figures).toEqual(floor!.figures);
  });

  it('repeats what a calculation does not take, says in the reader’s units what it would, and goes on with the rest', async () => {
    const book = changed({ path: '/floors/1/air/dryer/dewPoint', value: '-20 degC' });
    const { out } = await call('utilities', book, '--floor', 'LARKMOOR', '--units', 'metric');
    expect(out).toMatch(/a calculation does not take Larkmoor, air, dryer, dew point\. .*"-20 degC".* °C/);
    expect(out).toMatch(/Larkmoor \(bound for\): Power/);
    const { floors } = await documentOf(book, '--floor', 'LARKMOOR');
    const refused = floors[0]!.findings.flatMap(({ refusals }) => refusals);
    expect(refused[0]?.places).toContain('/floors/1/air/dryer/dewPoint');
    expect(refused[0]?.problems[0]?.text).not.toMatch(/\d{6}/);
  });

  it('is usable before anything is known, in either system of units', async () => {
    const bare = changed(
      { path: '/floors/1/air', op: 'remove' },
      { path: '/floors/1/power', op: 'remove' },
      { path: '/floors/1/water', op: 'remove' },
      { path: '/floors/1/heat', op: 'remove' },
      { path: '/floors/1/drains', op: 'remove' },
      { path: '/floors/1/room', op: 'remove' },
    );
    const { out, err } = await call('utilities', bare, '--floor', 'LARKMOOR', '--units', 'us');
    expect(err).toBe('');
    expect(out).toContain('pressure at the drop');
    expect(out).toContain('psig');
    expect(out).not.toMatch(/bar\(g\)|NaN|undefined/);
  });

  it.each([
    [['--floor', 'MOON'], 'The book has no floor MOON. It has: OXBOW, LARKMOOR.'],
    [['--units', 'feet'], 'The option --units was given feet; it takes metric, us.'],
    [['--remedy'], 'Did you mean --remedies?'],
  ])('answers %j in a sentence and with status 2', async (argv, sentence) => {
    const { status, out, err } = await call('utilities', demo.value, ...argv);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
  });
});
