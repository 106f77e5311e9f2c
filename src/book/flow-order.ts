/** A thing that says what comes before it. */
export interface Ordered {
  readonly tag: string;
  readonly after?: readonly string[] | undefined;
}

export type Order =
  | { readonly order: readonly string[] }
  /** Tags in a circle, each after the one before it, the first again at the end. */
  | { readonly circle: readonly string[] };

/** The tags that come straight before a station: those that it names, else the one before it in the list. */
export const stationsBefore = (stations: readonly Ordered[], index: number): readonly string[] => {
  const station = stations[index];
  if (station?.after !== undefined) return station.after;
  const before = stations[index - 1];
  return before === undefined ? [] : [before.tag];
};

/**
 * Things in an order in which each stands behind all that come before it; where that is open, in the order of
 * the list. Tags that stand on nothing are passed over.
 *
 * Method   depth first, without recursion
 * Returns  the order, or one circle
 * Cost     O(things + references)
 */
export const orderBy = (tags: readonly string[], before: ReadonlyMap<string, readonly string[]>): Order => {
  const order: string[] = [];
  const state = new Map<string, 'open' | 'done'>();
  for (const start of tags) {
    if (state.has(start)) continue;
    const path: { readonly tag: string; next: number }[] = [{ tag: start, next: 0 }];
    state.set(start, 'open');
    while (path.length > 0) {
      const top = path[path.length - 1]!;
      const earlier = (before.get(top.tag) ?? [])[top.next];
      if (earlier === undefined) {
        state.set(top.tag, 'done');
        order.push(top.tag);
        path.pop();
        continue;
      }
      top.next += 1;
      if (!before.has(earlier) || state.get(earlier) === 'done') continue;
      if (state.get(earlier) === 'open') {
        const from = path.findIndex(({ tag }) => tag === earlier);
        const loop = path.slice(from).map(({ tag }) => tag);
        return { circle: [earlier, ...loop.slice(1).reverse(), earlier] };
      }
      state.set(earlier, 'open');
      path.push({ tag: earlier, next: 0 });
    }
  }
  return { order };
};

/**
 * The stations in flow order: list order where no station names the ones before it.
 *
 * Symbols  stations  each with its tag and, where it does not follow the list, the tags before it
 * Returns  the order, or a circle
 * Cost     O(stations + references)
 */
export const flowOrder = (stations: readonly Ordered[]): Order =>
  orderBy(
    stations.map(({ tag }) => tag),
    new Map(stations.map(({ tag }, index) => [tag, stationsBefore(stations, index)])),
  );
