import type { Book } from '../../../book/index.ts';
import { conductorIecSheet } from '../../../sheets/power/conductor-iec.ts';
import { conductorUsSheet } from '../../../sheets/power/conductor-us.ts';
import { energyShiftSheet } from '../../../sheets/power/energy-shift.ts';
import { standardDeviceSheet } from '../../../sheets/power/standard-device.ts';
import { unbalanceDeratingSheet } from '../../../sheets/power/unbalance-derating.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Draw } from '../need.ts';
import { shiftTime } from '../shift-time.ts';
import { faultByPoints } from './fault.ts';
import { feederDemand, feederRunning, machineSupplyUs, motorCurrent } from './machine-load.ts';
import { motorHere } from './motor-here.ts';
import { ampacityEdition, rulesOf } from './rule-set.ts';
import { largestDrive } from './supply-voltage.ts';
import { voltageUnbalance } from './voltage-unbalance.ts';

/** Motors of small machines, where nobody gave it; memory. */
const usualEfficiency = 0.8;

/** Conductor by the rules where none is declared: an aid for the check, not a design. */
const conductorAid = (c: Calculation): Known<string> | undefined => {
  const path = `${c.floorPath}/power/feeder`;
  const rules = rulesOf(c);
  const ambient = c.numberOr(`${path}/ambient`, 'temperature', 303.15);
  if (rules === undefined) return undefined;
  return rules === 'us'
    ? c.run(conductorUsSheet, {
        current: feederDemand(c),
        load: { value: 'ampacity-as-given', from: { path: '/agreement/electrical/ruleSet' } },
        insulation: c.wordOr<'60' | '75' | '90'>(`${path}/rated`, '75'),
        terminals: c.wordOr<'60' | '75'>(`${path}/terminals`, '75'),
        ambient,
        conductors: c.plain(`${path}/grouped`, 3)!,
        edition: ampacityEdition(c),
      })?.size
    : c.run(conductorIecSheet, {
        current: feederDemand(c),
        protection: {
          value: 'circuit-breaker',
          from: { path: `${c.floorPath}/power/protection`, assumed: true },
        },
        method: c.wordOr<'b2-multicore'>(`${path}/method`, 'b2-multicore'),
        ambient,
        circuits: c.plain(`${path}/grouped`, 1)!,
      })?.size;
};

/**
 * Device at the head of the feeder. Before a transformer the rules of the machine's own supply don't reach: there it is the
 * standard rating next above what the feeder must carry.
 */
const deviceAid = (c: Calculation): Known | undefined => {
  const stepped = c.book.floors![c.floor]!.power?.stepTransformer !== undefined;
  if (rulesOf(c) === 'us') {
    return stepped
      ? c.run(standardDeviceSheet, {
          current: feederDemand(c),
          list: { value: 'us-breaker', from: { path: `${c.floorPath}/power/protection`, assumed: true } },
          rounding: { value: 'up', from: { path: `${c.floorPath}/power/protection`, assumed: true } },
        })?.rating
      : machineSupplyUs(c)?.deviceRating;
  }
  return c.run(conductorIecSheet, {
    current: feederDemand(c),
    protection: {
      value: 'circuit-breaker',
      from: { path: `${c.floorPath}/power/protection`, assumed: true },
    },
    method: c.wordOr<'b2-multicore'>(`${c.floorPath}/power/feeder/method`, 'b2-multicore'),
  })?.rating;
};

const energy = (c: Calculation): Known | undefined => {
  const drives = (c.book.line?.drives ?? []).map((_, i) => `/line/drives/${i}`);
  const heaters = (c.book.line?.heaters ?? []).flatMap((heater, i) =>
    heater.kind === undefined || heater.kind === 'electric' ? [`/line/heaters/${i}`] : [],
  );
  const plate = (path: string): Known | undefined => c.needed(`${path}/power`, 'power');
  return c.run(energyShiftSheet, {
    hours: shiftTime(c),
    motorPower: drives.map((path) => c.number(`${path}/shaftPower`, 'power') ?? plate(path)),
    loadFactor: drives.map((path) => ({ value: 1, from: { path: `${path}/shaftPower` } })),
    efficiency: drives.map((path) => c.numberOr(`${path}/efficiency`, 'ratio', usualEfficiency)),
    motorDuty: drives.map((path) => c.numberOr(`${path}/duty`, 'ratio', 1)),
    heaterPower: heaters.map(plate),
    heaterDuty: heaters.map((path) => ({ value: 1, from: { path, assumed: true } })),
  })?.energy;
};

/** Share of its plate that a motor may give at the unbalance that was read. */
const derating = (c: Calculation): Known | undefined => {
  const largest = largestDrive(c);
  return c.run(unbalanceDeratingSheet, {
    unbalance: voltageUnbalance(c)?.nema,
    power: largest === undefined ? undefined : c.needed(`${largest}/power`, 'power'),
  })?.factor;
};

/** Figures of the power that nothing is held against. */
export const powerDraws = (book: Book): readonly Draw[] => {
  const { drives = [], heaters = [], loads = [] } = book.line ?? {};
  if (drives.length + heaters.length + loads.length === 0) return [];
  const utility = 'power';
  return [
    { id: 'runningCurrent', utility, kind: 'current', answer: feederRunning },
    {
      id: 'apparentPower',
      utility,
      kind: 'apparentPower',
      answer: (c) => machineSupplyUs(c)?.apparentPower,
    },
    { id: 'energyShift', utility, kind: 'energy', answer: energy },
    { id: 'feederSizeAid', utility, kind: 'conductorArea', answer: conductorAid },
    { id: 'protectionAid', utility, kind: 'current', answer: deviceAid },
    { id: 'faultByPoints', utility, kind: 'current', answer: faultByPoints },
    { id: 'unbalanceDerating', utility, kind: 'ratio', answer: derating },
    ...drives.flatMap((drive, i): Draw[] => [
      { id: 'motorCurrent', of: drive.tag, utility, kind: 'current', answer: (c) => motorCurrent(c, i) },
      ...(drive.inverter === true
        ? []
        : [
            {
              id: 'speedRatio',
              of: drive.tag,
              utility,
              kind: 'ratio',
              answer: (c) => motorHere(c, i)?.speedRatio,
            } satisfies Draw,
            {
              id: 'voltsPerHertz',
              of: drive.tag,
              utility,
              kind: 'ratio',
              answer: (c) => motorHere(c, i)?.flux,
            } satisfies Draw,
          ]),
    ]),
  ];
};
