import type { SheetCase } from '../sheet-case.ts';
import { fluidsLibrary, script } from './sources.ts';

const psi = 6894.757293;
const inch = 0.0254;
const sixty = (60 + 459.67) / 1.8;
/** Free air at 14.7 psia and 60 degF, in normal air. */
const cfm = ((0.0004719474432 * 14.7 * psi) / 1e5) * (293.15 / sixty);
const short = {
  flow: 1.5 / 60,
  pressure: 6.529e5 - 101325,
  bore: 0.0209,
  length: 30,
  roughness: 0.045e-3,
};

export const lineLossCases: readonly SheetCase[] = [
  ...(
    [
      ['1', 1.049, 20, 0.102],
      ['1', 1.049, 50, 0.578],
      ['1', 1.049, 100, 2.21],
      ['1 1/2', 1.61, 100, 0.247],
      ['2', 2.067, 100, 0.07],
    ] as const
  ).map(([size, bore, flow, loss]) => ({
    name: `${flow} cfm of free air in 100 ft of ${size} in schedule 40 at 100 psig: ${loss} psi`,
    source: {
      title: 'Table B.14, flow of air through schedule 40 steel pipe',
      place: '100 psig, 60 degF, public transcription',
      mark: 'read' as const,
    },
    inputs: {
      flow: flow * cfm,
      pressure: 100 * psi,
      atmosphere: 14.7 * psi,
      temperature: sixty,
      bore: bore * inch,
      length: 30.48,
      roughness: 0.045e-3,
    },
    outputs: { loss: loss * psi },
    tolerance: { relative: 3e-2, reason: 'the table is a fit of its own; two to three printed digits' },
    notes: ['AIR_EMPIRICAL_DISAGREE', 'CAUTION_COMPRESSED_AIR'],
  })),
  {
    name: '1.5 m3/min in 30 m of 20.9 mm at 6.529 bar(a): 0.1796 bar',
    source: fluidsLibrary,
    inputs: short,
    outputs: {
      loss: 0.1796e5,
      reynolds: 99_810,
      frictionFactor: 0.0255,
      outletPressure: 6.529e5 - 101325 - 0.1796e5,
    },
    tolerance: { relative: 5e-3, reason: 'as the reference states it' },
  },
  {
    name: 'the empirical forms give 0.1776 and 0.2000 bar',
    source: script,
    inputs: short,
    outputs: { empiricalLoss: 0.1776e5, empiricalLossHigh: 0.2e5 },
    tolerance: { relative: 5e-3, reason: 'as the reference states it' },
  },
  {
    name: 'velocity at the outlet by hand: 1.5 m3/min of 1 bar at 6.349 bar(a) in 343.07 mm2 is 11.48 m/s',
    source: { title: 'hand calculation', place: 'continuity', mark: 'computed' },
    inputs: short,
    outputs: { outletVelocity: 11.477 },
    tolerance: { relative: 1e-3, reason: 'four digits' },
    notes: ['AIR_REFERENCE'],
  },
];
