import type { Arc, EventGraph } from './event-graph.ts';
import { longestMeanCycle } from './longest-mean-cycle.ts';

/** What one step of a line is worth, and how far. */
export interface StepBreak {
  /** Seconds of the step as it is. */
  readonly seconds: number;
  /** Seconds by which the period of a block falls for each that the step gets shorter. */
  readonly slope: number;
  /** Seconds of the step at which another loop decides; 0 where none ever does. */
  readonly until: number;
}

/** Periods that differ by less are the rounding of sums, as a share. */
const rounding = 1e-12;

/**
 * What a shorter step does to the period of a line, exactly.
 *
 * Method   lambda(x) = max over loops of (a + n x)/m is convex and made of straight pieces: the piece at hand is that of the
 *          critical loop; where it crosses the piece at 0 s a further loop is looked for, and so on until none is above
 * Symbols  step  name of the step, the same wherever it stands in the graph
 * Returns  undefined where the step stands in no loop or does not decide
 * Cost     a handful of `longestMeanCycle`
 * Source   parametric form of `longestMeanCycle`
 */
export const stepBreak = (graph: EventGraph, step: string): StepBreak | undefined => {
  const seconds = graph.arcs.flatMap(({ steps }) => steps).find((each) => each.step === step)?.seconds;
  if (seconds === undefined) return undefined;
  const loopAt = (x: number): readonly Arc[] | undefined =>
    longestMeanCycle({
      ...graph,
      arcs: graph.arcs.map((arc) => {
        const count = arc.steps.filter((each) => each.step === step).length;
        return count === 0 ? arc : { ...arc, weight: arc.weight + count * (x - seconds) };
      }),
    })?.loop;
  const pieceOf = (loop: readonly Arc[]) => {
    let [fixed, count, blocks] = [0, 0, 0];
    for (const arc of loop) {
      blocks += arc.lag;
      for (const each of arc.steps) {
        if (each.step === step) count += 1;
        else fixed += each.seconds;
      }
    }
    return { at: (x: number) => (fixed + count * x) / blocks, slope: count / blocks };
  };
  const critical = loopAt(seconds);
  if (critical === undefined) return undefined;
  const now = pieceOf(critical);
  if (!(now.slope > 0)) return undefined;
  let x = 0;
  // every round finds a loop that is flatter than the last, and there are only so many
  for (let round = 0; round < graph.arcs.length; round++) {
    const loop = loopAt(x);
    if (loop === undefined) break;
    const there = pieceOf(loop);
    if (there.at(x) <= now.at(x) * (1 + rounding)) break;
    if (!(now.slope > there.slope)) break;
    x = (there.at(0) - now.at(0)) / (now.slope - there.slope);
  }
  return { seconds, slope: now.slope, until: Math.min(seconds, x) };
};
