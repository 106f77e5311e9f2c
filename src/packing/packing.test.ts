import { describe, expect, it } from 'vitest';
import { assessBook } from '../floor/index.ts';
import { checkOf, demo, demoWith, floorOf, proofOf, recorded, triedOn } from '../proof/testing/demo-proof.ts';
import { claimsOf } from './claims.ts';
import { liftsOf } from './lifts.ts';
import { packingList } from './packing-list.ts';
import { visitTools } from './visit-tools.ts';

describe('a packing list', () => {
  it('holds each thing that travels once, and names what is in no crate or in two', () => {
    expect(packingList(demo)).toMatchObject({ unpacked: [], twice: [] });
    const without = demoWith(
      { path: '/line/crates/2/holds', value: ['+S1'] },
      { path: '/line/crates/2/items', value: [] },
    );
    expect(packingList(without)).toMatchObject({ unpacked: ['CP-1', 'CP-2'], twice: ['+S1'] });
  });

  it('adds the empty crate and each thing in it once, described in a row or not', () => {
    const crates = packingList(demo).crates;
    // 240 + 1450, 180 + 820, 35 + 48 + 9 + 1 + 1 + 52 + 5 + 41 + 3 kg, by hand
    expect(crates.map(({ added }) => added?.value)).toEqual([1690, 1000, 195]);
    expect(crates.map(({ agrees }) => agrees)).toEqual([true, true, false]);
    expect(crates[0]?.added?.working.sheet).toBe('building/masses-together');
    const undescribed = demoWith({ path: '/line/crates/0/items', value: [] });
    expect(packingList(undescribed).crates[0]?.added?.value).toBe(1690);
  });

  it('names what the papers want and nobody said, frost and timber among them', () => {
    const bare = demoWith({
      path: '/line/crates',
      value: [{ tag: 'C1', kind: 'crate', holds: ['+S1'], dangerousGoods: 'oil' }],
    });
    expect(packingList(bare).crates[0]?.missing).toEqual([
      ...[
        'mass',
        'length',
        'width',
        'height',
        'origin',
        'value',
        'seal',
        'dangerous',
        'wood',
        'frost',
        'indicators',
        'tare',
      ].map((field) => `/line/crates/0/${field}`),
    ]);
    expect(packingList(demoWith({ path: '/line/crates', value: [] }))).toEqual({
      crates: [],
      unpacked: [],
      twice: [],
    });
  });
});

describe('a claim', () => {
  const { check } = checkOf(floorOf(proofOf(demo), 'LARKMOOR'), 'crateReceipt CRATE-1');
  const receivedAt = (...at: readonly string[]) =>
    recorded(at.map((moment) => ({ ...triedOn(demo, 'LARKMOOR', check, { seen: true }), at: moment })));
  const first = (records: Parameters<typeof claimsOf>[1], book = demo) => claimsOf(book, records)[0];

  it('ends as many days after the first record of the receipt, which is itself not counted', () => {
    // received on Thursday 1 April, seven days by the calendar: Thursday 8 April, by hand
    expect(first(receivedAt('2027-04-01T15:00:00Z', '2027-04-05T09:00:00Z'))).toEqual({
      crate: 'CRATE-1',
      received: '2027-04-01',
      planned: false,
      last: '2027-04-08',
    });
  });

  it('goes by the day of the book where that is earlier, or where nobody recorded the receipt', () => {
    const arrives = demoWith({ path: '/about/dates/arrive', value: '2027-03-30' });
    expect(first(receivedAt('2027-04-01T15:00:00Z'), arrives)).toMatchObject({
      planned: false,
      last: '2027-04-06',
    });
    expect(first([], arrives)).toMatchObject({ planned: true, last: '2027-04-06' });
  });

  it('has no end while the day or the contract is not known', () => {
    expect(first([])).toEqual({ crate: 'CRATE-1', planned: true });
    const open = demoWith({ path: '/line/transport/claimDays', op: 'remove' });
    expect(first(receivedAt('2027-04-01T15:00:00Z'), open)?.last).toBeUndefined();
  });
});

it('a section is lifted by its own figures, and drawn from its side', () => {
  const site = assessBook(demo).floors.find(({ floor }) => floor === 'LARKMOOR')!;
  const [washer, filler] = liftsOf(demo, site);
  expect(washer?.drawing).toMatchObject({
    length: 3.4,
    points: [0.5, 2.9],
    level: 1.95,
    centre: 1.6,
    up: 0.9,
  });
  expect(washer?.drawing?.hook).toBeCloseTo(4.35, 9);
  // weighed: 378.5 kg at 2.6 m of 820 kg in all
  expect(filler?.drawing?.centre).toBeCloseTo((378.5 * 2.6) / 820, 9);
  expect(washer?.legs?.verdict).toBe('carries');
  expect(washer?.route.map(({ question }) => question)).toContain('routeWidth');
  const unslung = demoWith({ path: '/line/sections/0/sling', op: 'remove' });
  const [bare] = liftsOf(unslung, assessBook(unslung).floors[1]!);
  expect(bare?.legs).toBeUndefined();
  expect(bare?.drawing).toBeUndefined();
});

it('tools follow from the joins and checks that will need them, and from none that are done before the way', () => {
  const checks = floorOf(proofOf(demo), 'LARKMOOR').checks.map(({ check }) => check);
  const tools = new Map(visitTools(demo, checks).map((one) => [one.tool, one]));
  expect(tools.get('lowOhmMeter')).toMatchObject({ checks: ['bond J-2'], joins: ['J-2'] });
  expect(tools.get('insulationMeter')?.joins).not.toContain('J-1');
  expect(tools.get('camera')?.checks).toContain('crateReceipt CRATE-1');
  expect([...tools.values()].flatMap(({ joins }) => joins)).not.toContain('J-45');
  const none = demoWith({ path: '/line/joins', value: [] });
  expect(visitTools(none, []).length).toBe(0);
});
