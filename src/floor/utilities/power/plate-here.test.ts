import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type Patch, readBook, tryPatches } from '../../../book/index.ts';
import { judged } from '../testing/judged.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const measured = (value: string) => ({ value, standing: 'measured' });
const on = (path: string, value: unknown): Patch => ({ path: `/floors/0/${path}`, value });
const pump = (path: string, value: unknown): Patch => ({ path: `/line/drives/1/${path}`, value });
const uneven = (...between: readonly string[]): Patch =>
  on('power/readings', [{ between: between.map(measured) }]);

/** The wash pump of 2.2 kW, loaded to 95 % of its plate. */
const loading = (...changes: readonly Patch[]) =>
  judged(tryPatches(demo.value, [pump('shaftPower', '2.09 kW'), ...changes]), 'motorLoading -M2');

const american = [pump('voltage', '460 V'), pump('frequency', '60 Hz'), pump('load', 'constant torque')];

/** Share that is left; nothing where no table says it. */
type Case = readonly [what: string, changes: readonly Patch[], share: number | undefined, verdict: string];

const cases: readonly Case[] = [
  ['even, cool and low', [], 1, 'carries'],
  // NEMA MG 1: mean 459 V, 1.96 %, factor 0.95 to 0.02
  ['460, 467 and 450 V', [uneven('460 V', '467 V', '450 V')], 0.952, 'carries'],
  ['3 % of unbalance', [uneven('400 V', '412 V', '388 V')], 0.89, 'short'],
  ['over 5 % of unbalance', [uneven('400 V', '424 V', '376 V')], undefined, 'short'],
  ['50 degC at 2000 m', [on('room/highest', '50 degC'), on('room/altitude', '2000 m')], 0.86, 'short'],
  ['a hall of 65 degC, which no table reaches', [on('room/highest', '65 degC')], undefined, 'unknown'],
  // the table of the maker: 0.80 totally enclosed
  ['460 V 60 Hz on 380 V 50 Hz', [...american, on('power/voltage', measured('380 V'))], 0.8, 'carries'],
  // 0.95 (5/6) asked, 0.75 left
  ['460 V 60 Hz on 400 V 50 Hz', [...american, on('power/voltage', measured('400 V'))], 0.75, 'short'],
  // (U/U_N): the torque of the plate at 350/400 of its flux (5/6), turned 6/5 as fast
  [
    '350 V at 60 Hz',
    [on('power/frequency', '60 Hz'), on('power/voltage', measured('350 V')), pump('load', 'constant power')],
    0.875,
    'short',
  ],
  ['a service factor of 1.15', [pump('serviceFactor', 1.15)], 1.15, 'carries'],
  [
    'the same on 3 % of unbalance',
    [pump('serviceFactor', 1.15), uneven('400 V', '412 V', '388 V')],
    0.89,
    'short',
  ],
];

it.each(cases)('a motor is held against what is left of its plate: %s', (_, changes, share, verdict) => {
  const found = loading(...changes);
  if (share === undefined) expect(found.demand.value).toBeUndefined();
  else expect(found.demand.value).toBeCloseTo(share, 3);
  expect(found.verdict).toBe(verdict);
});

it('a motor behind an inverter sees nothing of an uneven supply, but the heat of the hall', () => {
  const driven = pump('inverter', true);
  expect(loading(driven, uneven('400 V', '424 V', '376 V')).demand.value).toBe(1);
  const hot = loading(driven, on('room/highest', '50 degC'));
  expect(hot.demand.value).toBeCloseTo(0.92, 9);
  expect(hot.notes.map(({ code }) => code)).toContain('DERATING_BEHIND_INVERTER');
});

it('what only a motor taken as fully loaded would pass waits for its shaft power', () => {
  const hot = on('room/highest', '50 degC');
  const unsaid = loading(pump('shaftPower', undefined), hot);
  expect([unsaid.verdict, unsaid.decides]).toEqual(['unknown', '/line/drives/1/shaftPower']);
  expect(loading(pump('shaftPower', '2.19 kW'), hot).verdict).toBe('short');
  expect(loading(pump('shaftPower', undefined)).verdict).toBe('carries');
});
