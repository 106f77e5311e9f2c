/** A value that can be watched: what React's `useSyncExternalStore` asks for. */
export interface Observed<S> {
  readonly get: () => S;
  readonly set: (next: S) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export const observe = <S>(first: S): Observed<S> => {
  let state = first;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    set: (next) => {
      if (Object.is(next, state)) return;
      state = next;
      for (const listener of [...listeners]) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};
