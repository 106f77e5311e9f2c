import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import {
  bores,
  densities,
  dynamicViscosities,
  flows,
  lengths,
  lossCoefficients,
  roughnesses,
} from './bounds.ts';
import { laminarBelow, turbulentAbove } from './friction-factor.ts';
import { pieceLoss } from './piece-loss.ts';
import { pipeVelocity } from './pipe-velocity.ts';
import { reynoldsNumber } from './reynolds-number.ts';
import { roughnessProblems } from './roughness-problems.ts';
import { darcyWeisbach, kvStandard } from './sources.ts';

interface RunLossInputs {
  readonly bore: readonly number[];
  readonly length: readonly number[];
  readonly roughness: readonly number[];
  readonly fittings: readonly number[];
  readonly kv: readonly number[];
  readonly constantLoss: readonly number[];
  readonly flow: number;
  readonly density: number;
  readonly viscosity: number;
}

/** Pieces in series from source to manifold: each loss by `pieceLoss`, summed. */
export const runLossSheet = defineSheet({
  id: 'water/run-loss',
  version: 1,
  inputs: {
    bore: listField('length', 'D_i', bores),
    length: listField('length', 'L_i', lengths),
    roughness: listField('length', '\\varepsilon_i', roughnesses),
    fittings: listField('ratio', 'K_i', lossCoefficients),
    kv: listField('flowCoefficient', 'K_{v,i}', { least: 0, most: 1e6 }),
    constantLoss: listField('pressureDifference', '\\Delta p_{c,i}', { least: 0, most: 1e8 }),
    flow: numberField('volumeFlow', 'Q', flows),
    density: numberField('density', '\\rho', densities),
    viscosity: numberField('dynamicViscosity', '\\mu', dynamicViscosities),
  },
  outputs: {
    loss: numberField('pressureDifference', '\\Delta p'),
    pieceLoss: listField('pressureDifference', '\\Delta p_i'),
    highestVelocity: numberField('velocity', 'v_{\\max}'),
    reynolds: listField('ratio', '\\mathrm{Re}_i'),
  },
  formula: [
    '\\Delta p = \\sum_i \\Delta p_i',
    '\\Delta p_i = \\left( f_i \\frac{L_i}{D_i} + K_i \\right) \\frac{\\rho v_i^2}{2} + 10^5 \\frac{\\rho}{1000} \\left( \\frac{3600 Q}{K_{v,i}} \\right)^2 + \\Delta p_{c,i}',
    'v_i = \\frac{4 Q}{\\pi D_i^2}, \\quad \\mathrm{Re}_i = \\frac{\\rho v_i D_i}{\\mu}',
  ],
  limits: [
    {
      code: 'FRICTION_TRANSITION',
      broken: ({ length }, { reynolds }) =>
        reynolds.some((re, i) => length[i]! > 0 && re > laminarBelow && re < turbulentAbove),
    },
    {
      code: 'FRICTION_ROUGHNESS',
      broken: ({ roughness, bore, length }) =>
        roughness.some((r, i) => length[i]! > 0 && r > 0.05 * bore[i]!),
    },
  ],
  sources: [darcyWeisbach, kvStandard],
  check: ({ bore, length, roughness, fittings, kv, constantLoss }) => {
    const problems = listLengths({ bore, length, roughness, fittings, kv, constantLoss });
    return problems.length > 0 ? problems : roughnessProblems(roughness, bore);
  },
  compute: ({
    bore,
    length,
    roughness,
    fittings,
    kv,
    constantLoss,
    flow,
    density,
    viscosity,
  }: RunLossInputs) => {
    const losses = bore.map((D, i) =>
      pieceLoss(
        flow,
        D,
        length[i]!,
        roughness[i]!,
        fittings[i]!,
        kv[i]!,
        constantLoss[i]!,
        density,
        viscosity,
      ),
    );
    const velocities = bore.map((D) => pipeVelocity(flow, D));
    return {
      loss: losses.reduce((sum, loss) => sum + loss, 0),
      pieceLoss: losses,
      highestVelocity: velocities.reduce((most, v) => Math.max(most, v), 0),
      reynolds: bore.map((D, i) => reynoldsNumber(velocities[i]!, D, viscosity / density)),
    };
  },
});
