import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import demoText from '../../../book/demo/flagon-line.json?raw';
import { readBook } from '../../../book/index.ts';
import { readTable, type Table, writeCsv, writeXlsx } from '../../../table/index.ts';
import { makeCatalogue } from '../../../text/index.ts';
import type { WeighedLot, WeighedTrial } from '../weighed.ts';
import {
  fillSheetWords,
  lotTable,
  readLotTable,
  readSampleTable,
  readTrialTable,
  sampleTable,
  trialTable,
} from './index.ts';

const demo = readBook(demoText);
if (!demo.ok) throw new Error('the demo book does not read');
const book = demo.value;
const words = makeCatalogue([fillSheetWords]);
const bytes = (text: string) => new TextEncoder().encode(text);
const rowsOf = (file: Uint8Array) => {
  const tabs = readTable(file);
  if (!tabs.ok) throw new Error(JSON.stringify(tabs.problems));
  return tabs.value[0]!.rows;
};
const trialsOf = (csv: string, more: object = {}) =>
  readTrialTable(rowsOf(bytes(csv)), book, { words, floor: 'OXBOW', ...more });
const files = (table: Table): readonly Uint8Array[] => [
  bytes(writeCsv(table)),
  bytes(writeCsv(table, ';')),
  writeXlsx(table),
];

describe('a sheet of trials', () => {
  const mass = fc.integer({ min: 2000, max: 3999 }).map((g) => `${(g / 1000).toFixed(3)} kg`);
  const some = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
  const trial = fc
    .record({
      floor: fc.constantFrom('OXBOW', 'LARKMOOR'),
      format: fc.constant('FLAGON-2L'),
      lane: fc.constantFrom('-Y11', '-Y12', '-Y13', '-Y14'),
      preset: fc.integer({ min: 1, max: 2000 }),
      gross: mass,
      tare: some(fc.constantFrom('0.961 kg', '2.12 lb')),
      time: some(fc.constantFrom('11.6 s', '12,1 s', '0.2 min')),
      temperature: some(fc.constantFrom('12 degC', '54 degF')),
      pressure: some(fc.constantFrom('0.12 bar(g)', '2 psig')),
      overflow: some(fc.constantFrom('none' as const, 'trace' as const, 'stream' as const)),
      lanesOpen: some(fc.integer({ min: 1, max: 4 })),
      throttled: some(fc.boolean()),
      afterStop: some(fc.boolean()),
      row: some(fc.constantFrom('1', '2')),
      resolution: some(fc.constant('1 g')),
      remark: some(fc.constantFrom('=1+1', 'wet, "cold"; twice', '-')),
      at: some(fc.constant('2027-03-08T09:10:00+01:00')),
    })
    .map(
      (one) =>
        Object.fromEntries(Object.entries(one).filter(([, v]) => v !== undefined)) as unknown as WeighedTrial,
    );

  it('that the tool wrote is read back as it was, as text and as a spreadsheet, in either system', () => {
    fc.assert(
      fc.property(
        fc.array(trial, { minLength: 1, maxLength: 12 }),
        fc.constantFrom('metric', 'us'),
        (trials, system) => {
          for (const file of files(trialTable(trials, { words, system: system as 'metric' | 'us' }))) {
            const read = readTrialTable(rowsOf(file), book, { words });
            expect([read.notUnderstood, read.unknown, read.problems]).toEqual([[], [], []]);
            expect(read.taken.map(({ value }) => value)).toEqual(trials);
          }
        },
      ),
      { numRuns: 12 },
    );
  });

  it('takes headings in any order, with the unit in the heading or in the cell', () => {
    const { taken, notUnderstood, unknown } = trialsOf(
      'Tare [g],lane,Gross (kg),pulses,fill time / s,Manifold pressure in psi,colour\n' +
        '961,-Y11,2.971,803,11.6,1.9,red\n' +
        ',y12,6.54 lb,796,,,\n' +
        '0.96 kg,3,2.972,807,11.2 s,,\n',
    );
    const where = { floor: 'OXBOW', format: 'FLAGON-2L' };
    expect(notUnderstood).toEqual([]);
    expect(unknown).toEqual(['colour']);
    expect(taken.map(({ row, value, notes }) => [row, value, notes])).toEqual([
      [
        2,
        {
          ...where,
          lane: '-Y11',
          preset: 803,
          gross: '2.971 kg',
          tare: '961 g',
          time: '11.6 s',
          pressure: '1.9 psi',
        },
        [],
      ],
      [3, { ...where, lane: '-Y12', preset: 796, gross: '6.54 lb' }, []],
      [
        4,
        { ...where, lane: '-Y13', preset: 807, gross: '2.972 kg', tare: '0.96 kg', time: '11.2 s' },
        ['laneByNumber'],
      ],
    ]);
  });

  it('takes a row wholly or not at all, and says everything that is wrong with it', () => {
    const { taken, notUnderstood, empty } = trialsOf(
      'floor;lane;count;gross (kg);time;overflow\n' +
        'OXBOW;-Y11;803;2,971;11,6 s;trace\n' +
        'MOON;-Y19;8o3;two;11.6;much\n' +
        ';-Y12;;2.97;11 s;\n' +
        ';-Y13;807;;;\n' +
        ';-Y14;799;1,050;;\n',
    );
    expect(taken).toEqual([]);
    expect(empty).toEqual([5]);
    expect(
      notUnderstood.map(({ row, problems }) => [row, problems.map(({ code, path }) => `${code} ${path}`)]),
    ).toEqual([
      // a comma before three digits parts thousands to one reader and decimals to another
      [2, ['QUANTITY_AMBIGUOUS_NUMBER gross']],
      [
        3,
        [
          'FILL_NOT_A_COUNT preset',
          'QUANTITY_UNREADABLE gross',
          'QUANTITY_UNIT_MISSING time',
          'FILL_NOT_A_CHOICE overflow',
          'FILL_FLOOR_UNKNOWN floor',
          'FILL_LANE_UNKNOWN lane',
        ],
      ],
      [4, ['FILL_PRESET_MISSING preset']],
      [6, ['QUANTITY_AMBIGUOUS_NUMBER gross']],
    ]);
    // where the typist's language has the comma before decimals it can be told, and is kept so that all can
    const german = trialsOf('lane;count;gross (kg)\n-Y11;803;2,971\n', { locale: 'de' });
    expect(german.taken.map(({ value: { gross } }) => gross)).toEqual(['2.971 kg']);
  });

  it('without headings has one fault', () => {
    expect(trialsOf('-Y11,803,2.971 kg\n').problems.map(({ code }) => code)).toEqual(['FILL_NO_HEADINGS']);
  });

  it('of any text ends in a report', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('lane', 'count', 'gross (kg)', '-Y11', '803', '2.97'));
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 8 }), (rows) => {
        const read = readTrialTable(rows, book, { words, floor: 'OXBOW' });
        for (const { value } of read.taken) expect(value.lane).toMatch(/^-Y1[1-4]$/);
      }),
    );
  });
});

describe('a sheet of samples', () => {
  const samples = [
    {
      format: 'FLAGON-2L',
      bottle: '1',
      mass: '960 g',
      brimfulMass: '3.05 kg',
      levelMass: '2.97 kg',
      mould: 'A',
    },
    { format: 'FLAGON-2L', bottle: '2', mass: '33.9 oz', height: '305.2 mm', temperature: '20 degC' },
  ];

  it('that the tool wrote is read back as it was', () => {
    for (const file of files(sampleTable(samples, { words }))) {
      const read = readSampleTable(rowsOf(file), book, { words });
      expect(read.taken.map(({ value }) => value)).toEqual(samples);
    }
  });
  it('takes a bottle without a number by its row, and leaves one that was not measured', () => {
    const read = readSampleTable(rowsOf(bytes('bottle,empty (g),height (in)\n,960,12\n7,,\n')), book, {
      words,
    });
    expect(read.taken.map(({ value: { bottle, height } }) => [bottle, height])).toEqual([['2', '12 in']]);
    expect(read.empty).toEqual([3]);
  });
});

describe('a sheet of a lot', () => {
  const lot: WeighedLot = {
    floor: 'LARKMOOR',
    format: 'FLAGON-2L',
    size: 3000,
    temperature: '12 degC',
    resolution: '1 g',
    packages: [
      { gross: '3.06 kg', tare: '0.96 kg', lane: '-Y11', bottle: '1' },
      { gross: '3.07 kg', lane: '-Y12', at: '2027-04-20T10:00:00Z' },
    ],
  };

  it('that the tool wrote is read back as it was', () => {
    for (const file of files(lotTable(lot, { words }))) {
      const read = readLotTable(rowsOf(file), book, { words });
      expect(read.lot).toEqual(lot);
    }
  });
  it('has one value for what holds for the whole lot', () => {
    const csv = 'gross (kg),lot size,floor\n3.06,3000,LARKMOOR\n3.07,,\n3.05,2500,\n';
    const read = readLotTable(rowsOf(bytes(csv)), book, { words });
    expect(read.lot?.size).toBe(3000);
    expect(read.lot?.packages).toHaveLength(2);
    expect(read.notUnderstood.map(({ row, problems }) => [row, problems[0]?.code])).toEqual([
      [4, 'FILL_LOT_DIFFERS'],
    ]);
  });
});
