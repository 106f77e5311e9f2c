import { describe, expect, it } from 'vitest';
import { bypassesOf } from '../../record/bypasses.ts';
import { demo, floorOf, proofOf, recorded, type Said } from '../testing/demo-proof.ts';
import { isOdd } from './is-odd.ts';
import { settingsOfBook } from './settings-of-book.ts';

const bypass = (state: 'made' | 'removed', more: object = {}, at?: string): Said => ({
  kind: 'bypass',
  version: 1,
  body: { bypass: 'B1', of: '-S2', state, by: 'the engineer', floor: 'OXBOW', why: 'stop time', ...more },
  ...(at === undefined ? {} : { at }),
});

const lacksOf = (said: readonly Said[], gate: string, floor = 'LARKMOOR') =>
  floorOf(proofOf(demo, recorded(said)), floor)
    .gates.find((one) => one.gate === gate)!
    .lacks.map(({ id }) => id);

describe('a guard that was bypassed for a test', () => {
  it('keeps every gate of every floor until its reverse is recorded', () => {
    for (const gate of ['ready to energise', 'ready to produce', 'accepted']) {
      expect(lacksOf([bypass('made')], gate)).toContain('bypass B1');
      expect(lacksOf([bypass('made'), bypass('removed')], gate)).not.toContain('bypass B1');
    }
    expect(lacksOf([bypass('made')], 'ready to ship', 'OXBOW')).toContain('bypass B1');
  });

  it('is in again when it is made again, and a removal of another thing takes nothing out', () => {
    const again = [bypass('made'), bypass('removed'), bypass('made')];
    expect(lacksOf(again, 'accepted')).toContain('bypass B1');
    expect(lacksOf([bypass('made'), bypass('removed', { bypass: 'B2' })], 'accepted')).toContain('bypass B1');
  });

  it('is told by the order in which one device wrote, since its clock can be set back', () => {
    const back = [bypass('made', {}, '2027-03-08T10:00:00Z'), bypass('removed', {}, '2026-03-08T10:00:00Z')];
    expect(lacksOf(back, 'accepted')).not.toContain('bypass B1');
    const ahead = [...back, bypass('made', {}, '2026-03-08T09:00:00Z')];
    expect(lacksOf(ahead, 'accepted')).toContain('bypass B1');
  });

  it('stays in where two devices leave a doubt', () => {
    const [made] = recorded([bypass('made', {}, '2027-03-08T10:00:00Z')]);
    const removed = {
      ...recorded([bypass('removed', {}, '2027-03-08T10:00:00Z')])[0]!,
      id: 'other',
      writer: 'laptop',
    };
    expect(bypassesOf([made!, removed])[0]?.removed).toBeUndefined();
  });
});

describe('a setting that nobody has read as left', () => {
  it('is named by the acceptance until it is read on that floor', () => {
    const read = (moment: string, floor: string): Said => ({
      kind: 'setting',
      version: 1,
      body: { setting: 'preset -Y11 FLAGON-2L', floor, moment, value: '803', by: 'the engineer' },
    });
    const id = 'unread preset -Y11 FLAGON-2L';
    expect(lacksOf([], 'accepted')).toContain(id);
    expect(lacksOf([read('shipped', 'OXBOW')], 'accepted')).toContain(id);
    expect(lacksOf([read('as left', 'LARKMOOR')], 'accepted')).not.toContain(id);
    expect(lacksOf([], 'ready to produce')).not.toContain(id);
  });

  it('is asked about where it looks like a slip, and refused nowhere', () => {
    expect([isOdd(1e99, []), isOdd(-3, [5]), isOdd(40, [5]), isOdd(501, [5]), isOdd(0.04, [5])]).toEqual([
      true,
      true,
      false,
      true,
      true,
    ]);
    // nothing to hold it against, a zero that may be meant, and one moment that agrees
    expect([isOdd(7, []), isOdd(0, [5]), isOdd(501, [5, 500])]).toEqual([false, false, false]);
    const { id: drip } = settingsOfBook(demo).find(({ sort }) => sort === 'drip')!;
    const left: Said = {
      kind: 'setting',
      version: 1,
      body: { setting: drip, floor: 'LARKMOOR', moment: 'as left', value: '1e99 s', by: 'the engineer' },
    };
    expect(lacksOf([left], 'accepted')).toContain(`setting ${drip}`);
  });
});

describe('a setting that was left beyond what is allowed', () => {
  const left = (value: string): Said => ({
    kind: 'setting',
    version: 1,
    body: { setting: 'overload -M2', floor: 'LARKMOOR', moment: 'as left', value, by: 'the engineer' },
  });

  it('keeps the acceptance until it is set right', () => {
    expect(lacksOf([left('6 A')], 'accepted')).toContain('setting overload -M2');
    expect(lacksOf([left('6 A'), left('5 A')], 'accepted')).not.toContain('setting overload -M2');
    expect(lacksOf([left('6 A')], 'ready to produce')).not.toContain('setting overload -M2');
  });
});
