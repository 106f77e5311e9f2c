import { describe, expect, it } from 'vitest';
import { kindText } from './kinds.text.ts';
import { type Kind, kinds } from './kinds.ts';
import { findUnit, spellingsOf } from './unit-lookup.ts';
import { unitNoteText } from './units.text.ts';
import { unitsByKind } from './units-by-kind.ts';

const allKinds = Object.keys(kinds) as Kind[];

describe('the units of a kind', () => {
  it.each(allKinds)('%s: no spelling names two units', (kind) => {
    const owners = new Map<string, string>();
    for (const unit of unitsByKind[kind]) {
      for (const spelling of spellingsOf(unit)) {
        expect(owners.get(spelling) ?? unit.id, spelling).toBe(unit.id);
        owners.set(spelling, unit.id);
        expect(findUnit(kind, spelling)?.id).toBe(unit.id);
      }
    }
  });
  it('have finite, positive factors', () => {
    for (const unit of Object.values(unitsByKind).flat()) {
      expect(unit.times / unit.over).toBeGreaterThan(0);
      expect(Number.isFinite(unit.times / unit.over)).toBe(true);
    }
  });
  it('have words for every convention that they rest on, and none to spare', () => {
    const used = new Set(
      Object.values(unitsByKind).flatMap((units) => units.flatMap(({ note }) => note ?? [])),
    );
    expect([...used].sort()).toEqual(Object.keys(unitNoteText.en).sort());
  });
  it('belong to kinds that have a name', () => {
    expect(Object.keys(kindText.en).sort()).toEqual([...allKinds].sort());
  });
});
