import { notImplemented } from "./apiError";

/** What a promise, a debugger or a test asks of any object without being told to. */
const ASKED_OF_ANY = new Set<PropertyKey>(["then", "constructor", "toJSON", "valueOf", "toString"]);

/** The part of a vendor's object that we have; touching any other member throws that member's full name. */
export function strict<T extends object>(name: string, part: Partial<T>): T {
  return new Proxy(part, {
    get(target, key) {
      if (key in target) return Reflect.get(target, key) as unknown;
      if (typeof key === "symbol" || ASKED_OF_ANY.has(key)) return undefined;
      throw notImplemented(`${name}.${key}`);
    },
    set(_, key) {
      throw notImplemented(`${name}.${String(key)} =`);
    },
  }) as T;
}
