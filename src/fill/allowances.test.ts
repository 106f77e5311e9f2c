import { describe, expect, it } from 'vitest';
import { type Allowance, allowancesFor, type FloorChange } from './allowances.ts';
import { estimateLanes } from './estimate-lanes.ts';
import { predictOtherFloor } from './predict-other-floor.ts';
import { floorPair } from './testing/floor-pair.ts';
import { randomFrom } from './testing/random.ts';

const alike: FloorChange = { flowRatio: 1, viscosityRatio: 1, airRatio: 1 };
const line = (change: FloorChange, code: Allowance['code']): Allowance | undefined =>
  allowancesFor(change).find((each) => each.code === code);

describe('what two floors change', () => {
  it('is nothing where they are alike', () => {
    expect(allowancesFor(alike)).toEqual([]);
  });

  it('is the class of the meter, rectangular, after a tenfold flow', () => {
    expect(line({ ...alike, flowRatio: 10, meterClass: 0.01 }, 'meter-flow')).toMatchObject({
      deviation: 0.01 / Math.sqrt(3),
      source: 'meter class',
    });
    expect(line({ ...alike, flowRatio: 100 }, 'meter-flow')!.deviation).toBeCloseTo(0.005 / Math.sqrt(3), 12);
  });

  it('makes valves slower on less air and a lane narrower for a thicker product', () => {
    expect(line({ ...alike, airRatio: 0.8 }, 'valve-air')!.shift).toBeCloseTo(0.25, 12);
    expect(line({ ...alike, viscosityRatio: 10 }, 'kv-product')!.shift).toBeCloseTo(-0.05, 12);
    expect(line({ ...alike, viscosityRatio: 0.5 }, 'kv-product')!.shift).toBeCloseTo(0, 12);
  });

  it('gives way to what was measured', () => {
    const change = { ...alike, airRatio: 0.8, measured: { 'valve-air': { shift: 0.1, deviation: 0.02 } } };
    expect(line(change, 'valve-air')).toMatchObject({ shift: 0.1, deviation: 0.02, source: 'measured' });
  });
});

describe('a prediction with allowances', () => {
  const pair = floorPair(randomFrom(51), { source: 'pumped', lanes: 2, bottles: 6 });
  const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
  if (answer.kind === 'refused') throw new Error('refused');
  const { estimate } = answer;
  const with_ = (allowances: readonly Allowance[]) =>
    predictOtherFloor({ estimate, floor: pair.there, presets: pair.presets, allowances })!;
  const plain = with_([]);

  it('is never narrower, and names its part', () => {
    const wide = with_(allowancesFor({ flowRatio: 3, viscosityRatio: 3, airRatio: 0.8 }));
    wide.lanes.forEach((lane, i) => {
      expect(lane.volume.deviation).toBeGreaterThan(plain.lanes[i]!.volume.deviation);
      expect(lane.volumeCauses.allowances).toBeGreaterThan(0);
      const causes = Object.values(lane.volumeCauses).reduce((sum, share) => sum + share, 0);
      expect(causes).toBeCloseTo(1, 9);
    });
    expect(plain.lanes[0]!.volumeCauses.allowances).toBe(0);
  });

  it('moves the after-run by what the valves are slower', () => {
    const slower = with_([
      { code: 'valve-air', moves: 'afterRun', shift: 0.25, deviation: 0, common: true, source: 'measured' },
    ]);
    slower.lanes.forEach((lane, i) => {
      const { drip } = estimate.lanes[i]!;
      const ratio = (lane.afterRun.value - drip.value) / (plain.lanes[i]!.afterRun.value - drip.value);
      expect(ratio).toBeCloseTo(1.25, 1);
    });
  });

  it('fills slower through a narrower lane', () => {
    const narrower = with_([
      { code: 'kv-product', moves: 'kv', shift: -0.1, deviation: 0, common: true, source: 'measured' },
    ]);
    expect(narrower.rowTime.value).toBeGreaterThan(1.03 * plain.rowTime.value);
  });
});

describe('the line around the fill', () => {
  const pair = floorPair(randomFrom(52), { source: 'gravity', lanes: 2, bottles: 6 });
  const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
  if (answer.kind === 'refused') throw new Error('refused');
  const times = {
    way: [],
    wayRoom: Number.POSITIVE_INFINITY,
    holds: [],
    fill: {
      station: '-FILLER',
      lanes: 2,
      travelIn: 1,
      lift: 0.5,
      lag: 0,
      filling: 0,
      drip: 0.5,
      lower: 0.5,
      clearOut: 1.5,
    },
  };
  it('takes the slowest lane and the times around it, and turns out two bottles in each', () => {
    const found = predictOtherFloor({
      estimate: answer.estimate,
      floor: pair.there,
      presets: pair.presets,
      times,
    })!;
    const { stationTime, rate, rowTime, lanes } = found;
    expect(stationTime!.value).toBeCloseTo(rowTime.value + 4, 9);
    expect(rowTime.upper).toBeGreaterThanOrEqual(Math.max(...lanes.map(({ time }) => time.value)));
    expect(rate!.value).toBeCloseTo(2 / stationTime!.value, 9);
    expect(rate!.lower).toBeCloseTo(2 / stationTime!.upper, 9);
    expect(rate!.upper).toBeCloseTo(2 / stationTime!.lower, 9);
  });
});
