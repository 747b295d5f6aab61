/** Names of plots or species, found again without regard to case or to blanks around them. */
export class NameList {
  private readonly places = new Map<string, number>();
  private readonly spellings: string[] = [];

  constructor(names: Iterable<string> = []) {
    for (const name of names) this.add(name);
  }

  /** The names as they were first spelt. */
  get names(): readonly string[] {
    return this.spellings;
  }

  /** Place of a name, counted from 0; undefined when it is not in the list. */
  placeOf(name: string): number | undefined {
    return this.places.get(bare(name));
  }

  /** Place of a name, which is added when it is new. */
  add(name: string): number {
    const key = bare(name);
    const known = this.places.get(key);
    if (known !== undefined) return known;
    this.places.set(key, this.spellings.length);
    return this.spellings.push(name.trim()) - 1;
  }
}

const bare = (name: string) => name.trim().toLowerCase();
