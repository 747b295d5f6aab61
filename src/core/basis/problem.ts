import { inOurUnits, type Telling } from "./telling";

/** One plain sentence; one that tells measures is put together anew for whoever measures in other units. */
export type Sentence = string | ((telling: Telling) => string);

/** A problem that the user can do something about; its message is one plain sentence for him. */
export abstract class Problem extends Error {
  /** Hidden, so that two problems of the same message are alike. */
  readonly #sentence: Sentence;

  constructor(sentence: Sentence) {
    super(typeof sentence === "string" ? sentence : sentence(inOurUnits));
    this.#sentence = sentence;
  }

  /** The same sentence, with its measures told another way. */
  messageIn(telling: Telling): string {
    return typeof this.#sentence === "string" ? this.#sentence : this.#sentence(telling);
  }
}

/** What was given cannot be used: a text where a number belongs, a number out of its bounds. */
export class InvalidInput extends Problem {
  override readonly name = "InvalidInput";
}

/** What was given is sound, but the source does not reach there, or there is not enough data. */
export class OutOfRange extends Problem {
  override readonly name = "OutOfRange";
}
