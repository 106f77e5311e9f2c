import { type ShiftLayout, states, steps } from './shift-layout.ts';
import type { ShiftMachine } from './shift-machine.ts';

/** Where the figures of one shift stand in a list of numbers. */
export interface VectorPlan {
  readonly width: number;
  readonly good: number;
  readonly put: number;
  readonly fallen: number;
  readonly rejected: number;
  readonly drawnMost: number;
  /** 1 where the tank ran dry, when, and the good bottles before; 0 where it did not. */
  readonly ranDry: number;
  readonly dryAt: number;
  readonly dryBottles: number;
  /** First of the seconds by station and state, of the bottles that wait by station, of the core's seconds by state
   *  and then by step and cause, of the strikes and of the seconds by cause. */
  readonly stations: number;
  readonly waiting: number;
  readonly core: number;
  readonly coreWidth: number;
  readonly strikes: number;
  readonly stood: number;
  readonly lost: number;
}

export const vectorPlan = ({ tags, causes, conveyors }: ShiftLayout): VectorPlan => {
  const stations = 8;
  const waiting = stations + tags.length * states.length;
  const core = waiting + tags.length;
  const coreWidth = steps.length + conveyors.length + causes.length + 1;
  const strikes = core + states.length * coreWidth;
  const stood = strikes + causes.length;
  const lost = stood + causes.length;
  return {
    width: lost + causes.length,
    good: 0,
    put: 1,
    fallen: 2,
    rejected: 3,
    drawnMost: 4,
    ranDry: 5,
    dryAt: 6,
    dryBottles: 7,
    stations,
    waiting,
    core,
    coreWidth,
    strikes,
    stood,
    lost,
  };
};

/** Figures of the shift that the machine ran last. */
export const readShift = (machine: ShiftMachine, plan: VectorPlan, into: Float64Array): void => {
  const { counts, clocks, core, layout, line } = machine;
  into[plan.good] = counts.good;
  into[plan.put] = counts.put;
  into[plan.fallen] = counts.fallen;
  into[plan.rejected] = counts.rejected;
  into[plan.drawnMost] = machine.drawnMost;
  const { ranDry } = machine;
  into[plan.ranDry] = ranDry === undefined ? 0 : 1;
  into[plan.dryAt] = ranDry === undefined ? 0 : ranDry.at;
  into[plan.dryBottles] = ranDry === undefined ? 0 : ranDry.bottles;
  into.set(clocks.spent, plan.stations);
  for (let i = 0; i < layout.tags.length; i++) into[plan.waiting + i] = machine.waiting[i]! / line.duration;
  into.set(core.spent, plan.core);
  into.set(clocks.strikes, plan.strikes);
  into.set(clocks.stood, plan.stood);
  const first = plan.coreWidth - 1 - layout.causes.length;
  for (let cause = 0; cause < layout.causes.length; cause++) {
    let lost = 0;
    for (let state = 0; state < states.length; state++) {
      lost += core.spent[state * plan.coreWidth + first + cause]!;
    }
    into[plan.lost + cause] = lost;
  }
};
