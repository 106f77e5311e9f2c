import type { PumpCurve } from '../sheets/water/pump-curve.ts';
import type { ReadingCurve } from '../sheets/water/reading-supply.ts';

/** The liquid that the floor runs, at its temperature there. */
export interface Liquid {
  /** kg/m3 */
  readonly density: number;
  /** Pa s */
  readonly viscosity: number;
}

/** A length of pipe or hose with the fittings on it. */
export interface Pipe {
  readonly kind: 'pipe';
  /** m */
  readonly bore: number;
  /** m */
  readonly length: number;
  /** m */
  readonly roughness: number;
  /** Sum of K on the velocity in this bore. */
  readonly kSum: number;
}

/** A valve, strainer, filter or meter in the run, by its Kv. */
export interface RunValve {
  readonly kind: 'valve';
  /** m3/h at 1 bar of water */
  readonly kv: number;
}

/** A loss that hardly depends on the flow, such as that of a backflow preventer. */
export interface ConstantLoss {
  readonly kind: 'constant';
  /** Pa */
  readonly loss: number;
}

export type RunPiece = Pipe | RunValve | ConstantLoss;

/** A town main known by a flow test: p = static - (static - residual) (Q/Qt)^n at the gauge. */
export interface Main {
  readonly kind: 'main';
  /** Pa gauge, no flow */
  readonly static: number;
  /** Pa gauge, at the test flow */
  readonly residual: number;
  /** m3/s */
  readonly testFlow: number;
  /** 1.85 where long mains lose the pressure, 2 where a meter and a service pipe do. */
  readonly exponent: number;
  /** Height of the gauge above the datum, m */
  readonly height: number;
}

/** Liquid in a tank that its draw lowers and its make-up fills again up to where it started. */
export interface Tank {
  /** Plan area, m2; infinity for a surface that does not move. */
  readonly area: number;
  /** Volume that can be drawn before the outlet runs dry, m3; infinity where nothing limits it. */
  readonly usable: number;
  /** m3/s while the tank is not full */
  readonly makeUp: number;
}

export interface Gravity {
  readonly kind: 'gravity';
  /** Surface above the datum when full, m */
  readonly surface: number;
  readonly tank: Tank;
}

/** Gas cushion on the delivery side of a pump that starts and stops between two pressures. */
export interface Vessel {
  /** m3 */
  readonly volume: number;
  /** Pressure of the gas without liquid, Pa absolute */
  readonly precharge: number;
  /** Pa gauge */
  readonly cutIn: number;
  /** Pa gauge */
  readonly cutOut: number;
}

export interface Pumped {
  readonly kind: 'pumped';
  readonly curve: PumpCurve;
  /** Speed on this floor over the speed of the curve. */
  readonly speedRatio: number;
  /** Surface that the pump draws from, above the datum, m */
  readonly suction: number;
  /** Height of the pump's outlet, its regulator and its vessel above the datum, m */
  readonly height: number;
  readonly tank: Tank;
  /** Pressure that a regulator behind the pump lets through, Pa gauge; infinity for none */
  readonly regulator: number;
  readonly vessel?: Vessel;
  /** Pressure of the air around, Pa absolute; wanted for the vessel's gas */
  readonly ambient: number;
}

/** The manifold itself was read with lanes open: p = A - B Q^2 there, and nothing is known of what lies before. */
export interface ManifoldReading {
  readonly kind: 'reading';
  readonly curve: ReadingCurve;
}

export type Source = Main | Gravity | Pumped | ManifoldReading;

/** One valve of the filler with its meter, as set for one format. */
export interface Lane {
  readonly tag: string;
  /** m3/h at 1 bar of water, its jet counted in */
  readonly kv: number;
  /** After the change-over; the same as `kv` where the lane has one speed. */
  readonly kvSlow: number;
  /** Pulses in a cubic metre. */
  readonly pulses: number;
  /** Pulses at which the lane is told to shut. */
  readonly preset: number;
  /** Pulses at which it goes slow; as large as the preset where it has one speed. */
  readonly changeOver: number;
  /** s */
  readonly delay: number;
  /** s */
  readonly closing: number;
  /** m3 that drip after closing */
  readonly afterDrip: number;
  /** Mean volume by which the first pulse comes early, m3: 1/(2k) for a free-running meter, 0 for a reset one. */
  readonly phase: number;
  /** Where the jet leaves, above the datum, m */
  readonly outlet: number;
  /** Only for bottom-up nozzles: height of the level above the datum for a volume in the bottle. */
  readonly levelAt?: (volume: number) => number;
}

/** All that decides what a row of bottles gets on one floor. */
export interface FillSystem {
  readonly liquid: Liquid;
  readonly source: Source;
  readonly run: readonly RunPiece[];
  /** Height of the manifold above the datum, m */
  readonly manifold: number;
  readonly lanes: readonly Lane[];
}
