import { si } from '../quantity/kinds.ts';
import { standardGravity } from '../sheets/standard-gravity.ts';
import { vesselDraw } from '../sheets/water/pressure-vessel.ts';
import type { Held } from './supply.ts';
import type { Pumped, Source, Tank, Vessel } from './system.ts';

/** What tank and vessel hold between and during fills. */
export interface Stored {
  /** Drawn from the tank and not yet made up, m3. */
  readonly drawn: number;
  /** Liquid in the vessel, m3; 0 where there is none. */
  readonly vessel: number;
  /** Whether the pump that fills the vessel runs. */
  readonly pumping: boolean;
}

export const tankOf = (source: Source): Tank | undefined =>
  source.kind === 'gravity' || source.kind === 'pumped' ? source.tank : undefined;

/** Liquid in the vessel at a pressure, m3: what it would give down to its precharge, at which it holds only gas. */
export const vesselLiquid = (vessel: Vessel, pressure: number, ambient: number): number =>
  Math.max(
    0,
    vesselDraw(
      vessel.volume,
      si('absolutePressure', vessel.precharge),
      si('absolutePressure', vessel.precharge),
      si('absolutePressure', pressure + ambient),
    ),
  );

/** Its inverse: Pa gauge. */
export const vesselPressure = (vessel: Vessel, liquid: number, ambient: number): number =>
  vessel.precharge / Math.max(1e-9, 1 - liquid / vessel.volume) - ambient;

/** The tank full and the vessel just pumped up: how an hour starts. */
export const startStored = (source: Source): Stored => ({
  drawn: 0,
  vessel:
    source.kind === 'pumped' && source.vessel !== undefined
      ? vesselLiquid(source.vessel, source.vessel.cutOut, source.ambient)
      : 0,
  pumping: false,
});

export const heldOf = (source: Source, stored: Stored): Held =>
  source.kind === 'pumped' && source.vessel !== undefined
    ? { drawn: stored.drawn, vessel: vesselPressure(source.vessel, stored.vessel, source.ambient) }
    : { drawn: stored.drawn };

/**
 * Flow of a pump against a pressure at its outlet.
 *
 * Method   affinity form of H = A - B Q^C solved for Q: Q = s ((A - h/s^2)/B)^(1/C)
 * Returns  m3/s; none where the head is more than the pump makes; where the curve is flat (B = 0) its head decides
 */
export const pumpFlow = (source: Pumped, outlet: number, drawn: number, density: number): number => {
  const s = source.speedRatio;
  if (!(s > 0)) return 0;
  const head =
    outlet / (density * standardGravity) + source.height - source.suction + drawn / source.tank.area;
  const left = source.curve.shutOffHead - head / (s * s);
  if (!(left > 0)) return 0;
  if (!(source.curve.factor > 0)) return Number.MAX_VALUE;
  return s * (left / source.curve.factor) ** (1 / source.curve.exponent);
};

/** Steps in which a vessel is pumped up while no lane is open; the pump's flow falls smoothly over them. */
const pumpUpSteps = 16;

/**
 * What tank and vessel hold after a while without draw.
 *
 * Method   tank: filled by its make-up until full; vessel: dV/dt = pump flow at its pressure until the cut-out, by the
 *          midpoint rule
 * Symbols  dt  seconds  scalar  s  >= 0
 */
export const restStored = (source: Source, density: number, stored: Stored, seconds: number): Stored => {
  const tank = tankOf(source);
  if (tank === undefined || !(seconds > 0)) return stored;
  if (source.kind !== 'pumped' || source.vessel === undefined || !stored.pumping) {
    return { ...stored, drawn: Math.max(0, stored.drawn - tank.makeUp * seconds) };
  }
  const { vessel } = source;
  const cutOut = vesselLiquid(vessel, vessel.cutOut, source.ambient);
  let { drawn, vessel: liquid } = stored;
  let pumping: boolean = stored.pumping;
  const dt = seconds / pumpUpSteps;
  for (let i = 0; i < pumpUpSteps; i++) {
    let pumped = 0;
    if (pumping) {
      const flowAt = (volume: number): number => {
        const flow = pumpFlow(source, vesselPressure(vessel, volume, source.ambient), drawn, density);
        return drawn >= tank.usable ? Math.min(flow, tank.makeUp) : flow;
      };
      const half = Math.min(cutOut, liquid + 0.5 * dt * flowAt(liquid));
      pumped = Math.min(dt * flowAt(half), Math.max(0, cutOut - liquid));
      liquid += pumped;
      if (liquid >= cutOut * (1 - 1e-9)) pumping = false;
    }
    drawn = Math.min(tank.usable, Math.max(0, drawn + pumped - tank.makeUp * dt));
  }
  return { drawn, vessel: liquid, pumping };
};
