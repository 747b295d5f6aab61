/** A value that can be replaced in part, and tells those who watch it. */
export interface Store<S extends object> {
  readonly get: () => S;
  readonly set: (change: Partial<S>) => void;
  readonly subscribe: (onChange: () => void) => () => void;
}

export function createStore<S extends object>(first: S): Store<S> {
  let value = first;
  const watchers = new Set<() => void>();
  return {
    get: () => value,
    set(change) {
      value = { ...value, ...change };
      watchers.forEach((tell) => tell());
    },
    subscribe(onChange) {
      watchers.add(onChange);
      return () => void watchers.delete(onChange);
    },
  };
}
