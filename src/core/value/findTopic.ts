import { choiceNamed, quoted, textOf } from "../basis/choices";
import { didYouMean, NameMatch } from "../basis/nameMatch";
import { InvalidInput } from "../basis/problem";
import { topics, type Topic } from "./topics";

const names = new NameMatch(topics, ({ title, aliases = [] }) => [title, ...aliases]);

/**
 * The topic that a text names. There are too many to list in a sentence, so the likest are proposed.
 *
 * @throws InvalidInput when there is none of that name
 */
export function findTopic(text: unknown): Topic {
  const found = choiceNamed(text, topics);
  if (found) return found;
  const like = didYouMean(names.like(textOf(text)).map(({ title }) => title));
  throw new InvalidInput(
    `Topic should be the name of a function, a log rule, a formula or a caution, such as LOGSCALE or Doyle. You have ${quoted(text)}.${like && ` ${like}`}`,
  );
}
