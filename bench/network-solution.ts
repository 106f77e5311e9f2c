import { InitHydOption, NodeProperty, Project, Workspace } from 'epanet-js';
import { balance, conductance, type Opening, offset } from '../src/hydraulics/balance.ts';
import { full } from '../src/hydraulics/supply.ts';
import type { FillSystem, Lane, Pipe } from '../src/hydraulics/system.ts';
import { standardGravity } from '../src/sheets/standard-gravity.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

/** A tank, two pipes in series, a manifold and four unequal lanes: what a floor of the demo book is. */
const water = { density: 999.5, viscosity: 1.2347e-3 };
const pipes: readonly Pipe[] = [
  { kind: 'pipe', bore: 0.0475, length: 16, roughness: 1.5e-5, kSum: 4.2 },
  { kind: 'pipe', bore: 0.0381, length: 6, roughness: 1.5e-5, kSum: 1.5 },
];
const kvs = [2.05, 1.98, 2.1, 1.94];
const manifold = 1.42;
const mouth = 1.3;

const lane = (kv: number, i: number): Lane => ({
  tag: `L${i}`,
  kv,
  kvSlow: kv,
  pulses: 4e5,
  preset: 800,
  changeOver: 800,
  delay: 0,
  closing: 0,
  afterDrip: 0,
  phase: 0,
  outlet: mouth,
});

const systemAt = (surface: number): FillSystem => ({
  liquid: water,
  source: {
    kind: 'gravity',
    surface,
    tank: { area: Number.POSITIVE_INFINITY, usable: Number.POSITIVE_INFINITY, makeUp: 0 },
  },
  run: pipes,
  manifold,
  lanes: kvs.map(lane),
});

/** A network ready to be solved, as the engine's is when its file is open. */
const opened = (surface: number): { readonly system: FillSystem; readonly openings: readonly Opening[] } => {
  const system = systemAt(surface);
  const openings = system.lanes.map(({ kv, outlet }) => ({
    conductance: conductance(kv, water.density),
    offset: offset(manifold, outlet, water.density),
  }));
  return { system, openings };
};

/** Kv in m3/h at 1 bar as an emitter in L/s at 1 m of head; the density drops out. */
const emitter = (kv: number): number => (kv / 3.6) * Math.sqrt((standardGravity * 1000) / 1e5);

const network = (surface: number): string => `[JUNCTIONS]
b ${manifold}
m ${manifold}
${kvs.map((_, i) => `l${i} ${mouth}`).join('\n')}
[RESERVOIRS]
r ${surface}
[PIPES]
p0 r b ${pipes[0]?.length} ${(pipes[0]?.bore ?? 0) * 1000} ${(pipes[0]?.roughness ?? 0) * 1000} ${pipes[0]?.kSum}
p1 b m ${pipes[1]?.length} ${(pipes[1]?.bore ?? 0) * 1000} ${(pipes[1]?.roughness ?? 0) * 1000} ${pipes[1]?.kSum}
${kvs.map((_, i) => `q${i} m l${i} 0.01 1000 0.001 0`).join('\n')}
[EMITTERS]
${kvs.map((kv, i) => `l${i} ${emitter(kv)}`).join('\n')}
[OPTIONS]
Units LPS
Headloss D-W
Viscosity ${((water.viscosity / water.density) * 1e6) / 1.0}
Accuracy 1e-8
Trials 200
[END]
`;

/** Networks that are solved between two looks at the clock. */
const inBlock = 50;

const surfaces = Array.from({ length: 1000 }, (_, i) => 3 + i / 400);
const networks = surfaces.map(opened);

/**
 * The same network in the EPANET engine and in ours, in the same process: engine open and filled before, only the
 * solution is timed, another surface each time. Both use Swamee-Jain (the bundle gives ours that formula) and both
 * their own tightest tolerance: 1e-8 of the flows there, 1e-13 here.
 */
export const networkRows = async (): Promise<readonly Row[]> => {
  const workspace = new Workspace();
  await workspace.loadModule();
  const project = new Project(workspace);
  workspace.writeFile('net.inp', network(surfaces[0] ?? 3));
  project.open('net.inp', 'report.rpt', 'out.bin');
  project.openH();
  const reservoir = project.getNodeIndex('r');
  const mouths = kvs.map((_, i) => project.getNodeIndex(`l${i}`));

  const engineTimes: number[] = [];
  const ourTimes: number[] = [];
  let worst = 0;
  // blocks by turns: the clock costs as much as a solution of ours, and a busy machine slows both alike
  const solveBlock = (from: number, timed: boolean): void => {
    const block = surfaces.slice(from, from + inBlock);
    const theirs: number[] = [];
    const start = performance.now();
    for (const surface of block) {
      project.setNodeValue(reservoir, NodeProperty.Elevation, surface);
      project.initH(InitHydOption.InitFlow);
      project.runH();
    }
    const between = performance.now();
    let own = 0;
    for (let i = from; i < from + block.length; i += 1) {
      const { system, openings } = networks[i]!;
      // a last step of 1e-5 leaves 1e-8 of the flow: the accuracy that the engine is asked for
      own += balance(system, openings, full, Number.NaN, 1e-5).flow;
    }
    const end = performance.now();
    if (timed) {
      engineTimes.push((1000 * (between - start)) / block.length);
      ourTimes.push((1000 * (end - between)) / block.length);
    }
    // the flows are compared apart, so that asking the engine for them is not timed
    for (const [i, surface] of block.entries()) {
      project.setNodeValue(reservoir, NodeProperty.Elevation, surface);
      project.initH(InitHydOption.InitFlow);
      project.runH();
      theirs.push(
        mouths.reduce((sum, node) => sum + project.getNodeValue(node, NodeProperty.Demand), 0) / 1000,
      );
      const { system, openings } = networks[from + i]!;
      worst = Math.max(worst, Math.abs(balance(system, openings, full).flow / theirs[i]! - 1));
    }
    if (!(own > 0)) throw new Error('nothing flowed');
  };
  const round = (timed: boolean): void => {
    for (let from = 0; from < surfaces.length; from += inBlock) solveBlock(from, timed);
  };
  // until both are as fast as they get
  for (let i = 0; i < 5; i += 1) round(false);
  round(true);
  project.closeH();
  project.close();

  const engine = spread(engineTimes);
  const own = spread(ourTimes);
  return [
    { what: 'steady network, EPANET engine', unit: 'us', ...engine },
    { what: 'steady network, ours', unit: 'us', ...own },
    {
      what: 'ours faster by',
      unit: 'times',
      median: engine.median / own.median,
      runs: own.runs,
      wanted: { figure: 'median', sense: 'over', bound: 10 },
    },
    {
      what: 'flows differ by at most',
      unit: '%',
      median: 100 * worst,
      runs: own.runs,
      wanted: { figure: 'median', sense: 'under', bound: 0.5 },
    },
  ];
};
