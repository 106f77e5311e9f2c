/** Something that takes its time between two events, by the station that does it. */
export interface Step {
  /** What is done: a word of the catalogue such as `stroke`, `fill`, `lower`. */
  readonly step: string;
  /** Tag of the station. */
  readonly station: string;
  readonly seconds: number;
}

/** `to` happens at the earliest when `from`, `lag` blocks before, has happened and the steps are done. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  /** s; the sum of the steps */
  readonly weight: number;
  /** Blocks that the arc looks back. */
  readonly lag: number;
  readonly steps: readonly Step[];
  /** Tag of the hold rule or the kind of room that makes `to` wait, where no step leads there. */
  readonly because?: string;
}

export interface EventGraph {
  readonly events: readonly string[];
  readonly arcs: readonly Arc[];
}

/** Events in an order in which each comes after all that it waits for in the same block; absent on a deadlock. */
export const orderOfEvents = (graph: EventGraph): readonly number[] | undefined => {
  const waitsFor = graph.events.map(() => 0);
  for (const arc of graph.arcs) if (arc.lag === 0) waitsFor[arc.to]! += 1;
  const order = graph.events.map((_, i) => i).filter((i) => waitsFor[i] === 0);
  for (let at = 0; at < order.length; at++) {
    for (const arc of graph.arcs) {
      if (arc.lag === 0 && arc.from === order[at] && --waitsFor[arc.to]! === 0) order.push(arc.to);
    }
  }
  return order.length === graph.events.length ? order : undefined;
};

/** Events that wait for each other within one block, or for one that does. */
export const deadlocked = (graph: EventGraph): readonly string[] => {
  let left = new Set(graph.events.keys());
  for (;;) {
    const free = [...left].filter(
      (i) => !graph.arcs.some((arc) => arc.lag === 0 && arc.to === i && left.has(arc.from)),
    );
    if (free.length === 0) return [...left].map((i) => graph.events[i]!);
    left = new Set([...left].filter((i) => !free.includes(i)));
  }
};
