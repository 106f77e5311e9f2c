import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook, writeBook } from '../book/index.ts';
import { appendRecord, startChain } from '../record/append-record.ts';
import { exportRecords } from '../record/record-file.ts';
import { shiftSchema } from './shift-document.ts';
import { called, root } from './testing/called.ts';

const demo = readBook(readFileSync(join(root, 'src/book/demo/flagon-line.json'), 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const call = async (book: Book | string, ...argv: string[]) => {
  const told: string[] = [];
  const ended = await called(['shift', '-', ...argv], {
    files: { '-': typeof book === 'string' ? book : writeBook(book) },
    progress: (text) => void told.push(text),
  });
  return { ...ended, told };
};
const changed = (...patches: Patch[]): Book => {
  const result = patchBook(demo.value, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const stations = demo.value.line!.stations!;
const path = (tag: string): string => `/line/stations/${stations.findIndex((one) => one.tag === tag)}`;
const few = ['--shifts', '4', '--floor', 'LARKMOOR'] as const;

describe('shift', () => {
  it('tells bottles, minutes with their owners, the chain, what a change is worth and the washing', async () => {
    const { out, err, told, status } = await call(demo.value, ...few);
    expect(err).toBe('');
    expect(status).toBe(1);
    expect(out).toMatch(/good bottles of a shift: \d\s\d{3} \(/);
    expect(out).toMatch(/fill \+FILL: the fill was waited for +[\d.]+ min +[\d.]+ % +machine/);
    expect(out).toMatch(/cap hopper run empty STOP-HOPPER .* people/);
    expect(out).toMatch(/pace set by .*then lane -Y\d+'s fill [\d.]+ s, then drip .*then lower/);
    expect(out).toMatch(/the next loop is [\d.]+ s shorter/);
    expect(out).toMatch(/one second of the fill is worth \d+ bottles an hour .* until it takes [\d.]+ s/);
    expect(out).toMatch(/without: .*filler guard door -S2/);
    expect(out).toMatch(/caustic \+WASH\.Z2 .* unknown/);
    expect(out).toMatch(/\d\d\.\d % overall, \d\d\.\d % of the machine itself/);
    expect(out).not.toMatch(/NaN|Infinity|undefined|\[object|shift\.[a-z]/);
    expect(out.toLowerCase()).not.toContain('safe ');
    expect(told.at(-1)).toBe('');
    expect(told.length).toBeGreaterThan(3);
  });

  it('gives as JSON a document of its schema whose minutes add up and whose workings are there', async () => {
    const { out } = await call(demo.value, '--shifts', '3', '--json', '--proof');
    const { floors } = shiftSchema.parse(JSON.parse(out));
    expect(floors.map(({ floor }) => floor)).toEqual(['OXBOW', 'LARKMOOR']);
    for (const floor of floors) {
      expect(floor.minutes.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(floor.duration, 3);
      expect(floor.workings[floor.good!.working!]!.sheet).toBe('rate/interval-of-runs');
      expect(floor.proof!.runs.length).toBeGreaterThan(3);
      const { put, fallen, rejected, gained } = floor.counts!;
      expect(put).toBeCloseTo(floor.good!.mean + fallen + rejected + gained, 6);
    }
  });

  it('tells the shift before and after a change, by tag or by place, and what it gives', async () => {
    const both = ['--change', '+WASH/dwell=8 s', '--change', `${path('+CAP')}/heads=2`] as const;
    const { out } = await call(demo.value, ...few, '--brief', '--json', ...both);
    const [floor] = shiftSchema.parse(JSON.parse(out)).floors;
    const own = (answer: { contacts: { own?: number | undefined }[] }) => answer.contacts[1]!.own!;
    expect(own(floor!)).toBeCloseTo(4 * 0.8 * 10.2, 6);
    expect(own(floor!.changed!)).toBeCloseTo(4 * 0.8 * 8, 6);
    expect(floor!.moved!.mean).toBeCloseTo(floor!.changed!.good!.mean - floor!.good!.mean, 6);
  });

  it('asks for what is missing instead of guessing, and still tells the rate', async () => {
    const { out, status } = await call(changed({ path: `${path('+FILL')}/stops` }), ...few);
    expect(out).toMatch(/running rate [\d.]+\/h/);
    expect(out).toMatch(/Bottles of a shift are not known: one place would answer/);
    expect(out).toMatch(/wanted: fill, stops/);
    expect(out).not.toContain('good bottles of a shift:');
    expect(status).toBe(0);
  });

  it('tells what a run shows that took place', async () => {
    const ran = ['--ran', '480 min', '--made', '7500', '--stops', '2', '--stood', '0 min'] as const;
    const { out } = await call(demo.value, ...few, '--brief', ...ran);
    // acceptance reference, check case 12 (computed): 480 min with 2 stops show 76.24 min
    expect(out).toMatch(/the run of 480 min with 2 stops shows at 95 %: .* at least 76\.2 min/);
  });

  it.each([
    [['--shifts', '0'], /--shifts/],
    [['--shifts', 'many', '--seed', '-1'], /--shifts[\s\S]*--seed/],
    [['--change', 'dwell 9 s'], /a place of the book, an equals sign/],
    [['--change', '+NOWHERE/dwell=9 s'], /NOWHERE/],
    [['--change', '+WASH/dwell=-3 s'], /must be|cannot|Allowed|allowed/],
    [['--ran', '60 min'], /--made/],
    [['--floor', 'NOWHERE'], /The book has no floor NOWHERE/],
  ])('refuses %j in a sentence', async (argv, sentence) => {
    const { status, err } = await call(demo.value, ...argv);
    expect(status).toBe(2);
    expect(err).toMatch(sentence);
    expect(err).not.toMatch(/undefined|\{|SHIFT_/);
  });

  it('explains a line that can not run, with the stations that wait for each other', async () => {
    const rules = [
      { tag: 'HR1', holds: '+WASH', while: '+FILL' },
      { tag: 'HR2', holds: '+FILL', while: '+WASH' },
    ];
    const { status, err } = await call(changed({ path: '/line/holdRules', value: rules }), ...few);
    expect(status).toBe(2);
    expect(err).toMatch(/HR1, HR2 let stations wait for each other.*\+WASH → \+FILL → \+WASH/);
  });

  it('says in the book what no line can be: sensors swapped, a stop cleared in no time', async () => {
    const text = writeBook(demo.value)
      .replace('"capsBelowLow": 12', '"capsBelowLow": 80, "capsBelowHigh": 60')
      .replace('"clear": "25 s"', '"clear": "0 s"');
    const { status, err } = await call(text, ...few);
    expect(status).toBe(2);
    expect(err).toMatch(/capsBelowLow.*must be less than/);
    expect(err).toMatch(/clear.*0 s/);
  });
});

describe('shift with what was recorded', () => {
  const at = (minutes: number): string => new Date(Date.UTC(2027, 3, 20, 6) + 60_000 * minutes).toISOString();
  const records = (): string => {
    const run = {
      floor: 'LARKMOOR',
      from: at(0),
      to: at(60),
      bottles: 900,
      by: 'the engineer',
      stops: [
        { cause: 'STOP-CAP', from: at(10), to: at(12) },
        { cause: 'label roll', from: at(30), to: at(31) },
      ],
    };
    const done = appendRecord(startChain('flagon-line', 'tablet'), {
      id: 'tablet.0',
      revision: 1,
      deviceTime: at(61),
      kind: 'run',
      version: 2,
      body: run,
    });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    return exportRecords('flagon-line', [done.value.record]);
  };
  const withFile = (text: string, ...argv: string[]) =>
    called(['shift', 'book.json', 'recorded', ...argv], {
      files: { 'book.json': writeBook(demo.value), recorded: text },
    });

  it('takes stops from runs, says so, and names what the book does not know', async () => {
    const { out } = await withFile(records(), ...few, '--brief');
    expect(out).toContain('stops as declared and as logged in one run of 1 h, together');
    expect(out).toMatch(
      /logged: cap across in the chute STOP-CAP, one stop, every [\d.]+ min of work .*, 2 min each/,
    );
    expect(out).toContain('left out, since the book names no such cause here: label roll, one stop, 1 min');
    const { out: json } = await withFile(records(), ...few, '--brief', '--json');
    const [floor] = shiftSchema.parse(JSON.parse(json)).floors;
    expect(floor!.log!.causes[0]).toMatchObject({ cause: 'STOP-CAP', stops: 1, clear: 120 });
  });

  it('takes the sheet of trials that fill takes', async () => {
    const { out, err } = await called(
      [
        'shift',
        'book.json',
        join(root, 'examples/fill/trials.csv'),
        ...few.slice(0, 2),
        '--floor',
        'OXBOW',
        '--brief',
      ],
      { files: { 'book.json': writeBook(demo.value) } },
    );
    expect(err).toBe('');
    expect(out).toMatch(/fill by 32 trials made here: the slowest lane takes 1[45][\d.]* s/);
    expect(out).toMatch(/from .* with what the trials leave open of the fill/);
  });

  it('refuses a file that is neither, and the same input twice', async () => {
    const broken = await withFile('{"format":"twinfloor-records"', ...few);
    expect(broken.status).toBe(2);
    expect((await withFile('what,is\nthis,?', ...few)).status).toBe(2);
    const twice = await called(['shift', '-', '-'], { files: { '-': writeBook(demo.value) } });
    expect(twice.status).toBe(2);
  });
});
