import { deratedPlateSheet } from '../../../sheets/power/derated-plate.ts';
import { type FiftyHertzSupply, motorOn50HzSheet } from '../../../sheets/power/motor-on-50-hz.ts';
import { surroundingsDeratingSheet } from '../../../sheets/power/surroundings-derating.ts';
import { unbalanceDeratingSheet } from '../../../sheets/power/unbalance-derating.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { machineVoltage } from './machine-load.ts';
import { motorHere } from './motor-here.ts';
import { betweenLines, voltageUnbalance } from './voltage-unbalance.ts';

/** What a plate holds for. */
const plateAmbient = 313.15;

const powerOf = (c: Calculation, index: number): Known | undefined =>
  c.needed(`/line/drives/${index}/power`, 'power');

/** Share of its plate that the heat of the hall and the altitude leave a motor. */
export const surroundingsShare = (c: Calculation): Known | undefined =>
  c.once('surroundingsShare', (c) => {
    const room = `${c.floorPath}/room`;
    return c.run(surroundingsDeratingSheet, {
      ambient:
        c.number(`${room}/highest`, 'temperature') ??
        c.numberOr(`${room}/ambient`, 'temperature', plateAmbient),
      altitude: c.numberOr(`${room}/altitude`, 'length', 0),
    })?.factor;
  });

/** What the unbalance that was read last leaves it; taken as even where nobody has read it. */
const unbalanceShare = (c: Calculation, index: number): Known | undefined => {
  if (betweenLines(c) === undefined) {
    const path = `${c.floorPath}/power/readings`;
    c.assume(path);
    return { value: 1, from: { path, assumed: true } };
  }
  return c.run(unbalanceDeratingSheet, {
    unbalance: voltageUnbalance(c)?.nema,
    power: powerOf(c, index),
  })?.factor;
};

/** Voltages of a plate at 60 Hz of which a table says what is left at 50 Hz, and those at which it does. */
const plates = [230, 460, 575] as const;
const fiftyHertz: readonly (readonly [supply: FiftyHertzSupply, volts: readonly number[]])[] = [
  ['190/380/475', [190, 380, 475]],
  ['200/400/500', [200, 400, 500]],
  ['208/415/520', [208, 415, 520]],
];
/** A system is named by a round figure: 460 V of the plate, 400 V of the system at 403 V. */
const sameVoltage = 0.01;

const near = (value: number, named: number): boolean => Math.abs(value / named - 1) <= sameVoltage;

/** Share by the table for 60 Hz motors on 50 Hz, where plate and supply stand in it. */
const fiftyHertzShare = (c: Calculation, index: number): { readonly capacity?: Known | undefined } => {
  const path = `/line/drives/${index}`;
  const plateFrequency = c.number(`${path}/frequency`, 'frequency')?.value;
  const supplyFrequency = c.number(`${c.floorPath}/power/frequency`, 'frequency')?.value;
  const plateVoltage = c.number(`${path}/voltage`, 'voltage')?.value;
  const voltage = machineVoltage(c);
  if (plateFrequency !== 60 || supplyFrequency !== 50) return {};
  if (plateVoltage === undefined || voltage === undefined) return {};
  const plate = plates.findIndex((each) => near(plateVoltage, each));
  const row = fiftyHertz.find(([, volts]) => plate >= 0 && near(voltage.value, volts[plate]!));
  if (row === undefined) return {};
  return {
    capacity: c.run(motorOn50HzSheet, {
      power: motorHere(c, index)?.shaftPower,
      supply: { value: row[0], from: voltage.from },
      // of the two the one that has less left, and the one that is hosed down
      enclosure: { value: 'enclosed', from: { path, assumed: true } },
    })?.share,
  };
};

/** What a motor may give on this floor; one behind an inverter sees nothing of the supply but its heat and its air. */
export const plateHere = (c: Calculation, index: number) =>
  c.once(`plateHere ${index}`, (c) => {
    const path = `/line/drives/${index}`;
    const own = c.book.line!.drives![index]!.inverter === true;
    const here = motorHere(c, index);
    const surroundings = surroundingsShare(c);
    if (own && surroundings !== undefined && surroundings.value < 1) c.note('DERATING_BEHIND_INVERTER');
    return c.run(deratedPlateSheet, {
      platePower: powerOf(c, index),
      serviceFactor: c.plain(`${path}/serviceFactor`, 1)!,
      surroundings,
      ...(own
        ? {}
        : {
            unbalance: unbalanceShare(c, index),
            speedRatio: here?.speedRatio,
            flux: here?.flux,
            ...fiftyHertzShare(c, index),
          }),
    });
  });
