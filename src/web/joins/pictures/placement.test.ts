import { describe, expect, it } from 'vitest';
import type { BoxPicture } from '../../../joins/index.ts';
import { bodyProblems } from '../../../record/append-record.ts';
import { recordKinds } from '../../../record/kinds.ts';
import { movedBy } from './moved-by.ts';
import {
  forgetPlacements,
  keepPlacements,
  keptPlacements,
  type PlacementDraft,
  placedNow,
  placementRecords,
  withAttached,
  withMove,
} from './placement-draft.ts';

const notes = () => {
  const kept = new Map<string, unknown>();
  return {
    kept,
    notes: {
      read: (name: string) => kept.get(name),
      write: (name: string, value: unknown) => void kept.set(name, value),
      watch: () => () => undefined,
    },
  };
};
const page = { newId: () => 'id-1', now: () => '2027-03-02T08:00:00Z' };
const of = { book: 'b', box: '+JB2' };
const [picture, fresh] = ['ab'.repeat(32), 'cd'.repeat(32)];
const end = (join: string) => ({ join, side: 'to' as const });
const blank: PlacementDraft = { moves: [], attached: [], by: 'fitter' };
const recorded: readonly BoxPicture[] = [
  {
    picture,
    box: '+JB2',
    at: '2027-03-01T08:00:00.000Z',
    ends: [
      {
        ...end('J-1'),
        point: { x: 0.2, y: 0.3 },
        last: [
          { id: 'r-1', at: '2027-03-01T08:00:00Z', by: 'fitter' },
          { id: 'r-2', at: '2027-03-01T08:00:00Z', by: 'electrician' },
        ],
        conflict: true,
      },
    ],
  },
];
const shown = (draft: PlacementDraft, on = picture) =>
  [...placedNow(on, recorded, draft).values()].map(({ join, point }) => [join, point.x, point.y]);

describe('codes that are placed and not written down yet', () => {
  it('outlive a reload, and what another program kept there is none', () => {
    const store = notes();
    const draft = withMove(blank, end('J-4'), fresh, { x: 0.5, y: 0.25 }, recorded);
    keepPlacements(store, of, draft);
    expect(keptPlacements(store, of)).toEqual(draft);
    store.kept.set('join-places/b/+JB2', { moves: [{ join: 3 }, 'x', null], attached: 'no', by: 7 });
    expect(keptPlacements(store, of)).toEqual({ moves: [], attached: [], by: '' });
    forgetPlacements(store, of);
    expect(keptPlacements(store, of).moves).toEqual([]);
  });

  it('lie over what is recorded, the last place of each, and a slip leaves nothing behind', () => {
    const moved = withMove(blank, end('J-1'), picture, { x: 0.6, y: 0.3 }, recorded);
    expect(shown(blank)).toEqual([['J-1', 0.2, 0.3]]);
    expect(shown(moved)).toEqual([['J-1', 0.6, 0.3]]);
    expect(shown(moved, fresh)).toEqual([]);
    const off = withMove(moved, end('J-1'), picture, undefined, recorded);
    expect([shown(off), off.moves.length]).toEqual([[], 1]);
    const slip = withMove(blank, end('J-4'), picture, { x: 0.9, y: 0.9 }, recorded);
    expect(withMove(slip, end('J-4'), picture, undefined, recorded)).toEqual(blank);
  });

  it('become one record for each photograph, which follows what the person had before them', () => {
    let draft = withMove(blank, end('J-1'), picture, undefined, recorded);
    draft = withMove(draft, end('J-4'), picture, { x: 0.4, y: 0.5 }, recorded);
    draft = withMove(draft, end('J-4'), fresh, { x: 0.1, y: 0.2 }, recorded);
    const records = placementRecords(page, draft, { box: '+JB2', floor: 'OXBOW' });
    expect(records.flatMap((one) => bodyProblems(one, recordKinds, ''))).toEqual([]);
    expect(records.map(({ body }) => body)).toEqual([
      {
        picture,
        box: '+JB2',
        points: [{ ...end('J-4'), x: 0.4, y: 0.5 }],
        off: [end('J-1')],
        follows: ['r-1', 'r-2'],
        by: 'fitter',
        floor: 'OXBOW',
      },
      {
        picture: fresh,
        box: '+JB2',
        points: [{ ...end('J-4'), x: 0.1, y: 0.2 }],
        follows: [],
        by: 'fitter',
        floor: 'OXBOW',
      },
    ]);
  });

  it('go with a photograph that is left out', () => {
    const attached = [{ sha256: fresh, mediaType: 'image/jpeg', bytes: 9 }];
    const draft = withMove(
      withMove({ ...blank, attached }, end('J-4'), fresh, { x: 0.1, y: 0.2 }, recorded),
      end('J-1'),
      picture,
      { x: 0.1, y: 0.2 },
      recorded,
    );
    expect(withAttached(draft, attached)).toEqual(draft);
    expect(withAttached(draft, []).moves.map((one) => one.picture)).toEqual([picture]);
  });
});

describe('a key', () => {
  const press = (key: string, x: number, shiftKey = false) =>
    movedBy({ key, shiftKey }, x < 0 ? undefined : { x, y: 0.5 });
  it('moves a code by a hundredth, finely with shift, and never off the photograph', () => {
    expect(press('ArrowRight', 0.5)).toEqual({ x: 0.51, y: 0.5 });
    expect(press('ArrowUp', 0.5, true)).toEqual({ x: 0.5, y: 0.498 });
    expect(press('ArrowLeft', 0.004)).toEqual({ x: 0, y: 0.5 });
  });
  it('puts one that lies nowhere into the middle, takes one off, and leaves other keys alone', () => {
    expect(press('ArrowDown', -1)).toEqual({ x: 0.5, y: 0.5 });
    expect(press('Delete', 0.5)).toBeUndefined();
    expect(press('Delete', -1)).toBe('elsewhere');
    expect(press('Tab', 0.5)).toBe('elsewhere');
  });
});
