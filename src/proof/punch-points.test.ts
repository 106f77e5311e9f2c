import { describe, expect, it } from 'vitest';
import { punchPoints } from './punch-points.ts';
import { demo, floorOf, proofOf, recorded, type Said } from './testing/demo-proof.ts';

const said = (state: string, more: object = {}, at?: string): Said => ({
  kind: 'punch',
  version: 2,
  body: { point: 'P1', text: 'guard rattles', state, by: 'the fitter', ...more },
  ...(at === undefined ? {} : { at }),
});

describe('a punch point', () => {
  it('stands as its last record says, keeps who found it, and can be opened anew', () => {
    const found = said('open', { class: 'A', of: ['-S1'] }, '2027-03-08T09:00:00Z');
    const shut = said(
      'closed',
      { by: 'the engineer', evidence: ['a'.repeat(64)], why: 'new screw' },
      '2027-03-09T09:00:00Z',
    );
    const again = said('open', { why: 'rattles again' }, '2027-03-10T09:00:00Z');
    const last = (...all: readonly Said[]) => punchPoints(recorded(all));
    expect(last(found, shut)).toMatchObject([
      {
        state: 'closed',
        by: 'the engineer',
        why: 'new screw',
        evidence: ['a'.repeat(64)],
        at: '2027-03-09T09:00:00Z',
        found: { by: 'the fitter', at: '2027-03-08T09:00:00Z' },
      },
    ]);
    expect(last(again, found, shut)).toMatchObject([{ state: 'open', why: 'rattles again', evidence: [] }]);
  });

  it('is put right though the device’s clock was set back a year, and is open where two wrote apart', () => {
    const found = said('open', {}, '2027-03-08T09:00:00Z');
    const early = said('closed', { follows: ['r0'] }, '2026-03-08T09:00:00Z');
    expect(punchPoints(recorded([found, early]))).toMatchObject([{ state: 'closed', last: ['r1'] }]);
    const apart = said('open', { follows: ['r0'], owner: 'the plumber' }, '2025-01-01T09:00:00Z');
    expect(punchPoints(recorded([found, early, apart]))).toMatchObject([
      { state: 'open', owner: 'the plumber', last: ['r2', 'r1'] },
    ]);
    const settled = said('closed', { follows: ['r1', 'r2'] }, '2025-01-01T09:00:00Z');
    expect(punchPoints(recorded([found, early, apart, settled]))).toMatchObject([
      { state: 'closed', last: ['r3'], found: { at: '2027-03-08T09:00:00Z' } },
    ]);
    // nobody can make a point vanish by a circle
    const round = said('open', { follows: ['r1'] });
    const back = said('closed', { follows: ['r0'] });
    expect(punchPoints(recorded([round, back]))).toHaveLength(1);
  });

  it('of the first form of the record is one with that of the second', () => {
    const first: Said = {
      kind: 'punch',
      version: 1,
      body: { point: 'P1', text: 'paint', state: 'open', by: 'the fitter', class: 'urgent' },
    };
    expect(punchPoints(recorded([first, said('closed')]))).toMatchObject([{ point: 'P1', state: 'closed' }]);
  });

  it('that was found at the site keeps no gate of the builder’s floor; one of the builder’s goes with the line', () => {
    const kept = (floor: string) => {
      const proof = proofOf(demo, recorded([said('open', { class: 'A', floor })]));
      return ['OXBOW', 'LARKMOOR'].map((tag) =>
        floorOf(proof, tag).gates.some(({ lacks }) => lacks.some(({ id }) => id === 'P1')),
      );
    };
    expect(kept('LARKMOOR')).toEqual([false, true]);
    expect(kept('OXBOW')).toEqual([true, true]);
  });
});
