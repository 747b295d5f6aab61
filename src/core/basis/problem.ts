/** A problem that the user can do something about; its message is one plain sentence for him. */
export abstract class Problem extends Error {}

/** What was given cannot be used: a text where a number belongs, a number out of its bounds. */
export class InvalidInput extends Problem {
  override readonly name = "InvalidInput";
}

/** What was given is sound, but the source does not reach there, or there is not enough data. */
export class OutOfRange extends Problem {
  override readonly name = "OutOfRange";
}
