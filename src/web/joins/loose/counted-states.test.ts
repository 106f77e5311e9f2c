import { describe, expect, it } from 'vitest';
import type { JoinState, LaidJoin } from '../../../joins/index.ts';
import { heldStates, statesOfAll, statesOfSections } from './counted-states.ts';

const join = (tag: string, from?: string, to?: string): LaidJoin => ({
  tag,
  path: '',
  code: tag,
  after: [],
  from: { side: 'from', ...(from === undefined ? {} : { section: from }) },
  to: { side: 'to', ...(to === undefined ? {} : { section: to }) },
});
const stands = (tag: string, state: JoinState['state'], conflict = false): [string, JoinState] => [
  tag,
  { join: tag, state, conflict, last: [], all: [] },
];

const joins = [join('J1', '+S1', '+S2'), join('J2', '+S1', '+S1'), join('J3')];
const states = new Map([stands('J1', 'tested'), stands('J2', 'made', true)]);

describe('how the joins of a section stand', () => {
  it('counts one that leads across on both sections, and one within a section once', () => {
    const [first, second] = statesOfSections(joins, states);
    expect([first?.section, first?.total, first?.counts.tested]).toEqual(['+S1', 2, 1]);
    expect([second?.section, second?.total, second?.counts.tested]).toEqual(['+S2', 1, 1]);
  });
  it('tells last what is on no section that anybody named', () => {
    expect(statesOfSections(joins, states).at(-1)).toMatchObject({ total: 1, counts: { none: 1 } });
    expect(statesOfSections(joins, states).at(-1)).not.toHaveProperty('section');
  });
  it('takes two accounts of one join as neither of them', () => {
    const { counts } = statesOfAll(joins, states);
    expect(counts).toMatchObject({ conflict: 1, made: 0, none: 1, tested: 1 });
    expect(heldStates(counts)).toEqual(['conflict', 'none', 'tested']);
  });
});
