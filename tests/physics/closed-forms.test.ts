import { describe, expect, it } from 'vitest';
import { balance, conductance, offset } from '../../src/hydraulics/balance.ts';
import { dormandPrince } from '../../src/hydraulics/dormand-prince.ts';
import { fillRow } from '../../src/hydraulics/fill-row.ts';
import type { RowFill } from '../../src/hydraulics/filled-row.ts';
import { runInertia } from '../../src/hydraulics/run-inertia.ts';
import { startStored } from '../../src/hydraulics/stored.ts';
import type { FillSystem } from '../../src/hydraulics/system.ts';
import { floorOf, gravity, gravityFrom, laneTo, water } from './rig.ts';

const filled = (system: FillSystem): RowFill => {
  const row = fillRow(system, startStored(system.source));
  if ('stuck' in row) throw new Error(`stuck: ${row.lanes.join(', ')}`);
  return row;
};

/** Q = k sqrt(h) of an orifice as the Kv of a lane: Kv = 3600 Cd a sqrt(2 1e5 / 1000) m3/h. */
const orificeKv = (discharge: number, diameter: number): number =>
  3600 * discharge * (Math.PI / 4) * diameter ** 2 * Math.sqrt(200);

describe('a tank that drains through lanes with no run', () => {
  it.each([1, 3, 8])('takes 2A/k (sqrt h1 - sqrt h2) through %i lanes', (count) => {
    const [area, head, volume, kv] = [0.02, 2, 1e-3, 1.3];
    const system = floorOf({
      source: gravityFrom(head, { area }),
      lanes: Array.from({ length: count }, () => laneTo(volume, kv)),
    });
    const k = (count * kv) / 3600 / Math.sqrt(1e5 / (1000 * gravity));
    const time = ((2 * area) / k) * (Math.sqrt(head) - Math.sqrt(head - (count * volume) / area));
    for (const lane of filled(system).lanes) expect(lane.countTime / time).toBeCloseTo(1, 6);
  });

  // Torricelli, diameter 0.8 m, hole 25 mm, Cd 0.62, 1.0 m to 0.2 m; computed by closed form: 412.3 s
  it('empties in the 412.3 s of the handbook tank', () => {
    const area = (Math.PI / 4) * 0.8 ** 2;
    const system = floorOf({
      source: gravityFrom(1, { area }),
      lanes: [laneTo(0.8 * area, orificeKv(0.62, 0.025))],
    });
    expect(filled(system).drawTime).toBeCloseTo(412.3, 1);
  });

  // the same with 0.6 L/s inflow from 1.0 m to 0.5 m; computed by closed form: 467.66 s
  it('empties in 467.66 s with an inflow', () => {
    const area = (Math.PI / 4) * 0.8 ** 2;
    const passed = 0.5 * area + 6e-4 * 467.66;
    const system = floorOf({
      source: gravityFrom(1, { area, makeUp: 6e-4 }),
      lanes: [laneTo(passed, orificeKv(0.62, 0.025))],
    });
    const row = filled(system);
    expect(row.drawTime).toBeCloseTo(467.66, 1);
    expect(row.stored.drawn).toBeCloseTo(0.5 * area, 5);
  });

  it('fills a bottle from below in the time that two vessels take to level', () => {
    // 2 A1 A2 / ((A1 + A2) k) (sqrt d1 - sqrt d2): 0.30 m2 and 0.004 m2, bore 8 mm, Cd 0.8, 0.50 m to 0.25 m: 9.181 s
    const [a1, a2] = [0.3, 0.004];
    const volume = 0.25 / (1 / a1 + 1 / a2);
    const system = floorOf({
      source: gravityFrom(0.5, { area: a1 }),
      lanes: [laneTo(volume, orificeKv(0.8, 0.008), { outlet: -1, levelAt: (v) => v / a2 })],
    });
    expect(filled(system).drawTime).toBeCloseTo(9.181, 3);
  });
});

describe('a bottle filled from below', () => {
  const head = 2e4 / (water.density * gravity);
  const k = 1 / 3600 / Math.sqrt(1e5 / (1000 * gravity));
  const volume = 1e-3;

  it('passes the corner at its shoulder wherever that lies', () => {
    for (let place = 0.4; place < 0.95; place += 0.0137) {
      const [body, neck] = [0.01, 0.001];
      const corner = place * volume;
      const levelAt = (v: number): number => (v <= corner ? v / body : corner / body + (v - corner) / neck);
      const system = floorOf({
        source: { kind: 'reading', curve: { shutOffPressure: 2e4, factor: 0, residual: 0 } },
        lanes: [laneTo(volume, 1, { outlet: -1, levelAt })],
      });
      // each part is a tank that fills against a steady head: 2A/k (sqrt h1 - sqrt h2)
      const [before, at, end] = [0, corner, volume].map((v) => Math.sqrt(head - levelAt(v))) as [
        number,
        number,
        number,
      ];
      const time = (2 / k) * (body * (before - at) + neck * (at - end));
      expect(Math.abs(filled(system).drawTime / time - 1), `corner at ${place}`).toBeLessThan(1e-5);
    }
  });

  it('is stuck, not endless, where its level meets the surface of the tank', () => {
    const system = floorOf({
      source: gravityFrom(0.5, { area: 0.02 }),
      lanes: [
        laneTo(volume, 0.4, { outlet: -1, levelAt: (v) => v / 0.001 }),
        laneTo(volume, 0.4, { tag: 'free' }),
      ],
    });
    expect(fillRow(system, startStored(system.source))).toEqual({ stuck: true, lanes: ['lane'] });
  });
});

describe('twelve valves on one manifold', () => {
  // 20 m head, 12 m of 32 mm, roughness 0.0015 mm, K 4, Kv 1.2; computed with Colebrook, and by the EPANET engine within 0.1 %
  it.each([
    [12, 0.3092],
    [8, 0.3709],
    [4, 0.4341],
    [2, 0.4571],
    [1, 0.4641],
  ])('%i open pass %f L/s each', (open, flow) => {
    const density = 1000;
    const system = floorOf({
      liquid: { density, viscosity: 1e-3 },
      source: gravityFrom(20),
      run: [{ kind: 'pipe', bore: 0.032, length: 12, roughness: 1.5e-6, kSum: 4 }],
    });
    const openings = Array.from({ length: open }, () => ({
      conductance: conductance(1.2, density),
      offset: offset(0, 0, density),
    }));
    const each = (1000 * balance(system, openings, { drawn: 0 }).flow) / open;
    expect(Math.abs(each / flow - 1)).toBeLessThan(3e-4);
  });
});

describe('the lag of the liquid in the run', () => {
  it('is none where there is no pipe', () => {
    const system = floorOf({ run: [{ kind: 'valve', kv: 20 }] });
    expect(runInertia(system, 1e-3).timeConstant).toBe(0);
  });

  it('is L v0/(g H) over every pipe', () => {
    const system = floorOf({
      source: gravityFrom(2),
      run: [
        { kind: 'pipe', bore: 0.025, length: 12, roughness: 0, kSum: 0 },
        { kind: 'pipe', bore: 0.05, length: 3, roughness: 0, kSum: 0 },
      ],
    });
    const flow = 6e-4;
    const v = (bore: number): number => flow / ((Math.PI / 4) * bore ** 2);
    const { timeConstant, head } = runInertia(system, flow);
    expect(head).toBeCloseTo(2, 12);
    expect(timeConstant).toBeCloseTo((12 * v(0.025) + 3 * v(0.05)) / (gravity * 2), 12);
  });
});

describe('the steps in time', () => {
  it('follow a circle to the order that the pair has, at their ends and between', () => {
    const circle = dormandPrince(2, (y, into) => {
      into[0] = -y[1]!;
      into[1] = y[0]!;
    });
    const from = Float64Array.from([1, 0]);
    const scale = Float64Array.from([1, 1]);
    const missed = (h: number): [end: number, middle: number, said: number] => {
      const said = circle.take(from, Float64Array.from([0, 1]), h, scale);
      return [
        Math.hypot(circle.y[0]! - Math.cos(h), circle.y[1]! - Math.sin(h)),
        Math.hypot(circle.part(0, 0.4) - Math.cos(0.4 * h), circle.part(1, 0.4) - Math.sin(0.4 * h)),
        said,
      ];
    };
    const long = missed(0.2);
    const short = missed(0.1);
    // one step of order p misses by h^(p+1): 2^6 at the end, 2^5 between and for the error that it says
    expect(Math.log2(long[0] / short[0])).toBeCloseTo(6, 0);
    expect(Math.log2(long[1] / short[1])).toBeGreaterThan(4.6);
    expect(Math.log2(long[2] / short[2])).toBeCloseTo(5, 0);
    expect(long[0]).toBeLessThan(long[2]);
  });
});

it('a floor without a head is stuck', () => {
  const system = floorOf({ source: gravityFrom(-1), liquid: water });
  expect(fillRow(system, startStored(system.source))).toMatchObject({ stuck: true });
});
