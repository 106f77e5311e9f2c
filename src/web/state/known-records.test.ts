import { describe, expect, it } from 'vitest';
import { standingOf } from '../../record/standing.ts';
import { appended } from '../../record/testing/appended.ts';
import { type KnownRecords, knownWith, noRecords } from './known-records.ts';

const namesOf = ({ standing }: KnownRecords): string =>
  standing.records.map(({ id }) => id.replace('-', '')).join(' ');

const a = appended(appended([], 'a', {}), 'a', {});
const b = appended([], 'b', {});
const c = appended([], 'c', {});

describe('the records that a page knows', () => {
  const first = knownWith(noRecords, a, 2);

  it('go on behind those that were read', () => {
    const next = knownWith(first, b, 3);
    expect([namesOf(next), next.position]).toEqual(['a0 a1 b0', 3]);
    expect(next.standing).toEqual(standingOf([...a, ...b]));
  });

  it('take what was acknowledged and leave where the server is to be asked on', () => {
    const added = knownWith(first, c);
    expect([namesOf(added), added.position]).toEqual(['a0 a1 c0', 2]);
    const next = knownWith(added, [...b, ...c], 4);
    expect([namesOf(next), next.position]).toEqual(['a0 a1 c0 b0', 4]);
  });

  it('leave a record that another tab wrote behind one that is not here to the next answer', () => {
    const three = appended(a, 'a', {});
    const four = appended(three, 'a', {});
    const gap = knownWith(first, four.slice(3));
    expect(gap).toBe(first);
    expect(namesOf(knownWith(gap, four.slice(2), 4))).toBe('a0 a1 a2 a3');
  });

  it('are the same where nothing new came, and where answers overtake each other', () => {
    expect(knownWith(first, [], 2)).toBe(first);
    expect(knownWith(first, a.slice(1), 1)).toBe(first);
    const late = knownWith(first, b, 3);
    expect(knownWith(late, a.slice(1), 2)).toBe(late);
    expect(knownWith(late, b, 4).standing).toBe(late.standing);
  });
});
