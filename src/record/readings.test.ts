import { describe, expect, it } from 'vitest';
import { appendRecord, type Draft, startChain } from './append-record.ts';
import type { Envelope } from './envelope.ts';
import { readReadings } from './read-readings.ts';
import { readingsOf } from './readings.ts';
import { exportRecords } from './record-file.ts';

const BOOK = 'oxbow-1';
const body = { floor: 'LARKMOOR', of: 'air/compressor/cutIn', value: '71 psi', by: 'the engineer' };
const draft = (id: string, rest: Partial<Draft> = {}): Draft => ({
  id,
  revision: 1,
  kind: 'reading',
  version: 2,
  deviceTime: '2027-04-19T09:10:00Z',
  body,
  ...rest,
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
const told = (text: string): readonly string[] => {
  const read = readReadings(text);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`);
};

describe('readings out of records', () => {
  it('have the moment of their record, and pass over every other kind', () => {
    const records = write(
      draft('a', { body: { ...body, users: 2, instrument: 'gauge, class 0.6' } }),
      draft('n', { kind: 'note', version: 1, body: { text: 'gate shut', by: 'rigger' } }),
    );
    expect(readingsOf(records)).toEqual([
      { ...body, id: 'a', at: '2027-04-19T09:10:00Z', users: 2, instrument: 'gauge, class 0.6' },
    ]);
  });
  it('count as they were last corrected, whatever the order, and not at all where a note took them back', () => {
    const records = write(
      draft('a'),
      draft('b', { supersedes: 'a', body: { ...body, value: '77 psi' } }),
      draft('c', { supersedes: 'b', body: { ...body, value: '78 psi' } }),
      draft('d', { body: { ...body, of: 'water/temperature', value: '40 degC' } }),
      draft('n', {
        kind: 'note',
        version: 1,
        body: { text: 'read at the wrong tap', by: 'the engineer' },
        supersedes: 'd',
      }),
    );
    for (const order of [records, records.toReversed()]) {
      expect(readingsOf(order).map(({ id, value }) => [id, value])).toEqual([['c', '78 psi']]);
    }
  });
  it('of the first version are placed within their floor', () => {
    const old = draft('a', { version: 1, body: { ...body, of: '/floors/1/water/source/static' } });
    expect(readingsOf(write(old))[0]?.of).toBe('water/source/static');
  });
});

describe('a file of readings', () => {
  const records = write(draft('a'), draft('b', { supersedes: 'a', body: { ...body, value: '77 psi' } }));

  it('is a list written by hand, a list of records, or exported records', () => {
    const [byHand] = [{ ...body, at: '2027-04-19T09:10:00+02:00', users: 0 }];
    const values = (text: string) => {
      const read = readReadings(text);
      return read.ok ? read.value.map(({ value, at }) => [value, at]) : read.problems;
    };
    expect(values(JSON.stringify([byHand]))).toEqual([['71 psi', '2027-04-19T09:10:00+02:00']]);
    expect(values(JSON.stringify(records))).toEqual([['77 psi', '2027-04-19T09:10:00Z']]);
    expect(values(exportRecords(BOOK, records))).toEqual([['77 psi', '2027-04-19T09:10:00Z']]);
    expect(values('[]')).toEqual([]);
  });
  it('says everything that is wrong with it, with the place of each', () => {
    const at = '2027-04-19T09:10:00Z';
    const wrong = [{ ...body, at: 'yesterday' }, { ...body, at, value: '', colour: 'red' }, 7];
    expect(told(JSON.stringify(wrong))).toEqual([
      'RECORD_BODY /0/at',
      'RECORD_BODY /1/value',
      'RECORD_BODY /1/colour',
      'RECORD_BODY /2',
    ]);
    for (const nothing of ['', '{}', '{"of":1}', 'air 71 psi', 'null']) {
      expect(told(nothing)).toEqual(['RECORD_LIST_UNREADABLE ']);
    }
  });
  it('is refused where exported records were changed afterwards', () => {
    const forged = exportRecords(BOOK, records).replace('77 psi', '99 psi');
    expect(told(forged)).toEqual(['RECORD_CHANGED /records/1/hash']);
  });
});
