import { describe, expect, it } from 'vitest';
import type { Remedy } from '../../floor/assessment.ts';
import type { KeptNotes } from '../state/kept-notes.ts';
import { costProblem, keepCost, readCosts, remediesInOrder } from './remedy-costs.ts';

const notes = (): KeptNotes => {
  const kept = new Map<string, unknown>();
  return {
    read: (name) => kept.get(name),
    write: (name, value) => void kept.set(name, value),
    watch: () => () => undefined,
  };
};
const remedy = (lever: string, breaks = false, carries = true) =>
  ({
    lever,
    patch: carries ? [{ path: '/a', value: 1 }] : [],
    breaks: breaks ? [{ floor: 'F', finding: 'jetSpeed', verdict: 'short' }] : [],
  }) as unknown as Remedy;
const order = (found: readonly Remedy[]) => found.map(({ lever }) => lever);

describe('what a remedy costs', () => {
  const found = [remedy('no', false, false), remedy('slow'), remedy('froths', true), remedy('quick')];

  it('sorts by time in whatever units it was typed, what is not known last', () => {
    const costs = { slow: { lead: '2 d' }, quick: { lead: '36 h' } };
    expect(order(remediesInOrder(found, costs, 'lead'))).toEqual(['quick', 'slow', 'froths', 'no']);
    expect(order(remediesInOrder(found, { slow: { lead: '2 d' } }, 'lead')).slice(0, 2)).toEqual([
      'slow',
      'quick',
    ]);
  });
  it('never puts what breaks something before what breaks nothing, however cheap it is', () => {
    const costs = { froths: { effort: '1 min' }, slow: { effort: '9 d' }, quick: { effort: '10 d' } };
    expect(order(remediesInOrder(found, costs, 'effort'))).toEqual(['slow', 'quick', 'froths', 'no']);
  });
  it('groups those whom the same firm pays', () => {
    const costs = { slow: { pays: 'Oxbow' }, quick: { pays: 'Larkmoor' } };
    expect(order(remediesInOrder(found, costs, 'pays'))).toEqual(['quick', 'slow', 'froths', 'no']);
  });
  it('is kept for its lever, word by word', () => {
    const kept = notes();
    keepCost(kept, 'book', 'surface', 'effort', '4 h');
    keepCost(kept, 'book', 'surface', 'pays', 'Larkmoor');
    expect(readCosts(kept, 'book')).toEqual({ surface: { effort: '4 h', pays: 'Larkmoor' } });
    expect(readCosts(kept, 'other')).toEqual({});
  });
  it('says what is wrong with a time that does not read', () => {
    expect(costProblem('lead', '3 kg')?.code).toBe('QUANTITY_WRONG_KIND');
    expect(costProblem('lead', '10 d')).toBeUndefined();
    expect(costProblem('pays', 'whoever')).toBeUndefined();
  });
});
