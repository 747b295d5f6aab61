import { ApiError, notImplemented } from "./apiError";
import type { Batch } from "./requestContext";

type Readers<T> = { readonly [K in keyof T]?: () => T[K] | Promise<T[K]> };
type Writers<T> = { readonly [K in keyof T]?: (value: T[K]) => void | Promise<void> };

/** A part of an Excel object: what can be loaded, what can be set, and what can be called or reached at once. */
export interface ClientDescription<T> {
  /** The vendor's name, such as "Excel.Range". */
  readonly kind: string;
  readonly read?: Readers<T>;
  readonly write?: Writers<T>;
  /** Methods, and the ways to other objects. */
  readonly members?: Partial<T>;
  /** Present on what an ...OrNullObject method gave: false when there is nothing there. */
  readonly exists?: () => boolean;
}

/** Calculated values are loaded only after the calculation; any other property needs no waiting. */
const CALCULATED = new Set(["values", "text", "formulas"]);

/**
 * One proxy object of the add-in's. A property must be loaded and synchronized before it is read
 * (https://learn.microsoft.com/office/dev/add-ins/develop/application-specific-api-model#load), isNullObject is known
 * after the next sync (https://learn.microsoft.com/office/dev/add-ins/develop/application-specific-api-model#ornullobject-methods-and-properties).
 */
export function clientObject<T extends object>(batch: Batch, description: ClientDescription<T>): T {
  const { kind, read = {}, write = {}, members = {}, exists } = description;
  const loaded = new Map<PropertyKey, unknown>();
  const reached = new Map<PropertyKey, unknown>();
  const readers = read as Partial<Record<PropertyKey, () => unknown>>;
  const writers = write as Partial<Record<PropertyKey, (value: unknown) => void | Promise<void>>>;

  const loadPath = async (path: string): Promise<void> => {
    const [first = "", ...rest] = path.split("/");
    const reader = readers[first];
    if (reader) {
      if (CALCULATED.has(first)) await batch.engine.calculation.settled();
      const value = await reader();
      loaded.set(first, value);
      if (rest.length === 0) return;
      for (const one of value as readonly object[]) await loaders.get(one)?.(rest.join("/"));
    } else if (first in members && rest.length > 0) {
      await loaders.get(proxy[first as keyof T] as object)?.(rest.join("/"));
    } else throw notImplemented(`${kind}.${path}`);
  };

  const load = (properties?: unknown): T => {
    const paths = namedPaths(properties) ?? Object.keys(readers);
    batch.enqueue(proxy, async () => {
      for (const path of paths) await loadPath(path);
    });
    return proxy;
  };

  const proxy = new Proxy({} as T, {
    get(_, key) {
      if (key in readers || key === "isNullObject") return loadedValue(key);
      if (key in members) return reach(key);
      if (key === "load") return load;
      if (key === "context") return contexts.get(batch);
      if (key === "track") return () => batch.track(proxy);
      if (key === "untrack") return () => batch.untrack(proxy);
      if (typeof key === "symbol" || key === "then" || key === "constructor") return undefined;
      throw notImplemented(`${kind}.${key}`);
    },
    set(_, key, value) {
      const writer = writers[key];
      if (!writer) throw notImplemented(`${kind}.${String(key)} =`);
      batch.enqueue(proxy, () => writer(value));
      loaded.set(key, value);
      return true;
    },
  });

  function loadedValue(key: PropertyKey): unknown {
    if (loaded.has(key)) return loaded.get(key);
    throw new ApiError(
      "PropertyNotLoaded",
      `The property '${String(key)}' of ${kind} is not available. Load it and call context.sync() before reading it.`,
    );
  }

  function reach(key: PropertyKey): unknown {
    if (!reached.has(key)) reached.set(key, Reflect.get(members, key));
    return reached.get(key);
  }

  loaders.set(proxy, loadPath);
  if (exists) {
    batch.enqueue({}, () => void loaded.set("isNullObject", !exists()));
    batch.guard(proxy, exists);
  }
  return proxy;
}

const loaders = new WeakMap<object, (path: string) => Promise<void>>();

/** The request context that belongs to each batch, as every object's `context`. */
export const contexts = new WeakMap<Batch, Excel.RequestContext>();

/** Property paths as load accepts them: "a, b/c", ["a", "b/c"], { a: true, b: { c: true } } or { select: "a" }. */
function namedPaths(properties: unknown): string[] | undefined {
  if (properties === undefined) return undefined;
  if (typeof properties === "string") return properties.split(",").map((one) => one.trim());
  if (Array.isArray(properties)) return properties.map(String);
  return Object.entries(properties as object).flatMap(([key, value]) => {
    if (key === "select") return namedPaths(value) ?? [];
    if (value === true || key === "$all") return [key];
    return (namedPaths(value) ?? []).map((rest) => `${key}/${rest}`);
  });
}
