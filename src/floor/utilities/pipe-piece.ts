import { type Fitting, fittings, type Pipe, type PipeMaterial, pipeMaterials } from '../../book/index.ts';
import type { Calculation } from './calculation.ts';
import type { Known } from './known.ts';

/** Roughness of a pipe of a run: its own, else that of its material, else that of commercial steel as a default. */
export const roughnessOf = (c: Calculation, { material }: Pipe, at: string): Known => {
  const given = c.number(`${at}/roughness`, 'length');
  if (given !== undefined) return given;
  const known = material === undefined ? undefined : pipeMaterials[material as PipeMaterial]?.roughness;
  if (known !== undefined) return { value: known, from: { path: `${at}/material` } };
  return c.numberOr(`${at}/roughness`, 'length', pipeMaterials['commercial steel'].roughness);
};

/** Loss coefficients of all fittings in a pipe; one that has none counts for nothing. */
export const lossSum = (pipe: Pipe): number =>
  (pipe.fittings ?? []).reduce(
    (sum, fitting) => sum + (fitting.k ?? fittings[fitting.kind as Fitting]?.k ?? 0) * (fitting.count ?? 1),
    0,
  );
