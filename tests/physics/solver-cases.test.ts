import { describe, expect, it } from 'vitest';
import { fillRow } from '../../src/hydraulics/fill-row.ts';
import { startStored } from '../../src/hydraulics/stored.ts';
import type { FillSystem, Lane, Pumped } from '../../src/hydraulics/system.ts';
import { oracleRow } from './oracle.ts';
import { floorOf, gravityFrom, laneTo, stillTank } from './rig.ts';

/**
 * Fixed rows, computed with a general ODE solver apart from this project: SciPy 1.17, solve_ivp with DOP853 and its own
 * events, rtol 1e-11, the balance by brentq, Colebrook-White by brentq. Each lane: count time s, volume m3, flow m3/s.
 */
const lane = (volume: number, kv: number, rest: Partial<Lane> = {}): Lane =>
  laneTo(volume, kv, { delay: 0.06, closing: 0.1, afterDrip: 1e-6, outlet: 1.2, ...rest });

const floor = (source: FillSystem['source'], lanes: readonly Lane[]): FillSystem =>
  floorOf({
    source,
    lanes,
    manifold: 1.45,
    run: [{ kind: 'pipe', bore: 0.0254, length: 12, roughness: 1e-5, kSum: 4 }],
  });

const pump = (head: number, runOut: number, exponent: number, rest: Partial<Pumped>): Pumped => ({
  kind: 'pumped',
  curve: { shutOffHead: head, factor: head / runOut ** exponent, exponent, residual: 0 },
  speedRatio: 1,
  suction: 0.8,
  height: 0.3,
  tank: stillTank,
  regulator: Number.POSITIVE_INFINITY,
  ambient: 101_325,
  ...rest,
});

const rising = (volume: number): number => 1.1 + volume / 0.006;

const cases: readonly {
  readonly name: string;
  readonly system: FillSystem;
  readonly lanes: readonly (readonly [time: number, volume: number, flow: number])[];
  readonly drawn?: number;
  readonly vessel?: number;
}[] = [
  {
    name: 'a falling tank with make-up and one lane of two speeds',
    system: floor(gravityFrom(2.6, { area: 0.08, makeUp: 2e-4 }), [
      lane(0.002, 1.9, { kvSlow: 0.6, changeOver: 0.0018 * 1e9 }),
      lane(0.0021, 1.7, { outlet: 1.25 }),
      lane(0.0015, 2.1),
    ]),
    lanes: [
      [15.5793556, 0.00200768421, 6.07655678e-5],
      [15.4920863, 0.00211835948, 0.000157813464],
      [9.41574209, 0.00151843641, 0.00015851282],
    ],
    drawn: 0.00252860898,
  },
  {
    name: 'a town main behind bottom-up nozzles',
    system: floor(
      { kind: 'main', static: 3e5, residual: 1e5, testFlow: 1.2e-3, exponent: 1.85, height: 0.5 },
      [lane(0.002, 1.9, { levelAt: rising }), lane(0.0022, 1.5, { levelAt: rising }), lane(0.002, 0.9)],
    ),
    lanes: [
      [4.10195345, 0.00205439259, 0.000485387198],
      [5.26440631, 0.00225943549, 0.000531231729],
      [6.93523362, 0.00204542913, 0.000403901225],
    ],
  },
  {
    name: 'a pump from a small tank that falls',
    system: floor(pump(14, 2.5e-3, 2.1, { tank: { ...stillTank, area: 0.05, makeUp: 1e-4 } }), [
      lane(0.002, 1.9),
      lane(0.0018, 2.2),
    ]),
    lanes: [
      [4.05159657, 0.00206358929, 0.00056899359],
      [3.26882172, 0.00186150415, 0.000550037771],
    ],
    drawn: 0.00351993379,
  },
  {
    name: 'a vessel whose pump starts and stops',
    system: floor(
      pump(32, 1.1e-3, 1.9, {
        tank: { ...stillTank, area: 0.4, makeUp: 2e-4 },
        vessel: { volume: 0.012, precharge: 2.3e5, cutIn: 1.5e5, cutOut: 2.4e5 },
      }),
      [lane(0.004, 1.9), lane(0.005, 1.4)],
    ),
    lanes: [
      [6.89734679, 0.00405985525, 0.000535047699],
      [11.3954595, 0.0050540632, 0.000482392682],
    ],
    drawn: 0.00523155835,
    vessel: 0.00178404751,
  },
  {
    name: 'a wide tank whose make-up comes to what the last lane takes',
    system: floor(gravityFrom(2.6, { area: 0.3, usable: 0.003, makeUp: 3e-4 }), [
      lane(0.002, 1.9, { outlet: 1.22 }),
      lane(0.0019, 1.7, { outlet: 1.25 }),
    ]),
    lanes: [
      [11.9677627, 0.00201938076, 0.000167097817],
      [12.800279, 0.0019190999, 0.000164544554],
    ],
    drawn: 9.83969745e-5,
  },
  {
    name: 'a tank that runs dry, with lanes at two heights',
    system: floor(gravityFrom(2.6, { area: 0.3, usable: 0.0015, makeUp: 1.2e-4 }), [
      lane(0.002, 1.9, { outlet: 1.22 }),
      lane(0.0017, 1.7, { outlet: 1.221 }),
    ]),
    lanes: [
      [18.3333333, 0.0020142, 0.00012],
      [17.522956395, 0.00170722213, 5.65648197e-5],
    ],
    drawn: 0.0015,
  },
];

describe.each(cases)('$name', ({ system, lanes, drawn, vessel }) => {
  const start = startStored(system.source);
  const off = (ours: number, theirs: number): number => Math.abs(ours / theirs - 1);

  it('fills as the general solver says, within 1e-5', () => {
    const row = fillRow(system, start);
    if ('stuck' in row) throw new Error('stuck');
    lanes.forEach(([time, volume, flow], i) => {
      expect(off(row.lanes[i]!.countTime, time), 'time').toBeLessThan(1e-5);
      expect(off(row.lanes[i]!.volume, volume), 'volume').toBeLessThan(1e-6);
      expect(off(row.lanes[i]!.flowAtEnd, flow), 'flow').toBeLessThan(1e-5);
    });
    if (drawn !== undefined) expect(off(row.stored.drawn, drawn), 'drawn').toBeLessThan(1e-5);
    if (vessel !== undefined) expect(off(row.stored.vessel, vessel), 'vessel').toBeLessThan(1e-5);
  });

  it('is what the second solution of these tests says too, within 1e-6', () => {
    const row = oracleRow(system, start);
    lanes.forEach(([time, volume, flow], i) => {
      expect(off(row.lanes[i]!.countTime, time), 'time').toBeLessThan(1e-6);
      expect(off(row.lanes[i]!.volume, volume), 'volume').toBeLessThan(1e-6);
      expect(off(row.lanes[i]!.flowAtEnd, flow), 'flow').toBeLessThan(1e-6);
    });
  });
});
