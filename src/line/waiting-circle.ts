import { deadlocked } from './event-graph.ts';
import type { LineGraph } from './line-graph.ts';

/**
 * What of a line waits for each other, each before the one that it waits for.
 *
 * Method   from an event of the deadlock on to one that it waits for, until one comes again
 * Returns  such as "+WASH stroke 1 (HR1)", behind it the hold rule or the room for which it waits where no step leads
 *          there; none where nothing is deadlocked
 */
export const waitingCircle = (graph: LineGraph): readonly string[] => {
  const left = new Set(deadlocked(graph).map((event) => graph.events.indexOf(event)));
  const [first] = left;
  if (first === undefined) return [];
  const way = [first];
  const whys: (string | undefined)[] = [];
  for (;;) {
    const last = way.at(-1)!;
    const arc = graph.arcs.find(({ lag, to, from }) => lag === 0 && to === last && left.has(from));
    if (arc === undefined) return [];
    whys.push(arc.because);
    const again = way.indexOf(arc.from);
    if (again < 0) {
      way.push(arc.from);
      continue;
    }
    return way.slice(again).map((event, i) => {
      const why = whys[again + i];
      const what = `${graph.stations[event]} ${graph.events[event]}`;
      return why === undefined ? what : `${what} (${why})`;
    });
  }
};
