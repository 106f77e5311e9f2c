import { describe, expect, it } from 'vitest';
import type { Envelope } from '../../record/envelope.ts';
import { type KnownRecords, noRecords, readBefore, readOn, withAdded } from './known-records.ts';

const named = (ids: string): Envelope[] => [...ids].map((id) => ({ id }) as Envelope);
const namesOf = ({ records }: KnownRecords): string => records.map(({ id }) => id).join('');

describe('the records that a page knows', () => {
  const first = readOn(noRecords, { records: named('abc'), position: 3 });

  it('go on behind those that were read', () => {
    const next = readOn(first, { records: named('de'), position: 9 });
    expect([namesOf(next), next.settled, next.position]).toEqual(['abcde', 5, 9]);
  });

  it('stand in the order of the server, whatever this page added meanwhile', () => {
    const added = withAdded(first, named('abcx'));
    const next = readOn(added, { records: named('dxe'), position: 6 });
    expect([namesOf(added), namesOf(next), next.settled]).toEqual(['abcx', 'abcdxe', 6]);
  });

  it('keep what others wrote while an own record was on its way', () => {
    const others = readOn(first, { records: named('d'), position: 4 });
    expect(namesOf(withAdded(others, named('abcx')))).toBe('abcdx');
  });

  it('keep an own record that an answer does not have yet', () => {
    const next = readOn(withAdded(first, named('x')), { records: named('d'), position: 4 });
    expect([namesOf(next), next.settled]).toEqual(['abcdx', 4]);
  });

  it('begin with the newest, and those before them come in front, whatever was added meanwhile', () => {
    const newest = readBefore(undefined, { records: named('fg'), begins: 6, position: 7, total: 7 });
    expect([namesOf(newest), newest.begins, newest.position]).toEqual(['fg', 6, 7]);
    const on = withAdded(readOn(newest, { records: named('h'), position: 8 }), named('fghx'));
    const back = readBefore(on, { records: named('cde'), begins: 3, position: 5, total: 8 });
    expect([namesOf(back), back.settled, back.begins, back.position]).toEqual(['cdefghx', 6, 3, 8]);
    const all = readBefore(back, { records: named('abx'), begins: 0, position: 2, total: 8 });
    expect([namesOf(all), all.settled, all.begins]).toEqual(['abxcdefgh', 9, 0]);
  });

  it('are the same list where nothing new came, and where answers overtake each other', () => {
    const added = withAdded(first, named('x'));
    expect(readOn(added, { records: named('x'), position: 4 }).records).toBe(added.records);
    expect(readOn(first, { records: [], position: 3 })).toBe(first);
    const late = readOn(noRecords, { records: named('abcde'), position: 5 });
    expect(readOn(late, { records: named('abc'), position: 3 })).toBe(late);
    expect(namesOf(readOn(first, { records: named('abcde'), position: 5 }))).toBe('abcde');
  });
});
