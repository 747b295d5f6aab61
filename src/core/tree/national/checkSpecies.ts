import { likeSpecies, shared, speciesNamed } from "./findSpecies";

/** A line of the owner's list of species; what is blank is undefined. */
export interface ListedSpecies {
  readonly name: string | undefined;
  /** Inventory code of the species, where the name alone does not tell it. */
  readonly code: string | undefined;
}

/**
 * What keeps a line of the owner's list from meaning a species of the national list, in one plain sentence; "" when
 * nothing does. Board feet by logs need no such species; wood and weight by total height do.
 */
export function checkSpecies({ name, code }: ListedSpecies): string {
  if (code !== undefined) return checkCode(code, name);
  if (name === undefined) return "The name is missing.";
  const found = speciesNamed(name);
  if (found.length === 1) return "";
  const quoted = `"${name.slice(0, 60)}"`;
  if (found.length > 1) return `${quoted} ${shared(found)}`;
  const hint = likeSpecies(name);
  return `${quoted} is not in the national list, so total heights give it no wood. ${hint || "Give its FIA code beside it."}`;
}

/** A code says which species is meant, whatever the owner calls it; only another species' very name contradicts it. */
function checkCode(code: string, name: string | undefined): string {
  const coded = /^\d+$/.test(code.trim()) ? speciesNamed(code)[0] : undefined;
  if (!coded) return `FIA code ${code.slice(0, 20)} is not in the national list.`;
  const named = name === undefined ? [] : speciesNamed(name);
  if (named.length === 0 || named.includes(coded)) return "";
  return `FIA code ${coded.code} is ${coded.name}, not ${name}.`;
}
