import {
  atmosphere,
  bar,
  foot,
  inch,
  kilogramForce,
  metreOfMercury,
  metreOfWater,
  million,
  one,
  psi,
  thousand,
  thousandth,
} from '../constants.ts';
import { exact, product, quotient, type Ratio } from '../ratio.ts';
import { type Unit, unit } from '../unit.ts';

interface PressureName {
  readonly id: string;
  readonly label?: string;
  readonly factor: Ratio;
  readonly also?: readonly string[];
  readonly note?: string;
}

const names: readonly PressureName[] = [
  { id: 'bar', factor: bar, also: ['bars'] },
  { id: 'mbar', factor: exact('100') },
  { id: 'Pa', factor: one, also: ['N/m2', 'pascal', 'pascals'] },
  { id: 'hPa', factor: exact('100') },
  { id: 'kPa', factor: thousand },
  { id: 'MPa', factor: million, also: ['N/mm2'] },
  { id: 'psi', factor: psi, also: ['lbf/in2', 'lb/in2', 'lbs/in2', 'lb/sq in', 'lbf/sq in'] },
  {
    id: 'kgf/cm2',
    label: 'kgf/cm²',
    factor: quotient(kilogramForce, exact('0.0001')),
    also: ['kg/cm2', 'kp/cm2'],
  },
  {
    id: 'mH2O',
    label: 'mH₂O',
    factor: metreOfWater,
    note: 'conventionalWater',
    also: ['m H2O', 'mWC', 'm wc', 'm water', 'mWS'],
  },
  {
    id: 'mmH2O',
    label: 'mmH₂O',
    factor: product(thousandth, metreOfWater),
    note: 'conventionalWater',
    also: ['mmWC', 'mm water', 'mmWS'],
  },
  {
    id: 'inH2O',
    label: 'inH₂O',
    factor: product(inch, metreOfWater),
    note: 'conventionalWater',
    also: ['inWC', 'inWG', 'in water', '"H2O', '"WC', '"WG', 'iwc'],
  },
  {
    id: 'ftH2O',
    label: 'ftH₂O',
    factor: product(foot, metreOfWater),
    note: 'conventionalWater',
    also: ['ftWC', 'ft water'],
  },
  {
    id: 'mmHg',
    factor: product(thousandth, metreOfMercury),
    note: 'conventionalMercury',
    also: ['mm mercury'],
  },
  {
    id: 'inHg',
    factor: product(inch, metreOfMercury),
    note: 'conventionalMercury',
    also: ['"Hg', 'in mercury'],
  },
];

const gaugeMarks = ['(g)', 'g', '(gauge)', 'gauge', 'gage', '(gage)'];
const absoluteMarks = ['(a)', 'a', '(abs)', 'abs', '(absolute)', 'absolute'];

// A marked unit is spelled by its mark; a bare one takes the kind that was asked.
const marked = (name: PressureName, mark: 'g' | 'a'): Unit => {
  const spellings = [name.id, ...(name.also ?? [])];
  const marks = mark === 'g' ? gaugeMarks : absoluteMarks;
  // `psig` and `psia` are the trade's own words
  const id = name.id === 'psi' ? `psi${mark}` : `${name.id}(${mark})`;
  return unit(id, name.factor, {
    label: name.id === 'psi' ? id : `${name.label ?? name.id}(${mark})`,
    also: spellings.flatMap((spelling) => [spelling, ...marks.map((each) => spelling + each)]),
    ...(name.note === undefined ? {} : { note: name.note }),
  });
};

export const gaugePressures = names.map((name) => marked(name, 'g'));

export const absolutePressures = [
  ...names.map((name) => marked(name, 'a')),
  unit('atm', atmosphere, { also: ['atmosphere', 'atmospheres', 'atm (a)', 'atm abs'] }),
];

export const pressureDifferences = names.map((name) =>
  unit(name.id, name.factor, {
    label: name.label ?? name.id,
    also: name.also ?? [],
    ...(name.note === undefined ? {} : { note: name.note }),
  }),
);

export const elasticModuli = [
  unit('GPa', exact('1000000000'), { also: ['kN/mm2'] }),
  unit('MPa', million, { also: ['N/mm2'] }),
  unit('kPa', thousand),
  unit('Pa', one, { also: ['N/m2'] }),
  unit('bar', bar),
  unit('psi', psi, { also: ['lbf/in2', 'lb/in2'] }),
  unit('ksi', product(thousand, psi), { also: ['kip/in2'] }),
];
