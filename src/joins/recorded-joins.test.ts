import { describe, expect, it } from 'vitest';
import type { Book, Join } from '../book/index.ts';
import type { Envelope } from '../record/envelope.ts';
import { appended } from '../record/testing/appended.ts';
import { lacksOfBoxes } from './energising.ts';
import { faultsOfJoins } from './integrity/faults-of-joins.ts';
import { laidJoins } from './laid-joins.ts';
import { joinStates } from './recorded-joins.ts';

const told = (
  records: readonly Envelope[],
  writer: string,
  body: object,
  at = '2027-04-20T09:00:00Z',
): readonly Envelope[] =>
  appended(records, writer, {
    kind: 'join',
    version: 2,
    deviceTime: at,
    body: { join: 'J-1', by: writer, ...body },
  });

describe('the state of a join', () => {
  it('is that of the record that follows the others, whatever the clocks say', () => {
    let records = told([], 'phone-a', { state: 'parted', follows: [] });
    records = told(records, 'phone-a', { state: 'made', follows: ['phone-a-0'] });
    // a clock that was set back
    records = told(records, 'phone-b', { state: 'tested', follows: ['phone-a-1'] }, '2020-01-01T00:00:00Z');
    const state = joinStates(records).get('J-1')!;
    expect([state.state, state.conflict, state.last.length]).toEqual(['tested', false, 1]);
    expect(state.all).toHaveLength(3);
  });

  it('keeps two that were written apart, shows the conflict, and counts what is farther from being done', () => {
    const before = told([], 'phone-a', { state: 'parted', follows: [] });
    const mine = told(before, 'phone-a', { state: 'tested', reading: '0.1 ohm', follows: ['phone-a-0'] });
    const both = told(mine, 'phone-b', { state: 'trouble', remark: 'swapped', follows: ['phone-a-0'] });
    const state = joinStates(both).get('J-1')!;
    expect([state.state, state.conflict]).toEqual(['trouble', true]);
    expect(state.last.map(({ writer }) => writer).sort()).toEqual(['phone-a', 'phone-b']);
    const settled = told(both, 'phone-b', { state: 'made', follows: state.last.map(({ id }) => id) });
    expect(joinStates(settled).get('J-1')).toMatchObject({ state: 'made', conflict: false });
  });

  it('is no conflict where both say the same', () => {
    const mine = told([], 'phone-a', { state: 'made', follows: [] });
    const both = told(mine, 'phone-b', { state: 'made', follows: [] });
    expect(joinStates(both).get('J-1')).toMatchObject({ state: 'made', conflict: false });
    expect(joinStates(both).get('J-1')?.last).toHaveLength(2);
  });

  it('leaves no trace of the order in which the records came', () => {
    const mine = told([], 'phone-a', { state: 'made', follows: [] });
    const both = told(mine, 'phone-b', { state: 'parted', follows: [] });
    expect(joinStates(both.toReversed())).toEqual(joinStates(both));
  });

  it('reads records that do not say what they follow by their moment', () => {
    const old = appended([], 'phone-a', {
      kind: 'join',
      version: 1,
      body: { join: 'J-1', state: 'made', by: 'a' },
    });
    const later = appended(old, 'phone-b', {
      kind: 'join',
      version: 1,
      deviceTime: '2027-01-01T00:00:00Z',
      body: { join: 'J-1', state: 'tested', by: 'b' },
    });
    expect(joinStates(later).get('J-1')).toMatchObject({ state: 'tested', conflict: false });
  });
});

describe('what keeps a box from being energised', () => {
  const joins: readonly Join[] = [
    { tag: 'J-0', kind: 'bond', split: 'SP1', from: '+S1:PE', to: '+S2:PE' },
    { tag: 'J-1', kind: 'conductor', split: 'SP1', from: 'X1:1', to: 'X2:1', box: '+JB2', potential: 'L1' },
    {
      tag: 'J-2',
      kind: 'conductor',
      split: 'SP1',
      from: 'X1:2',
      to: 'X2:2',
      box: '+JB2',
      potential: '24 V DC',
    },
  ];
  const book: Book = {
    twinfloor: 1,
    line: {
      sections: [{ tag: '+S1' }, { tag: '+S2' }],
      splits: [{ tag: 'SP1', between: ['+S1', '+S2'] }],
      boxes: [{ tag: '+JB2', section: '+S2', terminals: [{ name: 'X2', wires: 1 }] }],
      joins,
    },
  };
  const laid = laidJoins(book);
  const lacks = (records: readonly Envelope[]): readonly string[] =>
    lacksOfBoxes(laid, joinStates(records), faultsOfJoins(laid, book)).flatMap(({ lacks }) =>
      lacks.map(({ why, join }) => `${why} ${join}`),
    );
  const all = (reading: string): readonly Envelope[] => {
    let records: readonly Envelope[] = [];
    for (const { tag } of joins) records = told(records, 'a', { join: tag, state: 'made' });
    records = told(records, 'a', { join: 'J-1', state: 'tested', method: 'insulation', reading });
    for (const join of ['J-0', 'J-2'])
      records = told(records, 'a', { join, state: 'tested', method: 'continuity', reading: '0.05 ohm' });
    return records;
  };
  it('is listed with the bond first, and lifted by records alone', () => {
    expect(lacks([])).toEqual(['bond J-0', 'not made J-1', 'insulation J-1', 'not made J-2']);
    const made = told([], 'a', { join: 'J-2', state: 'made' });
    expect(lacks(made)).toContain('not tested J-2');
    expect(lacks(all('200 Mohm'))).toEqual([]);
  });
  it('is an insulation below 1 megohm, an open conflict, trouble', () => {
    // IEC 60204-1 18.3: at least 1 megohm (read)
    expect(lacks(all('0.9 Mohm'))).toEqual(['insulation low J-1']);
    expect(lacks(all('> 550 Mohm'))).toEqual([]);
    expect(lacks(all('good'))).toEqual(['insulation J-1']);
    expect(lacks(told(all('200 Mohm'), 'a', { join: 'J-2', state: 'trouble' }))).toEqual(['trouble J-2']);
    expect(
      lacks(told(all('200 Mohm'), 'b', { join: 'J-2', state: 'tested', reading: '3 ohm', follows: [] })),
    ).toEqual(['conflict J-2']);
  });
  it('is an insulation that was read before it was parted', () => {
    const parted = told(all('200 Mohm'), 'a', { join: 'J-1', state: 'parted' });
    const again = told(parted, 'a', {
      join: 'J-1',
      state: 'tested',
      method: 'continuity',
      reading: '0.1 ohm',
    });
    expect(lacks(again)).toEqual(['insulation J-1']);
  });
});
