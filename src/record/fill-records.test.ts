import { describe, expect, it } from 'vitest';
import { allowancesOf } from './allowances.ts';
import { appendRecord, type Draft, startChain } from './append-record.ts';
import type { Envelope } from './envelope.ts';
import { lotsOf } from './lots.ts';
import { readAllowances, readLots, readSamples, readTrials } from './read-fill-records.ts';
import { exportRecords } from './record-file.ts';
import { samplesOf } from './samples.ts';
import { trialsOf } from './trials.ts';

const BOOK = 'oxbow-1';
const at = '2027-03-08T09:10:00Z';
const trial = { floor: 'OXBOW', lane: '-Y11', preset: 803, by: 'the engineer', gross: '2.971 kg' };
const sample = { format: 'FLAGON-2L', bottle: '7', by: 'the engineer', mass: '960 g' };
const lot = { floor: 'LARKMOOR', format: 'FLAGON-2L', by: 'the engineer', packages: [{ gross: '3.07 kg' }] };
const allowance = {
  from: 'OXBOW',
  floor: 'LARKMOOR',
  of: 'kv-product',
  value: '-4 % ± 1 %',
  by: 'the engineer',
  how: 'three timed fills with juice',
};
const draft = (id: string, kind: string, version: number, body: object, supersedes?: string): Draft => ({
  id,
  revision: 1,
  kind,
  version,
  deviceTime: at,
  body: body as Draft['body'],
  ...(supersedes === undefined ? {} : { supersedes }),
});
const write = (...drafts: readonly Draft[]): readonly Envelope[] => {
  let chain = startChain(BOOK, 'tablet');
  return drafts.map((one) => {
    const done = appendRecord(chain, one);
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    chain = done.value.chain;
    return done.value.record;
  });
};

describe('trials, samples and lots out of records', () => {
  const records = write(
    draft('a', 'trial', 2, trial),
    draft('b', 'trial', 2, { ...trial, gross: '2.791 kg' }),
    draft('c', 'trial', 2, { ...trial, gross: '2.971 kg' }, 'b'),
    draft('d', 'trial', 2, trial),
    draft('n', 'note', 1, { text: 'bottle was wet', by: 'the engineer' }, 'd'),
    draft('s', 'sample', 1, sample),
    draft('t', 'sample', 1, { ...sample, mass: '961 g' }, 's'),
    draft('l', 'lot', 1, lot),
    draft('e', 'allowance', 1, allowance),
    draft('f', 'allowance', 1, { ...allowance, value: '-3 % ± 1 %' }, 'e'),
    draft('g', 'allowance', 1, { ...allowance, of: 'valve-air' }),
    draft('h', 'note', 1, { text: 'wrong gauge', by: 'the engineer' }, 'g'),
  );

  it('count as last corrected, in the order written, and not where a note took them back', () => {
    expect(trialsOf(records)).toEqual([
      { ...trial, id: 'a', at },
      { ...trial, id: 'c', at },
    ]);
    expect(samplesOf(records)).toEqual([{ ...sample, mass: '961 g', id: 't', at }]);
    expect(lotsOf(records)).toEqual([{ ...lot, id: 'l', at }]);
    expect(allowancesOf(records)).toEqual([{ ...allowance, value: '-3 % ± 1 %', id: 'f', at }]);
  });

  it('of the first version give one trial a lane, a net mass as gross over no tare', () => {
    const old = write(
      draft('o', 'trial', 1, {
        floor: 'OXBOW',
        by: 'the engineer',
        lanes: [
          { lane: '-Y11', pulses: 803, mass: '2.01 kg', time: '12.1 s', overflowed: true },
          { lane: '-Y12', pulses: 796, volume: '2.00 L', overflowed: false },
        ],
      }),
    );
    const shared = { floor: 'OXBOW', by: 'the engineer', at, row: 'o' };
    expect(trialsOf(old)).toEqual([
      {
        ...shared,
        id: 'o/0',
        lane: '-Y11',
        preset: 803,
        gross: '2.01 kg',
        tare: '0 g',
        time: '12.1 s',
        overflow: 'trace',
      },
      { ...shared, id: 'o/1', lane: '-Y12', preset: 796, volume: '2.00 L', overflow: 'none' },
    ]);
  });

  it('come out of a file in any of its three forms', () => {
    const text = exportRecords(BOOK, records);
    const count = (read: { ok: boolean; value?: readonly unknown[] }) => read.ok && read.value?.length;
    expect(count(readTrials(text))).toBe(2);
    expect(count(readTrials(JSON.stringify(records)))).toBe(2);
    expect(count(readSamples(text))).toBe(1);
    expect(count(readLots(text))).toBe(1);
    expect(count(readAllowances(text))).toBe(1);
    const { by: _, ...byNobody } = trial;
    expect(readTrials(JSON.stringify([byNobody, { ...trial, at }]))).toEqual({
      ok: true,
      value: [
        { ...byNobody, id: '1' },
        { ...trial, at, id: '2' },
      ],
    });
  });

  it('are refused with every place where they are wrong', () => {
    const wrong = readTrials(
      JSON.stringify([
        { ...trial, preset: -3 },
        { ...trial, grose: '2 kg' },
        { lane: '-Y11', preset: 800 },
      ]),
    );
    expect(wrong.ok ? [] : wrong.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'RECORD_BODY /0/preset',
      'RECORD_BODY /1/grose',
      'RECORD_BODY /2/floor',
    ]);
    const share = readAllowances(JSON.stringify([allowance, { ...allowance, value: '4 L' }]));
    expect(share.ok ? [] : share.problems.map(({ path }) => path)).toEqual(['/1/value']);
    for (const read of [readTrials, readSamples, readLots, readAllowances]) {
      const none = read('{"kettle": 1}');
      expect(none.ok ? [] : none.problems.map(({ code }) => code)).toEqual(['RECORD_LIST_UNREADABLE']);
    }
  });
});
