import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook, writeBook } from '../book/index.ts';
import { appendRecord, startChain } from '../record/append-record.ts';
import { exportRecords } from '../record/record-file.ts';
import { readTable } from '../table/index.ts';
import { type FillDocument, fillSchema } from './fill-schema.ts';
import { fillSheetSchema } from './fill-sheet.ts';
import { lotSchema } from './lot-document.ts';
import { called, root } from './testing/called.ts';

const example = (name: string): string => readFileSync(join(root, 'examples/fill', name), 'utf8');
const demo = readBook(readFileSync(join(root, 'src/book/demo/flagon-line.json'), 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

interface Files {
  readonly trials?: string;
  readonly samples?: string;
  readonly lot?: string;
  readonly book?: Book;
}

/** Runs the command with a book `B`, trials `T`, samples `S` and a lot `L` in the place of files. */
const call = (argv: readonly string[], given: Files = {}) =>
  called(['fill', ...argv], {
    files: {
      B: writeBook(given.book ?? demo.value),
      T: given.trials ?? example('trials.csv'),
      S: given.samples ?? example('samples.csv'),
      L: given.lot ?? example('lot.csv'),
    },
  });
const documented = async (argv: readonly string[], given?: Files): Promise<FillDocument> =>
  fillSchema.parse(JSON.parse((await call([...argv, '--json'], given)).out));
const changed = (...patches: Patch[]): Book => {
  const result = patchBook(demo.value, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const unlabelled = changed({ path: '/line/formats/0/label' });

describe('fill', () => {
  it('runs on the example: lanes, what to try next, counts, the other floor, its allowances', async () => {
    const { out, err } = await call(['B', 'T', '--samples', 'S']);
    expect(err).toBe('');
    expect(out).toContain('32 trials on OXBOW, of 32 in the file.');
    expect(out).toMatch(/-Y11 +40\d(\.\d)?\/L \(4\d\d.* … 4\d\d.*\) .* Kv [12]\./);
    expect(out).toContain('Trials that would tell most next');
    expect(out).toContain('Counts on OXBOW at which 99.5 % of bottles reach their level');
    expect(out).toContain('one count for all lanes');
    expect(out).toMatch(/LARKMOOR, foretold from OXBOW, with intervals at 90 %/);
    expect(out).toMatch(/-Y11 +803 \(as the book has it\) +2\.0\d+ L \(.* … .*\)/);
    expect(out).toMatch(/rate +\d+(\.\d)?\/h \(.* … .*\)/);
    expect(out).toContain('valve coefficient with the product');
    expect(out).toContain('by the bottles that were measured');
    expect(out).toContain('No real move has been scored yet');
    expect(out).not.toMatch(/NaN|undefined|Infinity|\[object|fill\.[a-z]|slip\.[a-z]/);
  });

  it('gives the same as JSON: intervals of mean volume, one bottle and fill time by lane', async () => {
    const { prediction, estimate, presets, unanswered } = await documented(['B', 'T']);
    expect(unanswered).toEqual([]);
    expect(prediction?.lanes.map(({ lane, preset }) => [lane, preset])).toEqual([
      ['-Y11', 803],
      ['-Y12', 796],
      ['-Y13', 807],
      ['-Y14', 799],
    ]);
    for (const { volume, bottle, time } of prediction!.lanes) {
      expect([volume.unit, bottle.unit, time.unit]).toEqual(['m3', 'm3', 's']);
      for (const one of [volume, bottle, time]) {
        expect(one.confidence).toBe(0.9);
        expect(one.lower).toBeLessThan(one.value);
        expect(one.upper).toBeGreaterThan(one.value);
      }
      expect(bottle.upper - bottle.lower).toBeGreaterThan(volume.upper - volume.lower);
    }
    // the lanes behind the example have 0.6, -0.7, 0.2 and -0.3 % more pulses than the book says
    const truth = [402e3 * 1.006, 399e3 * 0.993, 404e3 * 1.002, 401e3 * 0.997];
    estimate!.lanes.forEach(({ pulses }, i) => {
      expect(Math.abs(pulses.value - truth[i]!)).toBeLessThan(4 * pulses.deviation);
    });
    expect(presets).toMatchObject({ goal: 'level', share: 0.995, capacity: { from: 'assumed' } });
  });

  it('takes the count, the confidence and the direction of the call', async () => {
    const asked = await documented(['B', 'T', '--preset', '700', '--confidence', '50 %']);
    expect(
      asked.prediction!.lanes.every(({ preset, presetFrom }) => preset === 700 && presetFrom === 'call'),
    ).toBe(true);
    expect(asked.prediction!.lanes[0]!.volume.confidence).toBe(0.5);
    const back = await documented(['B', 'T', '--from', 'LARKMOOR', '--to', 'OXBOW']);
    expect([back.from, back.to, back.trials.here]).toEqual(['LARKMOOR', 'OXBOW', 0]);
    expect(back.unanswered.map(({ code }) => code)).toEqual(['noTrials']);
  });

  it('ends with 1 where a count that is set there leaves too many bottles short', async () => {
    expect((await call(['B', 'T', '--preset', '700'])).status).toBe(1);
    expect((await call(['B', 'T', '--preset', '900'])).status).toBe(0);
  });

  it('with a tolerance bound gives away more than for one bottle drawn by chance', async () => {
    const [one, all] = [await documented(['B', 'T']), await documented(['B', 'T', '--tolerance'])];
    const sum = ({ presets }: FillDocument) =>
      presets!.lanes.reduce((total, { preset }) => total + preset, 0);
    expect(sum(all)).toBeGreaterThanOrEqual(sum(one));
  });

  it('puts what was measured in the place of an allowance, or allows for nothing', async () => {
    const before = (await documented(['B', 'T'])).prediction!;
    const lineOf = ({ allowances }: typeof before, code: string) =>
      allowances.find((one) => one.code === code);
    expect(lineOf(before, 'kv-product')?.source).toBe('common practice');
    const typed = ['B', 'T', '--measured', 'kv-product=-2 % ± 1 %; meter-flow=0 %'];
    const measured = (await documented(typed)).prediction!;
    expect(lineOf(measured, 'kv-product')).toMatchObject({ source: 'measured', shift: -0.02 });
    // 1 % that holds the truth with 95 %
    expect(lineOf(measured, 'kv-product')!.deviation).toBeCloseTo(0.01 / 1.959964, 6);
    expect(lineOf(measured, 'meter-flow')).toBeUndefined();
    const none = await call(['B', 'T', '--no-allowances']);
    expect(none.out).toContain('The same liquid and the same air are taken on both floors.');
    const narrow = (await documented(['B', 'T', '--no-allowances'])).prediction!;
    const width = ({ lanes }: typeof before) => lanes[0]!.volume.upper - lanes[0]!.volume.lower;
    expect(width(narrow)).toBeLessThan(width(before));
  });

  it('for a volume asks for the label, or takes it from the call', async () => {
    const byBook = await documented(['B', 'T', '--goal', 'volume', '--rule', 'EU average system']);
    expect(byBook.presets!.label! * 1e6).toBeCloseTo(2000, 9);
    const none = await documented(['B', 'T', '--goal', 'volume', '--rule', 'EU average system'], {
      book: unlabelled,
    });
    expect(none.presets).toMatchObject({ goal: 'volume', lanes: [], none: { code: 'labelMissing' } });
    const two = ['B', 'T', '--goal', 'volume', '--label', '2 L'];
    const eu = await documented([...two, '--rule', 'EU average system']);
    // Directive 76/211/EEC, annex I: 1.5 % of two litres
    expect(eu.presets!.deficiency! * 1e6).toBeCloseTo(30, 9);
    const handbook = [...two, '--rule', 'NIST Handbook 133'];
    expect((await documented(handbook)).presets?.none?.code).toBe('deficiencyMissing');
    expect((await documented([...handbook, '--mav', '20 mL'])).presets!.deficiency! * 1e6).toBeCloseTo(20, 9);
  });

  it('questions a slip, says what was likely meant, and uses the value as it stands', async () => {
    const trials = example('trials.csv').replace(
      /^(OXBOW,B2,-Y13,\d+,[\d.]+,)2\.(\d)(\d)(\d)/m,
      '$12.$3$2$4',
    );
    expect(trials).not.toBe(example('trials.csv'));
    const { out } = await call(['B', 'T'], { trials });
    expect(out).toMatch(
      /1 bottle is questioned.*\n +24: Gross 2\.\d+ kg: are two digits turned round\? 2\.9\d\d? kg would fit/,
    );
    const { slips, trials: taken } = await documented(['B', 'T'], { trials });
    expect(slips[0]).toMatchObject({
      code: 'digitsTurned',
      field: 'gross',
      compared: { of: 'net' },
    });
    expect(taken.here).toBe(32);
  });

  it('takes a row of a sheet wholly or not at all, and says why', async () => {
    const trials = `${example('trials.csv')}MOON,B5,-Y19,8o3,11,2.9,,,,,,,,,\r\n`;
    const { out, status } = await call(['B', 'T'], { trials });
    expect(status).toBe(2);
    expect(out).toContain('1 row was not understood and is left out; the rest stands.');
    expect(out).toContain('row 34: MOON B5 -Y19 8o3');
    expect(out).toContain('"8o3" is not a whole number from 0.');
    expect(out).toContain('The book has no floor MOON. It has: OXBOW, LARKMOOR.');
    const { rows } = await documented(['B', 'T'], { trials });
    expect(rows?.notUnderstood[0]?.problems.map(({ code }) => code)).toEqual([
      'FILL_NOT_A_COUNT',
      'FILL_FLOOR_UNKNOWN',
      'FILL_LANE_UNKNOWN',
    ]);
    expect(rows?.taken).toHaveLength(32);
  });

  it('reads a list by hand and exported records, as they were last corrected', async () => {
    const list = [
      { floor: 'OXBOW', lane: '-Y11', preset: 600, volume: '1.505 L ± 3 mL', time: '11 s', overflow: 'none' },
      {
        floor: 'OXBOW',
        lane: '-Y11',
        preset: 800,
        volume: '2.003 L ± 3 mL',
        time: '14.6 s',
        overflow: 'none',
      },
    ];
    expect((await documented(['B', 'T'], { trials: JSON.stringify(list) })).trials.here).toBe(2);
    let chain = startChain('flagon-line', 'tablet');
    const records = ['1.505 L', '1.055 L'].map((volume, i) => {
      const done = appendRecord(chain, {
        id: String(i),
        revision: 1,
        kind: 'trial',
        version: 2,
        deviceTime: '2027-03-08T09:10:00Z',
        body: { floor: 'OXBOW', lane: '-Y11', preset: 600, by: 'the engineer', volume },
        ...(i === 1 ? { supersedes: '0' } : {}),
      });
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      chain = done.value.chain;
      return done.value.record;
    });
    const { trials } = await documented(['B', 'T'], { trials: exportRecords('flagon-line', records) });
    expect(trials.volumes.map(({ volume }) => volume)).toEqual([0.001055]);
  });

  it('takes an allowance that stands measured among the records, and what is typed before it', async () => {
    const typed = (of: string, value: string, from = 'OXBOW') => ({
      kind: 'allowance',
      version: 1,
      body: { from, floor: from === 'OXBOW' ? 'LARKMOOR' : 'OXBOW', of, value, by: 'the engineer' },
    });
    const trial = { floor: 'OXBOW', lane: '-Y11', preset: 800, volume: '2.003 L', time: '14.6 s', by: 'E' };
    let chain = startChain('flagon-line', 'tablet');
    const records = [
      { kind: 'trial', version: 2, body: trial },
      { kind: 'trial', version: 2, body: { ...trial, preset: 600, volume: '1.51 L', time: '11 s' } },
      typed('kv-product', '-3 % ± 1 %'),
      // the way back is another matter
      typed('kv-product', '9 %', 'LARKMOOR'),
    ].map((one, i) => {
      const at = { id: `r${i}`, revision: 1, deviceTime: '2027-03-08T09:10:00Z' };
      const done = appendRecord(chain, { ...one, ...at });
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      chain = done.value.chain;
      return done.value.record;
    });
    const trials = exportRecords('flagon-line', records);
    const kvOf = async (...more: readonly string[]) =>
      (await documented(['B', 'T', ...more], { trials })).prediction!.allowances.find(
        ({ code }) => code === 'kv-product',
      );
    expect(await kvOf()).toMatchObject({ source: 'measured', shift: -0.03 });
    expect(await kvOf('--measured', 'kv-product=-2 %')).toMatchObject({ source: 'measured', shift: -0.02 });
  });

  it('explains what few or wrong trials can’t tell, with wide intervals or a refusal', async () => {
    const same = {
      floor: 'OXBOW',
      lane: '-Y11',
      preset: 800,
      volume: '2.003 L',
      time: '14.6 s',
      overflow: 'none',
    };
    const two = await documented(['B', 'T'], { trials: JSON.stringify([same, same]) });
    const codes = two.estimate!.doubts.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['one-preset', 'few-bottles', 'no-trials']));
    const full = await documented(['B', 'T']);
    const width = ({ prediction }: FillDocument) =>
      prediction!.lanes[0]!.volume.upper - prediction!.lanes[0]!.volume.lower;
    expect(width(two)).toBeGreaterThan(width(full));
    const heavy = JSON.stringify([
      { floor: 'OXBOW', lane: '-Y11', preset: 800, gross: '0 kg', tare: '0.9 kg' },
    ]);
    const refused = await call(['B', 'T'], { trials: heavy });
    expect(refused.status).toBe(2);
    expect(refused.out).toContain('leaves nothing');
    const one = JSON.stringify([{ ...same, preset: 1 }]);
    const short = await call(['B', 'T'], { trials: one });
    expect(short.status).toBe(2);
    expect(short.out).toContain('No bottle tells of a running lane.');
  });

  it('names what a silent floor would have to say', async () => {
    const book = changed({ path: '/floors/1/supply', op: 'remove' });
    const { out, status } = await call(['B', 'T'], { book });
    expect(status).toBe(0);
    expect(out).toContain('LARKMOOR: not known enough to work out its flows. Wanted: Larkmoor, source');
  });

  it.each([
    [['B'], 'fill wants BOOK.json TRIALS after it.'],
    [['B', 'T', '--confidence', '2'], 'The option --confidence was given 2; it takes 0.5 to 0.999.'],
    [['B', 'T', '--preset', '-1'], 'The option --preset was given -1; it takes a whole number from 1.'],
    [
      ['B', 'T', '--measured', 'weather=3 %'],
      'it takes meter-flow, meter-viscosity, valve-air, kv-product, run-column',
    ],
    [['B', 'T', '--mav', '3 kg'], 'The option --mav was given 3 kg; it takes a volume such as 15 mL.'],
    [['B', 'T', '--to', 'MOON'], 'The book has no floor MOON. It has: OXBOW, LARKMOOR.'],
    [['-', '-'], 'Standard input can be read once only'],
    [['B', 'B'], 'This holds nothing of what was asked for. Expected: a JSON list of trials'],
    [['B', '--lot', 'S', '--rule', 'OIML R 87'], 'No row of headings was found.'],
  ])('%j is answered in a sentence and status 2', async (argv, sentence) => {
    const { status, err } = await call(argv);
    expect(status).toBe(2);
    expect(err).toContain(sentence);
  });
});

describe('any book of the examples', () => {
  const names = [
    'main',
    'gravity',
    'pumped-regulator',
    'pumped-vessel',
    'reading',
    'two-speeds',
    'eight-unequal-lanes',
    'bottom-up',
    'blank',
  ];
  it.each(names)('%s is answered, with intervals or with what is missing', async (name) => {
    const read = readBook(readFileSync(join(root, 'examples', `${name}.json`), 'utf8'));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const book = read.value;
    const floors = book.floors ?? [];
    const from = floors.find(({ role }) => role === 'built on') ?? floors[0];
    const fill = book.line?.stations?.find(({ kind }) => kind === 'fill');
    const lanes = fill?.kind === 'fill' ? (fill.lanes ?? []) : [];
    const format = book.line?.formats?.[0]?.tag;
    const trials = lanes.flatMap(({ tag, pulses = '400 /L' }) => {
      const perLitre =
        Number(/[\d.]+/.exec(String(pulses))?.[0]) / (String(pulses).includes('gal') ? 3.785 : 1);
      return [0.7, 1].flatMap((share) =>
        [0, 1, 2].map((repeat) => ({
          floor: from?.tag,
          lane: tag,
          preset: Math.round(share * perLitre),
          row: `${share}.${repeat}`,
          volume: `${(share * 1000 + 8 + repeat).toFixed(1)} mL ± 3 mL`,
          time: `${(share * 9 + 0.05 * repeat).toFixed(2)} s ± 0.2 s`,
          overflow: 'none',
          ...(format === undefined ? {} : { format }),
        })),
      );
    });
    const { out, err, status } = await call(['B', 'T', '--json'], { book, trials: JSON.stringify(trials) });
    if (from === undefined) {
      expect([status, err]).toEqual([2, '']);
      return;
    }
    const answer = fillSchema.parse(JSON.parse(out));
    expect(err).toBe('');
    expect(answer.prediction !== undefined || answer.unanswered.length > 0).toBe(true);
    for (const { volume, time } of answer.prediction?.lanes ?? []) {
      expect(volume.lower).toBeLessThanOrEqual(volume.upper);
      expect(time.lower).toBeGreaterThan(0);
    }
    const told = await call(['B', 'T', '--units', 'us'], { book, trials: JSON.stringify(trials) });
    expect(told.out).not.toMatch(/NaN|undefined|Infinity|\[object|fill\.[a-z]/);
  });
});

describe('measured bottles', () => {
  it('say what they hold, how they differ and what the machine must take, before anything is filled', async () => {
    const { out, err, status } = await call(['B', '--samples', 'S']);
    expect([status, err]).toEqual([0, '']);
    expect(out).toContain('12 measured bottles of the customer');
    expect(out).toMatch(/contents to the level +12 +2\.01\d? L +\d\.\d+ mL/);
    // half a millimetre of radius: pi/4 of 21 mm squared is 0.346 mL a millimetre
    expect(out).toMatch(/one millimetre of level is 0\.3[45]\d? mL/);
    expect(out).toContain('No trial was made on OXBOW.');
    expect(out).not.toMatch(/NaN|undefined|fill\.[a-z]/);
    const { samples } = await documented(['B', '--samples', 'S']);
    const level = samples!.quantities.find(({ of }) => of === 'level')!;
    expect(level.unit).toBe('m3');
    expect(level.low).toBeLessThan(level.mean);
    expect(samples!.levelAgainstVolume?.verdict).toBe('unknown');
    expect(samples!.accepts.map(({ part }) => part)).toContain('lift');
  });

  it('are held against the spread that the agreed rule leaves', async () => {
    const book = changed(
      { path: '/agreement/contents', value: { rule: 'EU average system' } },
      { path: '/line/formats/0/label', value: '2 L' },
    );
    const { samples } = await documented(['B', '--samples', 'S'], { book });
    // 1.5 % of two litres over 1.96
    expect(samples!.levelAgainstVolume!.wanted! * 1e6).toBeCloseTo(30 / 1.959964, 4);
    expect(samples!.levelAgainstVolume?.verdict).toBe('both');
  });
});

describe('a sheet of trials', () => {
  it('is written for the lanes of the book, and read back when it is filled in', async () => {
    const { written, out, status } = await call(['B', '--sheet', 'empty.xlsx', '--json']);
    expect(status).toBe(0);
    // four lanes at two counts, three bottles each
    expect(fillSheetSchema.parse(JSON.parse(out)).rows).toBe(24);
    const tabs = readTable(written.get('empty.xlsx')!);
    if (!tabs.ok) throw new Error(JSON.stringify(tabs.problems));
    expect(tabs.value[0]!.rows.some((row) => row.includes('Gross (kg)'))).toBe(true);
    const kept = await call(['B', 'T', '--sheet', 'kept.csv', '--units', 'us']);
    const again = await documented(['B', 'T'], {
      trials: new TextDecoder().decode(kept.written.get('kept.csv')),
    });
    const lot = await call(['B', '--lot', 'L', '--sheet', 'lot.csv']);
    const judged = ['B', '--lot', 'L', '--label', '2 L', '--rule', 'EU average system'];
    const lotAgain = await call(judged, { lot: new TextDecoder().decode(lot.written.get('lot.csv')) });
    expect(lotAgain.out).toBe((await call(judged)).out);
    const before = await documented(['B', 'T']);
    expect(again.trials.volumes).toEqual(before.trials.volumes);
  });
});

describe('a lot', () => {
  const judge = ['B', '--lot', 'L', '--label', '2 L'];
  const parsed = async (argv: readonly string[], lot?: string) =>
    lotSchema.parse(JSON.parse((await call([...argv, '--json'], lot === undefined ? {} : { lot })).out));

  it('is judged by the rule of the call with the whole worksheet, at the temperature of the rule', async () => {
    const { out, status, err } = await call([...judge, '--rule', 'EU average system']);
    expect([status, err]).toEqual([0, '']);
    expect(out).toContain('50 bottles of FLAGON-2L on LARKMOOR, by EU average system: accepted');
    expect(out).toContain('contents/eu-lot');
    const [lot] = (await parsed([...judge, '--rule', 'EU average system'])).lots;
    expect(lot).toMatchObject({ verdict: 'accept', packages: 50, size: 3000 });
    const step = lot!.worksheet[lot!.judgedBy!]!;
    expect(step.sheet).toBe('contents/eu-lot');
    // net mass through the buoyancy of the reference file, F1, at 1.043 kg/L: the juice of the book at 20 degC
    const nets = [...example('lot.csv').matchAll(/^\d+,-Y1\d,([\d.]+),([\d.]+)/gm)].map(
      ([, gross, tare]) => Number(gross) - Number(tare),
    );
    const mean = nets.reduce((sum, net) => sum + net, 0) / nets.length;
    const volume = (mean * (1 - 1.2 / 8000)) / (1043 - 1.2);
    expect((step.outputs.mean as { value: number }).value * 1e6).toBeCloseTo(volume * 1e6, 0);
  });

  it('that is short is rejected and ends with 1', async () => {
    const light = example('lot.csv').replace(
      /^(\d+,-Y1\d,)(\d\.\d{3})/gm,
      (_, head: string, gross: string) => {
        return `${head}${(Number(gross) - 0.04).toFixed(3)}`;
      },
    );
    const [lot] = (await parsed([...judge, '--rule', 'EU average system'], light)).lots;
    expect(lot?.verdict).toBe('reject');
    expect((await call([...judge, '--rule', 'EU average system'], { lot: light })).status).toBe(1);
  });

  it('is a run, too: what each lane can do, and from which bottle on one has moved', async () => {
    const eu = [...judge, '--rule', 'EU average system'];
    const [lot] = (await parsed(eu)).lots;
    const { series, worksheet, lanesDiffer } = lot!.control!;
    expect(series.map(({ lane, drift }) => [lane, drift])).toEqual(
      ['-Y11', '-Y12', '-Y13', '-Y14'].map((lane) => [lane, 'none']),
    );
    expect(lanesDiffer).toBeTypeOf('boolean');
    // mean over the label less 1.5 % (Directive 76/211/EEC, Annex I 2.4), in three standard deviations
    const volumes = [...example('lot.csv').matchAll(/^\d+,-Y11,([\d.]+),([\d.]+)/gm)].map(
      ([, gross, tare]) => (((Number(gross) - Number(tare)) * (1 - 1.2 / 8000)) / (1043 - 1.2)) * 1e3,
    );
    const mean = volumes.reduce((sum, one) => sum + one, 0) / volumes.length;
    const squares = volumes.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    const capability = (mean - 2 + 0.03) / (3 * Math.sqrt(squares / (volumes.length - 1)));
    const step = worksheet[series[0]!.capability!]!;
    expect(step.sheet).toBe('contents/capability-lower');
    const told = (step.outputs.capability as { value: number }).value;
    expect(told / capability).toBeCloseTo(1, 2);
    // from its seventh bottle on a lane puts in 40 g more
    let seen = 0;
    const moved = example('lot.csv').replace(
      /^(\d+,-Y12,)(\d\.\d{3})/gm,
      (_, head: string, gross: string) => {
        seen++;
        return `${head}${(Number(gross) + (seen > 6 ? 0.04 : 0)).toFixed(3)}`;
      },
    );
    const [drifted] = (await parsed(eu, moved)).lots;
    expect(drifted!.control!.series.map(({ drift }) => drift !== 'none')).toEqual([
      false,
      true,
      false,
      false,
    ]);
    expect((await call(eu, { lot: moved })).out).toMatch(/-Y12, 1\d bottles: (more|less) from bottle \d/);
  });

  it('asks for what the rule wants, and for a rule where none was agreed', async () => {
    const [handbook] = (await parsed([...judge, '--rule', 'NIST Handbook 133'])).lots;
    expect(handbook!.missing.map(({ code }) => code)).toEqual([
      'LOT_VARIATION_MISSING',
      'LOT_EDITION_MISSING',
    ]);
    const typed = [...judge, '--rule', 'NIST Handbook 133', '--mav', '30 mL', '--edition', '2026'];
    expect((await parsed(typed)).lots[0]).toMatchObject({ verdict: 'accept', edition: '2026' });
    const oiml = ['B', '--lot', 'L', '--rule', 'OIML R 87'];
    const { out } = await call([...oiml, '--json'], { book: unlabelled });
    expect(lotSchema.parse(JSON.parse(out)).lots[0]!.missing.map(({ code }) => code)).toEqual([
      'LOT_LABEL_MISSING',
    ]);
    const ruleless = await call(judge);
    expect(ruleless.status).toBe(1);
    expect(ruleless.out).toContain('Name one with --rule');
  });
});
