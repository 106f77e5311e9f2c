/** A plain floor that a check changes where it must: water at 10 degC, lanes alike, nothing lost on the way. */
import type { FillSystem, Gravity, Lane, Tank } from '../../src/hydraulics/system.ts';

export const gravity = 9.80665;
export const water = { density: 999.7, viscosity: 1.306e-3 };
export const stillTank: Tank = {
  area: Number.POSITIVE_INFINITY,
  usable: Number.POSITIVE_INFINITY,
  makeUp: 0,
};

export const gravityFrom = (surface: number, tank: Partial<Tank> = {}): Gravity => ({
  kind: 'gravity',
  surface,
  tank: { ...stillTank, ...tank },
});

/** A lane that ends at a volume, with a million pulses in a litre so that the count is no matter. */
export const laneTo = (volume: number, kv: number, rest: Partial<Lane> = {}): Lane => ({
  tag: 'lane',
  kv,
  kvSlow: kv,
  pulses: 1e9,
  preset: volume * 1e9,
  changeOver: volume * 1e9,
  delay: 0,
  closing: 0,
  afterDrip: 0,
  phase: 0,
  outlet: 0,
  ...rest,
});

export const floorOf = (rest: Partial<FillSystem>): FillSystem => ({
  liquid: water,
  source: gravityFrom(3),
  run: [],
  manifold: 0,
  lanes: [laneTo(1e-3, 1)],
  ...rest,
});
