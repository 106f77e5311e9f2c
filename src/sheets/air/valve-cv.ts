import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { strokes } from './bounds.ts';

/** Kv of a Cv of 1: US gallons a minute at 1 psi in m3/h at 1 bar. */
const kvOfCv = 0.864978;
const inch = 0.0254;

/**
 * Flow coefficient of the valve that moves a cylinder in a time, as a US technician works it out.
 *
 * Method   Cv = A s c/(B t 28.8), inches and seconds
 * Symbols  A  area               scalar  m2
 *          s  stroke             scalar  m
 *          t  time               scalar  s
 *          c  compressionFactor  scalar  1  by `valve-factor`
 *          B  dropFactor         scalar  1  by `valve-factor`; some documents print 1/B
 * Returns  Kv, m3/h
 * Assumes  28.8 turns cubic inches a second into cubic feet a minute
 * Cost     O(1)
 * Source   US valve sizing, two public documents, read
 */
export const strokeFlowCoefficient = (
  area: number,
  stroke: number,
  time: number,
  compressionFactor: number,
  dropFactor: number,
): number => (kvOfCv * ((area * stroke) / inch ** 3) * compressionFactor) / (dropFactor * time * 28.8);

interface ValveCvInputs {
  readonly area: number;
  readonly stroke: number;
  readonly time: number;
  readonly compressionFactor: number;
  readonly dropFactor: number;
}

export const valveCvSheet = defineSheet({
  id: 'air/valve-cv',
  version: 1,
  inputs: {
    area: numberField('area', 'A', { least: 1e-6, most: 10 }),
    stroke: numberField('length', 's', strokes),
    time: numberField('time', 't', { least: 1e-3, most: 1e4 }),
    compressionFactor: numberField('ratio', 'c', { least: 1, most: 100 }),
    dropFactor: numberField('ratio', 'B', { least: 0.1, most: 1000 }),
  },
  outputs: { flowCoefficient: numberField('flowCoefficient', 'C_v') },
  formula: ['C_v = \\frac{A s c}{28.8\\, B t} \\ (\\mathrm{in}, \\mathrm{s})'],
  limits: [
    { code: 'VALVE_CV_ROUGH', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [{ title: 'US valve sizing, two public documents', place: 'Cv = A s c/(B t 28.8)', mark: 'read' }],
  compute: (i: ValveCvInputs) => ({
    flowCoefficient: strokeFlowCoefficient(i.area, i.stroke, i.time, i.compressionFactor, i.dropFactor),
  }),
});
