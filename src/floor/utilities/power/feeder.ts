import { ampacityIecSheet } from '../../../sheets/power/ampacity-iec.ts';
import { ampacityUsSheet } from '../../../sheets/power/ampacity-us.ts';
import { iecSizes } from '../../../sheets/power/iec-conductors.ts';
import { impedanceUsSheet } from '../../../sheets/power/impedance-us.ts';
import { largestStartSheet } from '../../../sheets/power/largest-start.ts';
import { parallelConductorsSheet } from '../../../sheets/power/parallel-conductors.ts';
import { resistanceIecSheet } from '../../../sheets/power/resistance-iec.ts';
import { startingCurrentSheet } from '../../../sheets/power/starting-current.ts';
import { usSizes } from '../../../sheets/power/us-conductors.ts';
import { voltageDropSheet } from '../../../sheets/power/voltage-drop.ts';
import { wireGaugeSheet } from '../../../sheets/power/wire-gauge.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { UtilityLever } from '../need.ts';
import { feederRunning, motorCurrents, onFloorSide } from './machine-load.ts';
import { ampacityEdition, rulesOf } from './rule-set.ts';

const usualPowerFactor = 0.85;
/** Of a cable of low voltage, 0.08 mohm/m: IEC 60364-5-52 annex G. */
const usualReactance = 0.08e-3;
const startPowerFactor = 0.3;

/** Size as the tables write it: `16mm²` is `16 mm2`, `#4` and `4 awg` are `4 AWG`. */
export const sizeOf = (text: string): string => {
  const plain = text.trim().replace('²', '2').replace(/^#/, '');
  const found = /^([\d./]+)\s*(mm2|awg|kcmil|mcm)?$/i.exec(plain);
  if (found === null) return plain;
  const unit = { mm2: 'mm2', awg: 'AWG', kcmil: 'kcmil', mcm: 'kcmil' }[found[2]?.toLowerCase() ?? 'awg'];
  return `${found[1]} ${unit}`;
};

export const feederSize = (c: Calculation): Known<string> | undefined => {
  const size = c.neededWord(`${c.floorPath}/power/feeder/size`);
  return size === undefined ? undefined : { value: sizeOf(size.value), from: size.from };
};

/** Conductors that are parallel for each phase carry as many times as much. */
const parallelOf = (c: Calculation): Known => c.plain(`${c.floorPath}/power/feeder/parallel`, 1)!;

/** What the feeder may carry, as it is laid. */
export const feederAllowed = (c: Calculation): Known | undefined =>
  c.once('feederAllowed', (c) => {
    const path = `${c.floorPath}/power/feeder`;
    const rules = rulesOf(c);
    const size = feederSize(c);
    const parallel = parallelOf(c);
    if (rules === undefined) return undefined;
    if (c.book.floors![c.floor]!.power?.feeder?.material === 'aluminium') {
      c.miss(`${path}/material`);
      c.note('TABLES_ARE_COPPER');
      return undefined;
    }
    const ambient = c.numberOr(`${path}/ambient`, 'temperature', 303.15);
    const allowed =
      rules === 'us'
        ? c.run(ampacityUsSheet, {
            size,
            insulation: c.wordOr<'60' | '75' | '90'>(`${path}/rated`, '75'),
            terminals: c.wordOr<'60' | '75'>(`${path}/terminals`, '75'),
            ambient,
            conductors: c.plain(`${path}/grouped`, 3)!,
            edition: ampacityEdition(c),
          })?.allowed
        : c.run(ampacityIecSheet, {
            size,
            method: c.wordOr<'b2-multicore'>(`${path}/method`, 'b2-multicore'),
            ambient,
            circuits: c.plain(`${path}/grouped`, 1)!,
          })?.allowed;
    return parallel.value === 1
      ? allowed
      : c.run(parallelConductorsSheet, { each: allowed, parallel })?.allowed;
  });

/** Resistance and reactance of the feeder a metre, warm or cold. */
export const feederImpedance = (c: Calculation, temperature?: number) =>
  c.once(`feederImpedance ${temperature ?? ''}`, (c) => {
    const path = `${c.floorPath}/power/feeder`;
    const rules = rulesOf(c);
    const size = feederSize(c);
    if (rules === undefined || size === undefined) return undefined;
    const at: { temperature?: Known } =
      temperature === undefined ? {} : { temperature: { value: temperature, from: { path, assumed: true } } };
    if (rules === 'us') {
      return c.run(impedanceUsSheet, {
        size,
        conduit: c.wordOr<'pvc' | 'steel'>(`${path}/conduit`, 'steel'),
        frequency: c.needed(`${c.floorPath}/power/frequency`, 'frequency'),
        ...at,
      });
    }
    const resistance = c.run(resistanceIecSheet, { size, ...at })?.resistance;
    return resistance === undefined
      ? undefined
      : { resistance, reactance: { value: usualReactance, from: { path, assumed: true } } satisfies Known };
  });

const dropOf = (c: Calculation, current: Known | undefined, powerFactor: Known | undefined) => {
  const path = `${c.floorPath}/power`;
  const impedance = feederImpedance(c);
  return c.run(voltageDropSheet, {
    voltage: c.needed(`${path}/voltage`, 'voltage'),
    current,
    length: c.needed(`${path}/feeder/length`, 'length'),
    resistance: impedance?.resistance,
    reactance: impedance?.reactance,
    powerFactor,
    parallel: parallelOf(c),
  });
};

const usual = (c: Calculation, powerFactor: number): Known => ({
  value: powerFactor,
  from: { path: `${c.floorPath}/power/feeder`, assumed: true },
});

/** Drop along the feeder while everything runs. */
export const runningDrop = (c: Calculation) =>
  c.once('runningDrop', (c) => dropOf(c, feederRunning(c), usual(c, usualPowerFactor)));

/** Drop along the feeder while the largest motor that starts on the line itself does so, the others running. */
export const startingDrop = (c: Calculation) =>
  c.once('startingDrop', (c) => {
    const drives = c.book.line?.drives ?? [];
    const starts = motorCurrents(c).map((current, i): Known | undefined => {
      const drive = drives[i]!;
      if (drive.inverter === true) return current;
      const given = c.number(`/line/drives/${i}/startingCurrent`, 'current');
      if (given !== undefined || current === undefined) return given;
      c.assume(`/line/drives/${i}/startingCurrent`);
      const share = drive.starter === 'star-delta' ? 1 / 3 : 1;
      return c.run(startingCurrentSheet, {
        current,
        share: {
          value: share,
          from: { path: `/line/drives/${i}/starter`, assumed: drive.starter === undefined },
        },
      })?.start;
    });
    const largest = starts.reduce<Known | undefined>(
      (a, b) => (b !== undefined && (a === undefined || b.value > a.value) ? b : a),
      undefined,
    );
    const together = c.run(largestStartSheet, {
      running: feederRunning(c),
      start: onFloorSide(c, largest),
      runningFactor: usual(c, usualPowerFactor),
      startFactor: usual(c, startPowerFactor),
    });
    return dropOf(c, together?.phasors, together?.powerFactor);
  });

const squareMillimetre = 1e-6;

/** Area of metal of a size, for its place among the others. */
const areaOf = (size: string): number => {
  const metric = /^([\d.]+) mm2$/.exec(size);
  if (metric !== null) return Number(metric[1]) * squareMillimetre;
  return wireGaugeSheet.compute({ size }).area;
};

/** The next larger conductors of the rule set's own sizes. */
export const sizeLevers = (c: Calculation): readonly UtilityLever[] => {
  const rules = rulesOf(c);
  if (rules === undefined) return [];
  const path = `${c.floorPath}/power/feeder/size`;
  const sizes: readonly string[] = rules === 'us' ? usSizes : iecSizes;
  const now = feederSize(c);
  const place = now === undefined ? -1 : sizes.indexOf(now.value);
  return [
    {
      id: 'feederSize',
      path,
      kind: 'conductorArea',
      steps: () =>
        sizes.slice(place + 1).map((size) => ({
          patches: [{ path, value: size }],
          value: areaOf(size),
          text: size,
        })),
    },
  ];
};
