import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balance, conductance, offset, openingFlow } from '../../src/hydraulics/balance.ts';
import { fillRow } from '../../src/hydraulics/fill-row.ts';
import type { RowFill } from '../../src/hydraulics/filled-row.ts';
import { rowTable } from '../../src/hydraulics/row-table.ts';
import { restStored, startStored, vesselLiquid } from '../../src/hydraulics/stored.ts';
import type { FillSystem, Pumped } from '../../src/hydraulics/system.ts';
import { colebrook, darcy, oracleRow } from './oracle.ts';
import { floorOf, gravityFrom, laneTo, stillTank } from './rig.ts';
import { systems } from './systems.ts';

const options = { seed: 77, numRuns: 60, endOnFailure: true };

const filled = (system: FillSystem): RowFill | undefined => {
  const row = fillRow(system, startStored(system.source));
  return 'stuck' in row ? undefined : row;
};

const openingsOf = (system: FillSystem, open: number) =>
  system.lanes.slice(0, open).map((lane) => ({
    conductance: conductance(lane.kv, system.liquid.density),
    offset: offset(system.manifold, lane.outlet, system.liquid.density),
  }));

it('a higher surface never fills slower', () => {
  fc.assert(
    fc.property(systems('gravity still'), fc.double({ min: 0.01, max: 3, noNaN: true }), (system, more) => {
      const { source } = system;
      if (source.kind !== 'gravity') throw new Error(source.kind);
      const low = filled(system);
      const high = filled({ ...system, source: { ...source, surface: source.surface + more } });
      if (low === undefined) return;
      expect(high).toBeDefined();
      // the last lane to its count: a lane that ends alone passes no faster than the common run lets it
      expect(high!.drawTime).toBeLessThan(low.drawTime * (1 + 1e-4));
    }),
    options,
  );
});

it.each(['main', 'reading', 'gravity still', 'pumped still', 'regulated'] as const)(
  'more lanes open never pass more each: %s',
  (kind) => {
    fc.assert(
      fc.property(systems(kind), (system) => {
        let before = Number.POSITIVE_INFINITY;
        for (let open = 1; open <= system.lanes.length; open += 1) {
          const openings = openingsOf(system, open);
          const { pressure } = balance(system, openings, { drawn: 0 });
          const first = openingFlow(openings[0]!, pressure);
          expect(first).toBeLessThanOrEqual(before * (1 + 1e-9));
          before = first;
        }
      }),
      options,
    );
  },
);

it.each(['gravity falling', 'gravity dry', 'pumped falling', 'pumped dry'] as const)(
  'what left the tank is in the bottles, less the make-up: %s',
  (kind) => {
    fc.assert(
      fc.property(systems(kind), (system) => {
        const { source } = system;
        if (source.kind !== 'gravity' && source.kind !== 'pumped') throw new Error(source.kind);
        const row = filled(system);
        if (row === undefined) return;
        const bottles = row.lanes.reduce((sum, lane) => sum + lane.volume, 0);
        expect(row.drawn / bottles).toBeCloseTo(1, 12);
        const { makeUp, usable } = source.tank;
        const most = makeUp * row.drawTime;
        // a tank that was full part of the time took less than all its make-up, none took more
        expect(row.stored.drawn).toBeGreaterThanOrEqual(
          Math.max(0, bottles - most) - 1e-9 * bottles - lost(row, usable),
        );
        if (makeUp === 0 && row.ranDry === undefined) {
          expect(row.stored.drawn / bottles).toBeCloseTo(1, 9);
        }
      }),
      options,
    );
  },
);

/** What the last lanes still passed after their count from a tank that held no more: it came out of the run. */
const lost = (row: RowFill, usable: number): number =>
  row.stored.drawn >= usable
    ? row.lanes.reduce((sum, lane) => sum + lane.volume, 0)
    : row.ranDry === undefined
      ? 0
      : Number.POSITIVE_INFINITY;

it('volumes, times and flows of the lanes go with them when the lanes change places', () => {
  fc.assert(
    fc.property(systems('pumped falling'), (system) => {
      const one = filled(system);
      const other = filled({ ...system, lanes: [...system.lanes].reverse() });
      if (one === undefined || other === undefined) return;
      one.lanes.forEach((lane, i) => {
        const same = other.lanes[other.lanes.length - 1 - i]!;
        expect(lane.lane).toBe(same.lane);
        expect(same.countTime / lane.countTime).toBeCloseTo(1, 6);
        expect(same.volume / lane.volume).toBeCloseTo(1, 6);
      });
    }),
    options,
  );
});

it('the friction of the second solution joins without a step and its loss never falls', () => {
  for (const relative of [0, 1e-5, 2.25e-3, 0.03]) {
    expect(darcy(2000, relative) / 0.032).toBeCloseTo(1, 9);
    expect(darcy(4000.001, relative) / darcy(3999.999, relative)).toBeCloseTo(1, 6);
    let before = 0;
    for (let re = 100; re < 8000; re += 50) {
      const loss = darcy(re, relative) * re ** 2;
      expect(loss).toBeGreaterThan(before);
      before = loss;
    }
  }
  // computed: roughness 0.00225 of the bore, f(4000) = 0.042133, f(3000) = 0.033748
  expect(colebrook(4000, 0.00225)).toBeCloseTo(0.042133, 6);
  expect(darcy(3000, 0.00225)).toBeCloseTo(0.033748, 6);
});

describe('rows read from a table', () => {
  it.each(['gravity falling', 'pumped falling'] as const)(
    'are the rows themselves within 1e-6: %s',
    (kind) => {
      let tabled = 0;
      fc.assert(
        fc.property(
          systems(kind),
          fc.double({ min: 0.2, max: 6, noNaN: true }),
          fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }),
          (drawn, area, places) => {
            const { source } = drawn;
            if (source.kind !== 'gravity' && source.kind !== 'pumped') throw new Error(source.kind);
            const system = { ...drawn, source: { ...source, tank: { ...source.tank, area } } };
            const table = rowTable(system);
            for (const place of [0, ...places]) {
              const stored = { drawn: place * area * 0.9, vessel: 0, pumping: false };
              const row = fillRow(system, stored);
              const quick = table(stored);
              if ('stuck' in row) {
                expect('stuck' in quick).toBe(true);
                continue;
              }
              if ('stuck' in quick) throw new Error('only the table is stuck');
              if (quick.fillTime !== row.fillTime) tabled += 1;
              const where = `drawn ${stored.drawn}: ${quick.fillTime} from the table, ${row.fillTime} from the row`;
              expect(Math.abs(quick.fillTime / row.fillTime - 1), where).toBeLessThan(limit(system));
              expect(Math.abs(quick.drawTime / row.drawTime - 1), where).toBeLessThan(limit(system));
              expect(Math.abs(quick.drawn / row.drawn - 1), where).toBeLessThan(1e-6);
              const level = Math.abs(quick.stored.drawn - row.stored.drawn) / row.drawn;
              expect(level, `missing from the tank, ${where}`).toBeLessThan(limit(system));
            }
          },
        ),
        options,
      );
      expect(tabled).toBeGreaterThan(20);
    },
  );
});

/** Covered nozzles have corners in their level, which each row steps over with its own 1e-5. */
const limit = (system: FillSystem): number =>
  system.lanes.some((lane) => lane.levelAt !== undefined) ? 3e-5 : 1e-6;

describe('a rest', () => {
  it('fills a tank by its make-up and no further than full', () => {
    const source = gravityFrom(3, { area: 0.5, makeUp: 1e-4 });
    const stored = { drawn: 2e-3, vessel: 0, pumping: false };
    expect(restStored(source, 1000, stored, 5).drawn).toBeCloseTo(1.5e-3, 15);
    expect(restStored(source, 1000, stored, 50).drawn).toBe(0);
  });

  it('pumps a vessel up as the second solution does, within 1e-4 of what it takes', () => {
    // a lane that passes all but nothing lets the second solution watch the vessel alone
    const source: Pumped = {
      kind: 'pumped',
      curve: { shutOffHead: 40, factor: 40 / 2e-3 ** 2, exponent: 2, residual: 0 },
      speedRatio: 1,
      suction: 0,
      height: 0,
      tank: { ...stillTank, area: 0.5 },
      regulator: Number.POSITIVE_INFINITY,
      ambient: 101_325,
      vessel: { volume: 0.02, precharge: 2.4e5, cutIn: 1.6e5, cutOut: 3e5 },
    };
    const from = vesselLiquid(source.vessel!, 1.6e5, source.ambient);
    const seconds = 1.5;
    const system = floorOf({ source, lanes: [laneTo(1e-9, 1e-6)] });
    const drip = fillRow(system, { drawn: 0, vessel: from, pumping: true });
    if ('stuck' in drip) throw new Error('stuck');
    const passing = { ...system, lanes: [laneTo(drip.lanes[0]!.volume * (seconds / drip.drawTime), 1e-6)] };
    const other = oracleRow(passing, { drawn: 0, vessel: from, pumping: true });
    const ours = restStored(
      source,
      system.liquid.density,
      { drawn: 0, vessel: from, pumping: true },
      other.drawTime,
    );
    const took = other.state.vessel - from;
    expect(took).toBeGreaterThan(1e-3);
    expect(Math.abs(ours.vessel - other.state.vessel) / took).toBeLessThan(1e-4);
    expect(ours.pumping).toBe(other.state.pumping);
    const toTheEnd = restStored(source, system.liquid.density, ours, 3600);
    expect(toTheEnd.vessel).toBeCloseTo(vesselLiquid(source.vessel!, 3e5, source.ambient), 12);
    expect(toTheEnd.pumping).toBe(false);
  });
});

describe('whatever a floor is', () => {
  const odd = (low: number, high: number) =>
    fc.oneof(
      fc.constantFrom(low, high),
      fc.double({ min: Math.log(Math.max(low, 1e-12)), max: Math.log(high), noNaN: true }).map(Math.exp),
    );
  const oddLane = fc.record({
    tag: fc.constant('odd'),
    kv: odd(1e-9, 1e3),
    kvSlow: odd(1e-9, 1e3),
    pulses: odd(1, 1e9),
    preset: odd(0, 1e7),
    changeOver: odd(0, 1e7),
    delay: odd(0, 10),
    closing: odd(0, 10),
    afterDrip: odd(0, 1e-3),
    phase: odd(0, 1e-3),
    outlet: fc.double({ min: -50, max: 50, noNaN: true }),
  });
  const oddTank = fc.record({
    area: fc.oneof(odd(1e-9, 1e4), fc.constant(Number.POSITIVE_INFINITY)),
    usable: fc.oneof(odd(0, 1e3), fc.constant(Number.POSITIVE_INFINITY)),
    makeUp: odd(0, 10),
  });
  const height = fc.double({ min: -100, max: 1000, noNaN: true });
  const oddCurve = fc.record({
    shutOffHead: odd(0, 1e4),
    factor: odd(0, 1e12),
    exponent: fc.double({ min: 0.3, max: 6, noNaN: true }),
    residual: fc.constant(0),
  });
  const oddVessel = fc.record({
    volume: odd(1e-9, 10),
    precharge: odd(1, 1e7),
    cutIn: odd(0, 1e7),
    cutOut: odd(0, 1e7),
  });
  const oddSource = fc.oneof(
    fc
      .record({
        kind: fc.constant('main' as const),
        static: odd(0, 1e7),
        residual: odd(0, 1e7),
        testFlow: odd(1e-9, 10),
        exponent: fc.constantFrom(1.85, 2),
        height,
      })
      .map((main) => ({ ...main, residual: Math.min(main.residual, main.static) })),
    fc.record({ kind: fc.constant('gravity' as const), surface: height, tank: oddTank }),
    fc.record({
      kind: fc.constant('reading' as const),
      curve: fc.record({ shutOffPressure: odd(0, 1e8), factor: odd(0, 1e15), residual: fc.constant(0) }),
    }),
    fc.record(
      {
        kind: fc.constant('pumped' as const),
        curve: oddCurve,
        speedRatio: odd(0, 5),
        suction: height,
        height,
        tank: oddTank,
        regulator: fc.oneof(odd(0, 1e7), fc.constant(Number.POSITIVE_INFINITY)),
        ambient: odd(1e4, 2e5),
        vessel: oddVessel,
      },
      { requiredKeys: ['kind', 'curve', 'speedRatio', 'suction', 'height', 'tank', 'regulator', 'ambient'] },
    ),
  );
  const oddPiece = fc.oneof(
    fc.record({
      kind: fc.constant('pipe' as const),
      bore: odd(1e-6, 10),
      length: odd(0, 1e5),
      roughness: odd(0, 1e-2),
      kSum: odd(0, 1e6),
    }),
    fc.record({ kind: fc.constant('valve' as const), kv: odd(1e-9, 1e5) }),
    fc.record({ kind: fc.constant('constant' as const), loss: odd(0, 1e7) }),
  );
  const rising = fc.boolean();
  const oddSystem = fc
    .record({
      liquid: fc.record({ density: odd(1, 2e4), viscosity: odd(1e-6, 1e3) }),
      source: oddSource,
      run: fc.array(oddPiece, { maxLength: 4 }),
      manifold: height,
      lanes: fc.array(oddLane, { minLength: 1, maxLength: 8 }),
      rising,
    })
    .map(({ rising: covered, lanes, ...rest }): FillSystem => {
      return {
        ...rest,
        lanes: covered
          ? lanes.map((lane) => ({ ...lane, levelAt: (v) => lane.outlet - 0.01 + v / 0.005 }))
          : lanes,
      } as FillSystem;
    });

  it('a row ends or is stuck without a figure that is none or a flow that runs back', () => {
    fc.assert(
      fc.property(oddSystem, (system) => {
        const row = fillRow(system, startStored(system.source));
        if ('stuck' in row) return;
        for (const lane of row.lanes) {
          for (const figure of [lane.countTime, lane.fillTime, lane.volume, lane.afterRun, lane.flowAtEnd]) {
            expect(Number.isFinite(figure)).toBe(true);
            expect(figure).toBeGreaterThanOrEqual(0);
          }
        }
        expect(Number.isFinite(row.stored.drawn) && row.stored.drawn >= 0).toBe(true);
        expect(Number.isFinite(row.stored.vessel) && row.stored.vessel >= 0).toBe(true);
        const rest = restStored(system.source, system.liquid.density, row.stored, 30);
        expect(Number.isFinite(rest.drawn) && rest.drawn >= 0).toBe(true);
        expect(Number.isFinite(rest.vessel) && rest.vessel >= 0).toBe(true);
      }),
      { seed: 5, numRuns: Number(process.env.PHYSICS_ODD ?? 500), endOnFailure: true },
    );
  }, 120_000);
});
