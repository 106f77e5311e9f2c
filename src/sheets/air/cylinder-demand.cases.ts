import type { SheetCase } from '../sheet-case.ts';
import { cylinderArticle, script } from './sources.ts';

const psi = 6894.757293;
/** Flow stated at 14.7 psia, 68 degF, in normal air of 100 kPa, 20 degC. */
const scfm = (0.0004719474432 * 14.7 * psi) / 1e5;
const us = {
  bore: 2 * 0.0254,
  stroke: 4 * 0.0254,
  pressure: 80 * psi,
  atmosphere: 14.7 * psi,
  indexPeriod: 2,
};
const metric = {
  bore: 0.05,
  rod: 0.02,
  stroke: 0.2,
  deadExtend: 50e-6 + 2 * 0.25 * Math.PI * 0.004 ** 2,
  deadRetract: 50e-6 + 2 * 0.25 * Math.PI * 0.004 ** 2,
  pressure: 5.516e5,
  indexPeriod: 5,
};

export const cylinderDemandCases: readonly SheetCase[] = [
  {
    name: '2 in bore, 4 in stroke, 30 double strokes a minute at 80 psi(g), rod left out: 2.81 scfm',
    source: cylinderArticle,
    inputs: { ...us, rod: 0 },
    outputs: { averageFlow: 2.81 * scfm },
    tolerance: { relative: 5e-3, reason: 'three printed digits' },
    notes: ['CYLINDER_NO_TUBES'],
  },
  {
    name: 'the same with a rod of 5/8 in: 2.674 scfm, the shortcut 5.1 % over',
    source: script,
    inputs: { ...us, rod: 0.625 * 0.0254 },
    outputs: { averageFlow: 2.674 * scfm, perIndexWithoutRod: 2 * 2.674 * 1.051 * scfm },
    tolerance: { relative: 5e-4, reason: 'four printed digits; 5.1 % has two' },
    notes: ['CYLINDER_ROD_SHORTCUT'],
  },
  {
    name: '50 mm bore, 20 mm rod, 200 mm at 5.516 bar(g) with tubes: 5.547 L a cycle, 66.56 L/min',
    source: script,
    inputs: metric,
    outputs: {
      extendDraw: 2.564e-3 + 0.4144e-3,
      retractDraw: 2.154e-3 + 0.4144e-3,
      perIndex: 5.547e-3,
      averageFlow: 66.56e-3 / 60,
    },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
    notes: ['AIR_REFERENCE', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'single acting it takes only the air to extend',
    source: script,
    inputs: { ...metric, acting: 'single' },
    outputs: { perIndex: 2.564e-3 + 0.4144e-3 },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
  },
];
