import { describe, expect, it } from 'vitest';
import { punchPoints } from '../../../proof/punch-points.ts';
import { appendRecord, startChain } from '../../../record/append-record.ts';
import type { Envelope } from '../../../record/envelope.ts';
import type { RecordDraft } from '../../commands/add-record.ts';
import { nextPoint, punchDraft, saidOf } from './punch-draft.ts';

const ports = (name: string, at: string) => {
  let count = 0;
  return { newId: () => `${name}-${String(count++).padStart(4, '0')}`, now: () => at };
};

const recordsOf = (drafts: readonly RecordDraft[]): readonly Envelope[] => {
  let chain = startChain('flagon-line', 'tablet');
  return drafts.map(({ at, ...draft }) => {
    const next = appendRecord(chain, { revision: 1, ...draft, deviceTime: at });
    if (!next.ok) throw new Error(JSON.stringify(next.problems));
    chain = next.value.chain;
    return next.value.record;
  });
};

const found = {
  point: 'P1',
  text: ' guard rattles ',
  state: 'open',
  by: 'the fitter',
  keeps: 'use',
  owner: ' ',
  of: ['-S1'],
  follows: [],
} as const;

describe('what is said of a punch point', () => {
  it('is a record that the chain takes; what was left blank is not said', () => {
    const [point] = punchPoints(recordsOf([punchDraft(ports('a', '2027-03-08T09:00:00Z'), found)]));
    expect(point).toMatchObject({ text: 'guard rattles', class: 'A', of: ['-S1'], state: 'open' });
    expect(Object.keys(point!)).not.toContain('owner');
  });

  it('goes on from how it stands, also with a clock that was set back', () => {
    const first = punchDraft(ports('a', '2027-03-08T09:00:00Z'), found);
    const [open] = punchPoints(recordsOf([first]));
    const shut = punchDraft(ports('b', '2026-03-08T09:00:00Z'), {
      ...saidOf(open!),
      state: 'closed',
      by: 'the engineer',
      why: 'new screw',
    });
    expect(punchPoints(recordsOf([first, shut]))).toMatchObject([
      { state: 'closed', text: 'guard rattles', class: 'A', why: 'new screw', found: { by: 'the fitter' } },
    ]);
  });

  it('has a number that goes on, and another name on each device that counts alike', () => {
    const [one] = punchPoints(recordsOf([punchDraft(ports('a', '2027-03-08T09:00:00Z'), found)]));
    expect(nextPoint([], ports('tablet', ''))).toBe('P1-0000');
    const names = ['tablet-a1', 'laptop-b2'].map((id) => nextPoint([one!], { newId: () => id }));
    expect(names).toEqual(['P2-eta1', 'P2-opb2']);
  });
});
