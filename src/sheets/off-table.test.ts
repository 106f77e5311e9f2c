import { expect, it } from 'vitest';
import { runSheet, type Sheet, type Values } from './frame.ts';
import { giardiaRegressionSheet } from './hygiene/giardia-regression.ts';
import { ampacityIecSheet } from './power/ampacity-iec.ts';
import { ampacityUsSheet } from './power/ampacity-us.ts';
import { impedanceUsSheet } from './power/impedance-us.ts';
import { motorCurrentIecSheet } from './power/motor-current-iec.ts';
import { motorCurrentUsSheet } from './power/motor-current-us.ts';
import { standardDeviceSheet } from './power/standard-device.ts';
import { voltageDropIecSheet } from './power/voltage-drop-iec.ts';
import { endsAsSaid } from './problems-as-typed.ts';

const feeder = { insulation: '75', terminals: '75', edition: 'from-2011' } as const;

type Beyond = readonly [what: string, sheet: unknown, inputs: Values, path: string, table: RegExp];

const beyond: readonly Beyond[] = [
  ['a motor of 130 hp', motorCurrentUsSheet, { power: 96_941, voltage: 460 }, 'power', /NEC.*430\.250, 2008/],
  ['a motor of 6 hp', motorCurrentUsSheet, { power: 4474.2, voltage: 460 }, 'power', /NEC.*430\.250, 2008/],
  [
    'a motor on 690 V',
    motorCurrentUsSheet,
    { power: 3728.5, voltage: 690 },
    'voltage',
    /NEC.*430\.250, 2008/,
  ],
  ['a motor of 90 kW', motorCurrentIecSheet, { power: 90_000 }, 'power', /IEC 60947/],
  ['750 kcmil', ampacityUsSheet, { size: '750 kcmil', ...feeder }, 'size', /NEC table 310\.16.*2011/],
  [
    'a hall of 80 degC',
    ampacityUsSheet,
    { size: '4 AWG', ...feeder, ambient: 353.15 },
    'ambient',
    /NEC.*2014/,
  ],
  ['300 mm2', ampacityIecSheet, { size: '300 mm2', method: 'b2-multicore' }, 'size', /IEC 60364-5-52.*2009/],
  [
    'a device of 7000 A',
    standardDeviceSheet,
    { current: 7000, list: 'us-breaker' },
    'current',
    /NEC 240\.6.*2008/,
  ],
  [
    'a conductor at 120 degC',
    impedanceUsSheet,
    { size: '2 AWG', conduit: 'steel', temperature: 393.15 },
    'temperature',
    /NEC chapter 9.*2008/,
  ],
  [
    'a supply of 400 Hz',
    impedanceUsSheet,
    { size: '2 AWG', conduit: 'steel', frequency: 400 },
    'frequency',
    /NEC chapter 9.*2008/,
  ],
  [
    '800 mm2',
    voltageDropIecSheet,
    { voltage: 400, current: 20, length: 30, area: 800e-6 },
    'area',
    /IEC 60364-5-52.*2009/,
  ],
  [
    'water of pH 9.5',
    giardiaRegressionSheet,
    { temperature: 283.15, acidity: 9.5, chlorine: 0.001 },
    'acidity',
    /EPA/,
  ],
];

it.each(beyond)('%s is beyond a table that is named with its edition', (_, each, inputs, path, table) => {
  const sheet = each as Sheet;
  const chosen = { phases: 'three-phase', rounding: 'up' };
  const given = Object.fromEntries(
    Object.entries({ ...chosen, ...inputs }).filter(([field]) => field in sheet.inputs),
  );
  const ran = runSheet(sheet, given);
  const found = ran.ok ? [] : ran.problems.map(({ code, path, parts }) => [code, path, parts?.table]);
  expect(found).toEqual([
    [expect.stringMatching(/^SHEET_(OFF|BEYOND)_TABLE$/), path, expect.stringMatching(table)],
  ]);
});

it('where a table ends is said in the unit of the reader, and what is worded already stays as it is', () => {
  const say = (kelvin: number) => `${(kelvin * 1.8 - 459.67).toFixed(0)} degF`;
  expect(endsAsSaid('<= 328.15', say)).toBe('≤ 131 degF');
  expect(endsAsSaid('>= 273.15, <= 373.15', say)).toBe('≥ 32 degF, ≤ 212 degF');
  expect(endsAsSaid('500 kcmil, one conductor per phase', say)).toBe('500 kcmil, one conductor per phase');
});
