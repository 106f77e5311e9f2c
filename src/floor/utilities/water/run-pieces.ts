import type { RunPiece } from '../../../book/index.ts';
import { runLossSheet } from '../../../sheets/water/run-loss.ts';
import { waterDensitySheet } from '../../../sheets/water/water-density.ts';
import { waterViscositySheet } from '../../../sheets/water/water-viscosity.ts';
import type { Calculation } from '../calculation.ts';
import { coldWater } from '../heat/bath-water.ts';
import type { Known } from '../known.ts';
import { lossSum, roughnessOf } from '../pipe-piece.ts';

/** Stands for the bore of a piece that has none: its length and fittings are nothing, so that it loses nothing as a pipe. */
const noBore = 1;

const fixed = (value: number, path: string): Known => ({ value, from: { path } });

export const waterDensity = (c: Calculation): Known | undefined =>
  c.once('waterDensity', (c) => c.run(waterDensitySheet, { temperature: coldWater(c) })?.density);

/** Pressure that the water loses in the pieces of a run at a flow. */
export const waterRunLoss = (
  c: Calculation,
  pieces: readonly RunPiece[],
  path: string,
  flow: Known | undefined,
): Known | undefined => {
  const lists = pieces.map((piece, i) => {
    const at = `${path}/${i}`;
    const pipe = piece.kind === 'pipe';
    return {
      bore: pipe ? c.needed(`${at}/bore`, 'length') : fixed(noBore, at),
      length: pipe ? c.needed(`${at}/length`, 'length') : fixed(0, at),
      roughness: pipe ? roughnessOf(c, piece, at) : fixed(0, at),
      fittings: fixed(pipe ? lossSum(piece) : 0, `${at}/fittings`),
      kv: piece.kind === 'valve' ? c.needed(`${at}/kv`, 'flowCoefficient') : fixed(0, at),
      constantLoss: piece.kind === 'constant' ? c.needed(`${at}/loss`, 'pressureDifference') : fixed(0, at),
    };
  });
  return c.run(runLossSheet, {
    bore: lists.map((one) => one.bore),
    length: lists.map((one) => one.length),
    roughness: lists.map((one) => one.roughness),
    fittings: lists.map((one) => one.fittings),
    kv: lists.map((one) => one.kv),
    constantLoss: lists.map((one) => one.constantLoss),
    flow,
    density: waterDensity(c),
    viscosity: c.run(waterViscositySheet, { temperature: coldWater(c) })?.viscosity,
  })?.loss;
};
