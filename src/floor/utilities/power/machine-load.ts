import { branchDeviceUsSheet } from '../../../sheets/power/branch-device-us.ts';
import { currentsTogetherSheet } from '../../../sheets/power/currents-together.ts';
import { heaterSheet } from '../../../sheets/power/heater.ts';
import { loadCurrentSheet } from '../../../sheets/power/load-current.ts';
import { machineSupplyUsSheet } from '../../../sheets/power/machine-supply-us.ts';
import { motorCurrentIecSheet } from '../../../sheets/power/motor-current-iec.ts';
import { motorCurrentUs, motorCurrentUsSheet } from '../../../sheets/power/motor-current-us.ts';
import { motorInputSheet } from '../../../sheets/power/motor-input.ts';
import { throughTransformerSheet } from '../../../sheets/power/through-transformer.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { rulesOf } from './rule-set.ts';

type SheetPhases = 'three-phase' | 'single-phase';

const phasesOf = (c: Calculation, path: string): Known<SheetPhases> => {
  const given = c.word<'1' | '3' | 'dc'>(`${path}/phases`);
  return given === undefined
    ? { value: 'three-phase', from: { path: `${path}/phases`, assumed: true } }
    : { value: given.value === '1' ? 'single-phase' : 'three-phase', from: given.from };
};

/** Voltage at which the machine runs: behind a transformer of its own, else that of the floor. */
export const machineVoltage = (c: Calculation): Known | undefined => {
  const power = `${c.floorPath}/power`;
  return c.book.floors![c.floor]!.power?.stepTransformer === undefined
    ? c.needed(`${power}/voltage`, 'voltage')
    : c.needed(`${power}/stepTransformer/secondary`, 'voltage');
};

/** Plates are read at the system voltage too: 460 V of the plate on 480 V of the system. */
const nearPlate = (plate: number, system: number): boolean => Math.abs(plate / system - 1) <= 0.1;

/**
 * Current of a motor for wires and devices: by US rules that of the table, where its rating and voltage stand there, else
 * that of its nameplate; by IEC that of the nameplate, else what its efficiency and power factor make, else a typical one.
 */
export const motorCurrent = (c: Calculation, index: number): Known | undefined =>
  c.once(`motorCurrent ${index}`, (c) => {
    const path = `/line/drives/${index}`;
    const drive = c.book.line!.drives![index]!;
    const power = c.needed(`${path}/power`, 'power');
    const voltage = machineVoltage(c);
    const phases = phasesOf(c, path);
    const rules = rulesOf(c);
    if (power === undefined || voltage === undefined || rules === undefined) return undefined;
    if (rules === 'us' && motorCurrentUs(power.value, voltage.value, phases.value) !== undefined) {
      return c.run(motorCurrentUsSheet, { power, voltage, phases })?.current;
    }
    if (drive.current !== undefined) {
      const plate = c.number(`${path}/voltage`, 'voltage');
      // on another voltage at another frequency the same flux, and so the same current, is what makes the plate hold
      if (plate !== undefined && !nearPlate(plate.value, voltage.value)) c.note('PLATE_AT_OTHER_VOLTAGE');
      return c.needed(`${path}/current`, 'current');
    }
    if (drive.efficiency !== undefined && drive.powerFactor !== undefined) {
      return c.run(motorInputSheet, {
        shaftPower: power,
        voltage,
        efficiency: c.needed(`${path}/efficiency`, 'ratio'),
        powerFactor: c.needed(`${path}/powerFactor`, 'ratio'),
        phases,
      })?.current;
    }
    if (rules === 'us' || !nearPlate(400, voltage.value)) {
      c.miss(`${path}/current`);
      return undefined;
    }
    c.assume(`${path}/current`);
    return c.run(motorCurrentIecSheet, { power })?.highest;
  });

/** Currents of everything that heats, at the voltage of the machine. */
export const heaterCurrents = (c: Calculation): readonly (Known | undefined)[] =>
  c.once('heaterCurrents', (c) =>
    (c.book.line?.heaters ?? []).flatMap((heater, i) => {
      if (heater.kind !== undefined && heater.kind !== 'electric') return [];
      const path = `/line/heaters/${i}`;
      const supplyVoltage = machineVoltage(c);
      return [
        c.run(heaterSheet, {
          power: c.needed(`${path}/power`, 'power'),
          ratedVoltage: c.needed(`${path}/voltage`, 'voltage'),
          supplyVoltage,
          phases: phasesOf(c, path),
        })?.current,
      ];
    }),
  );

const otherCurrents = (c: Calculation): readonly (Known | undefined)[] =>
  (c.book.line?.loads ?? []).map((load, i) => {
    const path = `/line/loads/${i}`;
    if (load.current !== undefined) return c.needed(`${path}/current`, 'current');
    return c.run(loadCurrentSheet, {
      power: c.needed(`${path}/power`, 'power'),
      voltage: machineVoltage(c),
      phases: phasesOf(c, path),
    })?.current;
  });

export const motorCurrents = (c: Calculation): readonly (Known | undefined)[] =>
  c.once('motorCurrents', (c) => (c.book.line?.drives ?? []).map((_, i) => motorCurrent(c, i)));

/** Before the step transformer, where there is one: what the floor gives. */
export const onFloorSide = (c: Calculation, current: Known | undefined): Known | undefined => {
  const power = `${c.floorPath}/power`;
  if (c.book.floors![c.floor]!.power?.stepTransformer === undefined) return current;
  return c.run(throughTransformerSheet, {
    current,
    secondary: c.needed(`${power}/stepTransformer/secondary`, 'voltage'),
    primary: c.needed(`${power}/voltage`, 'voltage'),
  })?.current;
};

/** Everything that runs, at the voltage of the machine. */
export const machineRunning = (c: Calculation): Known | undefined =>
  c.once(
    'machineRunning',
    (c) =>
      c.run(currentsTogetherSheet, {
        currents: [...motorCurrents(c), ...heaterCurrents(c), ...otherCurrents(c)],
      })?.current,
  );

/** Supply of the machine by US rules, at its own voltage. */
export const machineSupplyUs = (c: Calculation) =>
  c.once('machineSupplyUs', (c) => {
    const motors = motorCurrents(c);
    const devices = motors.map(
      (current) =>
        c.run(branchDeviceUsSheet, {
          current,
          motor: { value: 'polyphase', from: { path: '/line/drives', assumed: true } },
          device: { value: 'inverse-time-breaker', from: { path: '/line/drives', assumed: true } },
        })?.rating,
    );
    return c.run(machineSupplyUsSheet, {
      voltage: machineVoltage(c),
      motors,
      devices,
      heating: c.run(currentsTogetherSheet, { currents: heaterCurrents(c) })?.current,
      apparatus: c.run(currentsTogetherSheet, { currents: otherCurrents(c) })?.current,
    });
  });

/** Current for which the feeder must be laid, on the side of the floor: with the rule set's own allowance. */
export const feederDemand = (c: Calculation): Known | undefined =>
  c.once('feederDemand', (c) => {
    const rules = rulesOf(c);
    if (rules === undefined) return undefined;
    return onFloorSide(c, rules === 'us' ? machineSupplyUs(c)?.ampacity : machineRunning(c));
  });

export const feederRunning = (c: Calculation): Known | undefined =>
  c.once('feederRunning', (c) => onFloorSide(c, machineRunning(c)));
