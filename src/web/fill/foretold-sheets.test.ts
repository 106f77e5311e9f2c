import { describe, expect, it } from 'vitest';
import { allowancesFor, estimateLanes, predictOtherFloor } from '../../fill/index.ts';
import { floorPair } from '../../fill/testing/floor-pair.ts';
import { randomFrom } from '../../fill/testing/random.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { runSheet, type Value } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import { routeOf } from '../shell/route.ts';
import { allowanceSheet } from './allowance-sheet.ts';
import { timeIntervalSheet, volumeIntervalSheet } from './interval-sheet.ts';

/** What a sheet answers that is opened at an address, its fields read as the page reads them. */
const answerAt = (address: string): Readonly<Record<string, Value>> => {
  const { pathname, search } = new URL(address, 'http://127.0.0.1');
  const route = routeOf(pathname, search);
  if (route.page !== 'sheet') throw new Error(address);
  const { sheet } = registry.get(route.sheet)!;
  const inputs = Object.entries(route.inputs).map(([name, text]) => {
    const field = sheet.inputs[name];
    if (field === undefined || field.type === 'choice') throw new Error(name);
    const read = (one: string): number => {
      const value = readEntry(one.trim(), field.kind, { path: name, locale: 'en' });
      if (!value.ok) throw new Error(one);
      return value.value.value as number;
    };
    return [name, field.type === 'list' ? text.split(';').map(read) : read(text)];
  });
  const done = runSheet(sheet, Object.fromEntries(inputs));
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  return done.value.outputs as Readonly<Record<string, Value>>;
};

const change = {
  flowRatio: 1.7,
  viscosityRatio: 1.8,
  airRatio: 0.9,
  meterClass: 0.004,
  allowances: [],
  runs: [],
  waived: false,
  sameProduct: false,
};
const allowances = allowancesFor(change);

describe('the sheet behind a line or a hump', () => {
  it('gives the amount of each allowance, worked out or measured', () => {
    expect(allowances.length).toBe(4);
    for (const line of allowances) {
      const { shift = 0, deviation } = answerAt(allowanceSheet(line, change));
      expect(shift).toBeCloseTo(line.shift, 9);
      expect(deviation).toBeCloseTo(line.deviation, 9);
      const measured = answerAt(allowanceSheet({ ...line, source: 'measured' }, change));
      expect(measured.deviation).toBeCloseTo(line.deviation, 9);
    }
  });

  it('gives the ends of each interval', () => {
    const pair = floorPair(randomFrom(53), { source: 'pumped', lanes: 2, bottles: 6 });
    const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
    if (answer.kind === 'refused') throw new Error('refused');
    const { estimate } = answer;
    const told = predictOtherFloor({ estimate, floor: pair.there, presets: pair.presets, allowances })!;
    for (const lane of told.lanes) {
      const { volume, time } = lane;
      const { expanded } = answerAt(volumeIntervalSheet(lane)) as { expanded: number };
      // nine digits are written, and what is as good as known has 1e9 degrees of freedom
      expect(expanded / (volume.upper - volume.value)).toBeCloseTo(1, 6);
      const { lower, upper } = answerAt(timeIntervalSheet(lane)) as { lower: number; upper: number };
      expect(lower / time.lower).toBeCloseTo(1, 6);
      expect(upper / time.upper).toBeCloseTo(1, 6);
    }
  });
});
