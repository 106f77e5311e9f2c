import type { Drive } from '../../../book/index.ts';
import { frequencyChangeSheet, type LoadLaw } from '../../../sheets/power/frequency-change.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { machineVoltage } from './machine-load.ts';

export const pumpLike = (drive: Drive): boolean =>
  drive.pump !== undefined || /pump|fan/i.test(drive.name ?? '');

const lawOf = (c: Calculation, drive: Drive, path: string): Known<LoadLaw> => {
  const given = c.word<'constant torque' | 'square torque' | 'constant power'>(`${path}/load`);
  if (given === undefined) {
    c.assume(`${path}/load`);
    return {
      value: pumpLike(drive) ? 'pump-or-fan' : 'constant-torque',
      from: { path: `${path}/load`, assumed: true },
    };
  }
  const laws = {
    'square torque': 'pump-or-fan',
    'constant torque': 'constant-torque',
    'constant power': 'constant-power',
  } as const;
  return { value: laws[given.value], from: given.from };
};

const assumedFull = (c: Calculation, plate: Known | undefined, path: string): Known | undefined => {
  if (plate === undefined) return undefined;
  c.assume(`${path}/shaftPower`);
  return c.derive([plate], (power) => power, { path: `${path}/shaftPower`, assumed: true });
};

/** What the supply of the floor does to a motor that runs straight on it; an inverter keeps plate frequency and voltage. */
export const motorHere = (c: Calculation, index: number) =>
  c.once(`motorHere ${index}`, (c) => {
    const path = `/line/drives/${index}`;
    const drive = c.book.line!.drives![index]!;
    const plateFrequency = c.needed(`${path}/frequency`, 'frequency');
    const plateVoltage = c.needed(`${path}/voltage`, 'voltage');
    const own = drive.inverter === true;
    const supplyFrequency = own ? plateFrequency : c.needed(`${c.floorPath}/power/frequency`, 'frequency');
    const platePower = c.needed(`${path}/power`, 'power');
    return c.run(frequencyChangeSheet, {
      platePower,
      // a motor is not chosen larger than its load by much: taken as fully loaded where nobody said, which is the worst
      shaftPower: c.number(`${path}/shaftPower`, 'power') ?? assumedFull(c, platePower, path),
      law: lawOf(c, drive, path),
      plateFrequency,
      supplyFrequency,
      plateVoltage,
      supplyVoltage: own ? plateVoltage : machineVoltage(c),
      serviceFactor: c.plain(`${path}/serviceFactor`, 1)!,
    });
  });
