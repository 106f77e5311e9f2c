import { AnalysisStatistic, InitHydOption, NodeProperty, Project, Workspace } from 'epanet-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balance, conductance, offset } from '../../src/hydraulics/balance.ts';
import type { FillSystem, RunPiece } from '../../src/hydraulics/system.ts';
import { systems } from './systems.ts';

/**
 * Steady flows against the EPANET engine 2.3 from npm, which shares nothing with ours but Darcy and Weisbach.
 * The engine takes 32.2 ft/s2 (0.08 % of a head) and Swamee-Jain in place of Colebrook-White: +1.6 to 3.4 % of the friction at
 * Re 4 000, below 1 % from 20 000 (computed), which is half of that in a flow that friction alone decides.
 */
const workspace = new Workspace();
await workspace.loadModule();

/** Kv as an emitter, L/s at 1 m of head. */
const emitter = (kv: number): number => (kv / 3.6) * Math.sqrt(0.0980665);

/** A valve as a minor loss on a short wide pipe: K = 1.6e9 D^4/Kv^2 (D in m). */
const short = { bore: 0.05, length: 1e-3 };
/** mm; the engine takes no pipe without roughness. */
const rough = (roughness: number): number => Math.max(1e-6, roughness * 1000);
const pieceRow = (piece: RunPiece, i: number): string => {
  const ends = `p${i} j${i} j${i + 1}`;
  if (piece.kind === 'pipe')
    return `${ends} ${piece.length} ${piece.bore * 1000} ${rough(piece.roughness)} ${piece.kSum.toFixed(9)}`;
  if (piece.kind === 'valve')
    return `${ends} ${short.length} ${short.bore * 1000} ${rough(0)} ${(1.6e9 * short.bore ** 4) / piece.kv ** 2}`;
  throw new Error('the engine has no constant loss');
};

const fileOf = (system: FillSystem): string => {
  const { source, run, liquid, manifold, lanes } = system;
  const last = run.length;
  const rows: Record<string, string[]> = { RESERVOIRS: [], PIPES: [], PUMPS: [], CURVES: [] };
  if (source.kind === 'gravity') {
    rows.RESERVOIRS?.push(`r ${source.surface}`);
    rows.PIPES?.push('start r j0 0.001 1000 1e-6 0');
  } else if (source.kind === 'pumped') {
    const { shutOffHead, factor, exponent } = source.curve;
    const middle = 0.4 * (shutOffHead / factor) ** (1 / exponent);
    rows.RESERVOIRS?.push(`r ${source.suction}`);
    rows.PUMPS?.push(`start r j0 HEAD c SPEED ${source.speedRatio}`);
    for (const flow of [0, middle, 2 * middle])
      rows.CURVES?.push(`c ${flow * 1000} ${shutOffHead - factor * flow ** exponent}`);
  } else throw new Error(source.kind);
  rows.PIPES?.push(...run.map(pieceRow), ...lanes.map((_, i) => `q${i} j${last} l${i} 0.001 1000 1e-6 0`));
  return [
    '[JUNCTIONS]',
    ...Array.from({ length: last + 1 }, (_, i) => `j${i} ${manifold}`),
    ...lanes.map((lane, i) => `l${i} ${lane.outlet}`),
    ...Object.entries(rows).flatMap(([name, list]) => [`[${name}]`, ...list]),
    '[EMITTERS]',
    ...lanes.map((lane, i) => `l${i} ${emitter(lane.kv)}`),
    '[OPTIONS]',
    'Units LPS',
    'Headloss D-W',
    `Viscosity ${liquid.viscosity / liquid.density}`,
    'Accuracy 1e-7',
    'Trials 500',
    '[END]',
    '',
  ].join('\n');
};

/** Flows of the lanes; none where the engine did not come to an end. */
const engineFlows = (system: FillSystem): number[] | undefined => {
  const project = new Project(workspace);
  workspace.writeFile('net.inp', fileOf(system));
  project.open('net.inp', 'report.rpt', 'out.bin');
  project.openH();
  project.initH(InitHydOption.InitFlow);
  const warn = console.warn;
  // what it warns of here, an end not reached, is read from its own figure
  console.warn = () => {};
  project.runH();
  console.warn = warn;
  const ended = project.getStatistic(AnalysisStatistic.RelativeError) < 1e-6;
  const flows = system.lanes.map(
    (_, i) => project.getNodeValue(project.getNodeIndex(`l${i}`), NodeProperty.Demand) / 1000,
  );
  project.close();
  return ended ? flows : undefined;
};

const leastReynolds = (system: FillSystem, flow: number): number =>
  Math.min(
    ...system.run.map((piece) =>
      piece.kind === 'pipe'
        ? (4 * flow * system.liquid.density) / (Math.PI * piece.bore * system.liquid.viscosity)
        : Number.POSITIVE_INFINITY,
    ),
  );

describe.each(['gravity still', 'pumped still'] as const)('the EPANET engine, %s', (kind) => {
  it('gives each of 1 to 8 lanes the same flow within 0.5 % where the run is turbulent, else within 2 %', () => {
    let turbulent = 0;
    fc.assert(
      fc.property(systems(kind), (drawn) => {
        const system = {
          ...drawn,
          run: drawn.run.filter((piece) => piece.kind !== 'constant'),
          lanes: drawn.lanes.map(({ levelAt: _, ...lane }) => lane),
        };
        const { density } = system.liquid;
        const openings = system.lanes.map((lane) => ({
          conductance: conductance(lane.kv, density),
          offset: offset(system.manifold, lane.outlet, density),
        }));
        const ours = balance(system, openings, { drawn: 0 });
        const isTurbulent = leastReynolds(system, ours.flow) > 1e4;
        // a lane whose jet lies just below what the manifold reaches turns 0.1 % of its pressure into any share of its flow
        const even = ours.flow / system.lanes.length;
        const engine = engineFlows(system);
        fc.pre(engine !== undefined);
        if (isTurbulent) turbulent += 1;
        engine.forEach((theirs, i) => {
          const { conductance: c, offset: o } = openings[i]!;
          const flow = c * Math.sqrt(Math.max(0, ours.pressure + o));
          expect(
            Math.abs(flow - theirs) / Math.max(theirs, even),
            `lane ${i}: ${flow} here, ${theirs} there`,
          ).toBeLessThan(isTurbulent ? 5e-3 : 2e-2);
        });
      }),
      { seed: 31, numRuns: 80, endOnFailure: true },
    );
    expect(turbulent).toBeGreaterThan(20);
  });
});
