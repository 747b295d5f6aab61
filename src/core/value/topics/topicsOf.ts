import type { Source } from "../../basis/source";

/** Functions of a cell by name, each with what it rests on. */
export type TopicsOf = Readonly<Record<string, readonly Source[]>>;

export const plain = (author: string, title: string, where: string, standing: Source["standing"]): Source => ({
  author,
  year: "",
  title,
  where,
  standing,
});

export const sourcesOf = (listed: readonly { readonly sources: readonly Source[] }[]) =>
  listed.flatMap(({ sources }) => sources);
