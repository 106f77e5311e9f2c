/** Random floors of every kind of source: everything of a floor is drawn from ranges that a shop floor could show. */
import fc from 'fast-check';
import type { FillSystem, Lane, Liquid, RunPiece, Source, Tank } from '../../src/hydraulics/system.ts';

const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: low, max: high, noNaN: true });

const liquids: fc.Arbitrary<Liquid> = fc.record({
  density: between(960, 1120),
  viscosity: fc.oneof(between(3e-4, 3e-3), between(3e-3, 3e-2)),
});

const pipes: fc.Arbitrary<RunPiece> = fc.record({
  kind: fc.constant('pipe' as const),
  bore: between(0.02, 0.08),
  length: between(0.2, 30),
  roughness: fc.constantFrom(0, 1.5e-6, 4.5e-5, 1.5e-4),
  kSum: between(0, 12),
});
const runs: fc.Arbitrary<readonly RunPiece[]> = fc
  .tuple(
    fc.array(pipes, { minLength: 0, maxLength: 3 }),
    fc.option(fc.record({ kind: fc.constant('valve' as const), kv: between(6, 60) }), { nil: undefined }),
    fc.option(fc.record({ kind: fc.constant('constant' as const), loss: between(0, 4e3) }), {
      nil: undefined,
      freq: 3,
    }),
  )
  .map(([list, valve, loss]) => [...list, ...(valve ? [valve] : []), ...(loss ? [loss] : [])]);

/** Level in a bottle of a body and a neck, against the volume in it: rises straight, then faster, without a step. */
const bottleLevel = (
  bottom: number,
  body: number,
  size: number,
  neck: number,
): ((volume: number) => number) => {
  const shoulder = 0.7 * size;
  return (volume) =>
    bottom + (volume <= shoulder ? volume / body : shoulder / body + (volume - shoulder) / neck);
};

export interface LaneChoice {
  readonly twoSpeeds: boolean;
  readonly covered: boolean;
}

const laneOf = (choice: LaneChoice): fc.Arbitrary<Omit<Lane, 'tag'>> =>
  fc
    .record({
      kv: between(0.4, 2.5),
      slow: between(0.15, 0.8),
      pulses: between(1e5, 4e6),
      size: between(3e-4, 2.5e-3),
      change: between(0.4, 0.98),
      delay: between(0, 0.12),
      closing: between(0, 0.3),
      afterDrip: fc.constantFrom(0, 1e-6, 3e-6),
      freeRunning: fc.boolean(),
      outlet: between(0.9, 1.3),
      body: between(0.004, 0.012),
      neck: between(0.001, 0.003),
    })
    .map((x) => {
      const preset = Math.max(20, Math.round(x.size * x.pulses));
      const lane = {
        kv: x.kv,
        kvSlow: choice.twoSpeeds ? x.kv * x.slow : x.kv,
        pulses: x.pulses,
        preset,
        changeOver: choice.twoSpeeds ? Math.max(1, Math.round(preset * x.change)) : preset,
        delay: x.delay,
        closing: x.closing,
        afterDrip: x.afterDrip,
        phase: x.freeRunning ? 1 / (2 * x.pulses) : 0,
        outlet: x.outlet,
      };
      return choice.covered
        ? { ...lane, levelAt: bottleLevel(x.outlet - 0.02, x.body, x.size, x.neck) }
        : lane;
    });

const rows: fc.Arbitrary<readonly Lane[]> = fc
  .record({
    count: fc.integer({ min: 1, max: 8 }),
    two: fc.boolean(),
    covered: fc.boolean(),
    alike: fc.boolean(),
  })
  .chain(({ count, two, covered, alike }) => {
    const one = laneOf({ twoSpeeds: two, covered });
    return fc
      .array(one, { minLength: count, maxLength: count })
      .map((list) =>
        list.map((lane, i) => ({ ...(alike && i < 3 ? list[0]! : lane), tag: `lane ${i + 1}` })),
      );
  });

export type TankChoice = 'still' | 'falling' | 'dry';

const tanks = (choice: TankChoice): fc.Arbitrary<Tank> => {
  switch (choice) {
    case 'still':
      return fc.constant({
        area: Number.POSITIVE_INFINITY,
        usable: Number.POSITIVE_INFINITY,
        makeUp: 0,
      });
    case 'falling':
      return fc.record({
        area: between(0.03, 0.6),
        usable: fc.constant(Number.POSITIVE_INFINITY),
        makeUp: fc.oneof(fc.constant(0), between(0, 1.5e-3)),
      });
    case 'dry':
      return fc.record({
        area: between(0.03, 0.6),
        usable: between(5e-4, 6e-3),
        makeUp: between(5e-5, 1e-3),
      });
  }
};

const pumpCurves = fc
  .record({ head: between(8, 45), runOut: between(1.5e-3, 8e-3), exponent: between(1.2, 2.8) })
  .map(({ head, runOut, exponent }) => ({
    shutOffHead: head,
    factor: head / runOut ** exponent,
    exponent,
    residual: 0,
  }));

export const sourceKinds = [
  'main',
  'reading',
  'gravity still',
  'gravity falling',
  'gravity dry',
  'pumped still',
  'pumped falling',
  'pumped dry',
  'regulated',
  'vessel',
  'vessel dry',
] as const;
export type SourceKind = (typeof sourceKinds)[number];

const tankIn = (kind: SourceKind): TankChoice =>
  kind.endsWith('dry') ? 'dry' : kind.endsWith('falling') ? 'falling' : 'still';

const sources = (kind: SourceKind): fc.Arbitrary<Source> => {
  switch (kind) {
    case 'main':
      return fc.record({
        kind: fc.constant('main' as const),
        static: between(1.2e5, 6e5),
        residual: between(0.4e5, 1.1e5),
        testFlow: between(5e-4, 4e-3),
        exponent: fc.constantFrom(1.85, 2),
        height: between(0, 2),
      });
    case 'reading':
      return fc.record({
        kind: fc.constant('reading' as const),
        curve: fc.record({
          shutOffPressure: between(1.5e4, 2.5e5),
          factor: fc.oneof(fc.constant(0), between(1e8, 2e11)),
          residual: fc.constant(0),
        }),
      });
    case 'gravity still':
    case 'gravity falling':
    case 'gravity dry':
      return fc.record({
        kind: fc.constant('gravity' as const),
        surface: between(2.4, 8),
        tank: tanks(tankIn(kind)),
      });
    default: {
      const withVessel = kind.startsWith('vessel');
      return fc
        .record({
          curve: pumpCurves,
          speedRatio: between(0.85, 1.2),
          suction: between(1, 3),
          height: between(0, 1.5),
          tank: tanks(tankIn(kind)),
          regulator: between(0.4e5, 2e5),
          regulated: fc.boolean(),
          size: between(3e-3, 0.05),
          precharge: between(0.5, 0.98),
          cutIn: between(0.3, 0.6),
          cutOut: between(1.2, 1.8),
        })
        .map((x) => {
          const { curve, speedRatio, suction, height, tank } = x;
          const top = speedRatio ** 2 * curve.shutOffHead * 9810;
          const cutIn = x.cutIn * top;
          const pumped = {
            kind: 'pumped' as const,
            curve,
            speedRatio,
            suction,
            height,
            tank,
            ambient: 101_325,
            regulator:
              kind === 'regulated' || (withVessel && x.regulated) ? x.regulator : Number.POSITIVE_INFINITY,
          };
          return withVessel
            ? {
                ...pumped,
                vessel: {
                  volume: x.size,
                  precharge: x.precharge * (cutIn + 101_325),
                  cutIn,
                  cutOut: cutIn * x.cutOut,
                },
              }
            : pumped;
        });
    }
  }
};

export const systems = (kind: SourceKind): fc.Arbitrary<FillSystem> =>
  fc
    .record({ liquid: liquids, source: sources(kind), run: runs, manifold: between(1, 1.8), lanes: rows })
    .map((system) => system);
