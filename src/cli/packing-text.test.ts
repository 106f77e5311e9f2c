import { expect, it } from 'vitest';
import { assessBook } from '../floor/index.ts';
import { packingOf } from '../packing/packing-of.ts';
import { demo, demoWith } from '../proof/testing/demo-proof.ts';
import { packingDocument, packingSchema } from './packing-document.ts';
import { packingTextOf } from './packing-text.ts';
import type { World } from './world.ts';

const world = { locale: 'en' } as World;

it('what travels is told crate by crate, with each lift, in words alone and as its schema has it', () => {
  const packing = packingOf(demo, assessBook(demo), 'LARKMOOR');
  const text = packingTextOf(demo, packing, world);
  for (const part of [
    'washer CRATE-1',
    'FCA',
    'low-ohm meter',
    'Lift and way in: filler and capper +S2',
    'qualified rigger',
  ])
    expect(text).toContain(part);
  // a key without words would stand there as it is
  expect(text).not.toMatch(/\b(?:packing|proof|utility|verdict)\.[a-z]|\{[a-z]+\}|undefined|NaN/i);
  expect(text).not.toMatch(/\bsafe(?:ly)?\b/i);
  const told = packingSchema.parse(JSON.parse(JSON.stringify(packingDocument(packing, ''))));
  expect(told.crates.map(({ tag, added }) => [tag, added])).toEqual([
    ['CRATE-1', 1690],
    ['CRATE-2', 1000],
    ['CRATE-3', 195],
  ]);
  expect(told.lifts[0]?.findings[0]).toMatchObject({ id: 'slingLegs +S1', verdict: 'carries' });
});

it('a book that says nothing of crates is told as such', () => {
  const bare = demoWith({ path: '/line/crates', value: [] }, { path: '/line/transport', op: 'remove' });
  const text = packingTextOf(bare, packingOf(bare, assessBook(bare), 'LARKMOOR'), world);
  expect(text).toContain('no trade term is named');
  expect(text).not.toMatch(/undefined|NaN/);
});
