import { supplyToleranceSheet } from '../../../sheets/power/supply-tolerance.ts';
import { transformerVoltageSheet } from '../../../sheets/power/transformer-voltage.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { runningDrop } from './feeder.ts';
import { motorHere } from './motor-here.ts';
import { rulesOf } from './rule-set.ts';

/** Place of the motor whose plate stands for the line: the largest of those that the supply itself turns. */
export const largestDrive = (c: Calculation): string | undefined => {
  const drives = c.book.line?.drives ?? [];
  let best: { path: string; power: number } | undefined;
  const straight = drives.some(({ inverter }) => inverter !== true);
  for (const [i, { inverter }] of drives.entries()) {
    // an inverter gives its motor the voltage of the plate, whatever the supply is
    if (straight && inverter === true) continue;
    const power = c.number(`/line/drives/${i}/power`, 'power')?.value ?? 0;
    if (best === undefined || power > best.power) best = { path: `/line/drives/${i}`, power };
  }
  return best?.path;
};

/** Voltage that keeps the flux of the plate: on another frequency it goes with the frequency. */
export const rightVoltage = (c: Calculation): Known | undefined => {
  const frequency = c.needed(`${c.floorPath}/power/frequency`, 'frequency');
  const plate = largestDrive(c);
  if (plate === undefined) {
    c.miss('/line/drives');
    return undefined;
  }
  const voltage = c.needed(`${plate}/voltage`, 'voltage');
  const rated = c.number(`${plate}/frequency`, 'frequency');
  if (rated === undefined || frequency === undefined || rated.value === frequency.value) return voltage;
  return motorHere(c, Number(plate.split('/').at(-1)))?.rightVoltage;
};

/** Voltage at the machine while it runs: what the feeder leaves, through a transformer where there is one. */
const arrivingVoltage = (c: Calculation): Known | undefined => {
  const power = `${c.floorPath}/power`;
  const arrives = runningDrop(c)?.loadVoltage;
  if (c.book.floors![c.floor]!.power?.stepTransformer === undefined) return arrives;
  return c.run(transformerVoltageSheet, {
    voltage: arrives,
    primary:
      c.number(`${power}/stepTransformer/primary`, 'voltage') ?? c.needed(`${power}/voltage`, 'voltage'),
    secondary: c.needed(`${power}/stepTransformer/secondary`, 'voltage'),
  })?.secondary;
};

/** What is left of the tolerance of the plate once the feeder has taken its drop. */
export const voltageAnswer = (c: Calculation): Answer => {
  const rules = rulesOf(c);
  const plateVoltage = rightVoltage(c);
  const frequency = c.needed(`${c.floorPath}/power/frequency`, 'frequency');
  if (rules === undefined) return {};
  return {
    demand: { value: 0, from: { path: '/agreement/electrical/ruleSet', assumed: true } },
    have: c.run(supplyToleranceSheet, {
      plateVoltage,
      supplyVoltage: arrivingVoltage(c),
      plateFrequency: frequency,
      supplyFrequency: frequency,
      rule: {
        value: rules === 'us' ? 'nema-mg-1' : 'iec-60204-1',
        from: { path: '/agreement/electrical/ruleSet' },
      },
    })?.voltageLeft,
  };
};
