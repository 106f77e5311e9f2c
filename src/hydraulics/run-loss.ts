import { pipeLoss } from '../sheets/water/pipe-loss.ts';
import { valveLoss } from '../sheets/water/valve-flow.ts';
import type { Liquid, RunPiece } from './system.ts';

/** Loss of one piece at a flow, Pa. */
export const pieceLoss = (piece: RunPiece, flow: number, liquid: Liquid): number => {
  switch (piece.kind) {
    case 'pipe':
      return pipeLoss(
        flow,
        piece.bore,
        piece.length,
        piece.roughness,
        piece.kSum,
        liquid.density,
        liquid.viscosity,
      );
    case 'valve':
      return valveLoss(piece.kv, flow, liquid.density);
    case 'constant':
      return piece.loss;
  }
};

/**
 * Loss of a run of pieces in series.
 *
 * Method   sum over the pieces: Darcy-Weisbach, Kv, or a constant
 * Symbols  Q  flow  scalar  m3/s  >= 0
 * Returns  pressure difference, Pa; the constant losses stand there at no flow too, since a check valve holds them
 * Assumes  one flow through all pieces
 * Cost     O(pieces), allocates nothing
 * Source   the sheets `water/pipe-loss` and `water/valve-flow`
 */
export const runLoss = (run: readonly RunPiece[], flow: number, liquid: Liquid): number => {
  let loss = 0;
  for (const piece of run) loss += pieceLoss(piece, flow, liquid);
  return loss;
};
