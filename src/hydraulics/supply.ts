import { standardGravity } from '../sheets/standard-gravity.ts';
import { gravityPressure } from '../sheets/water/gravity-supply.ts';
import { mainPressure } from '../sheets/water/main-supply.ts';
import { pumpHead } from '../sheets/water/pump-curve.ts';
import { readingPressure } from '../sheets/water/reading-supply.ts';
import { runLoss } from './run-loss.ts';
import type { FillSystem, Pumped, Source } from './system.ts';

/** What the source holds at one moment; all zero is full, with the vessel at its cut-in pressure. */
export interface Held {
  /** Drawn from the tank and not yet made up, m3 */
  readonly drawn: number;
  /** Pressure in the vessel, Pa gauge; absent where the pump feeds the run straight. */
  readonly vessel?: number;
}

export const full: Held = { drawn: 0 };

/** Pressure that a pump makes at its outlet, Pa gauge, before regulator and vessel. */
export const pumpPressure = (source: Pumped, flow: number, drawn: number, density: number): number =>
  density *
  standardGravity *
  (source.suction -
    drawn / source.tank.area +
    pumpHead(source.curve, flow, source.speedRatio) -
    source.height);

/**
 * Pressure that the source gives at the height of the manifold, before the run takes its loss.
 *
 * Method   main: static - (static - residual)(Q/Qt)^n + rho g (z - zm);  gravity: rho g (surface - zm);
 *          pumped: the lesser of pump and regulator, + rho g (z - zm); with a vessel, the pressure in the vessel,
 *          or its cut-in pressure where the moment is not given;  reading: A - B Q^2, at the manifold already
 * Symbols  Q  flow  scalar  m3/s  >= 0
 * Returns  Pa gauge; never rises with the flow
 * Source   the sheets `water/main-supply`, `water/gravity-supply`, `water/pumped-supply`, `water/reading-supply`
 */
export const sourcePressure = (
  source: Source,
  manifold: number,
  density: number,
  flow: number,
  held: Held,
): number => {
  const weight = density * standardGravity;
  switch (source.kind) {
    case 'main':
      return (
        mainPressure(source.static, source.residual, source.testFlow, source.exponent, flow) +
        weight * (source.height - manifold)
      );
    case 'gravity':
      return gravityPressure(0, source.surface - held.drawn / source.tank.area, manifold, density);
    case 'pumped': {
      let outlet: number;
      if (held.vessel !== undefined) outlet = held.vessel;
      else {
        outlet = pumpPressure(source, flow, held.drawn, density);
        // the least that the band offers while the pump keeps up
        if (source.vessel !== undefined && outlet > source.vessel.cutIn) outlet = source.vessel.cutIn;
      }
      return Math.min(outlet, source.regulator) + weight * (source.height - manifold);
    }
    case 'reading':
      return readingPressure(source.curve, flow);
  }
};

/** Pressure left at the manifold at a flow, Pa gauge. A reading was taken there: no run lies between. */
export const supplyPressure = (system: FillSystem, flow: number, held: Held): number => {
  const before = sourcePressure(system.source, system.manifold, system.liquid.density, flow, held);
  return system.source.kind === 'reading' ? before : before - runLoss(system.run, flow, system.liquid);
};
