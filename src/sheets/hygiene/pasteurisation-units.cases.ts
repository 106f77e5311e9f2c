import type { SheetCase } from '../sheet-case.ts';
import { pasteurisationBase, script } from './sources.ts';

const held = (minutes: number, celsius: number) => ({
  times: [0, minutes * 60],
  temperatures: [celsius + 273.15, celsius + 273.15],
});
const digits = { relative: 1e-3, absolute: 5e-4, reason: 'three or four printed digits' } as const;

export const pasteurisationUnitsCases: readonly SheetCase[] = [
  {
    name: 'by definition 10 min at 60 degC are 10 units',
    source: pasteurisationBase,
    inputs: held(10, 60),
    outputs: { units: 10 },
    tolerance: digits,
    notes: ['PU_TWO_FORMS'],
  },
  ...(
    [
      [10, 62, '1.393', 19.4],
      [10, 62, 'z = 7', 19.31],
      [1, 70, '1.393', 27.51],
      [1, 70, 'z = 7', 26.83],
      [5, 50, '1.393', 0.182],
    ] as const
  ).map(([minutes, celsius, law, units]) => ({
    name: `${minutes} min at ${celsius} degC are ${units} units by ${law}`,
    source: script,
    inputs: { ...held(minutes, celsius), law },
    outputs: { units },
    tolerance: digits,
  })),
  {
    name: '1.393 a kelvin is z = 6.947 K',
    source: script,
    inputs: held(10, 60),
    outputs: { z: 6.947 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
];
