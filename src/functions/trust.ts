import { chosen } from "../core/basis/choices";
import { cautions } from "../core/reference/cautions";
import { RELEASED } from "../core/reference/release";
import { findTopic } from "../core/value/findTopic";
import packageFile from "../../package.json";
import { answered, spilled } from "./shell/answers";
import { oneText } from "./shell/readings";

/**
 * Where a log rule, a formula or a function of this add-in comes from, and whether that was read or remembered.
 * @customfunction SOURCEOF
 * @param topic Name of a log rule, a cubic formula, a kind of defect, a sampling method, a sawing pattern, a function or a caution, such as Doyle or SAWPLAN.
 * @returns A heading row, then author, year, title, place in it, standing and address of each source.
 */
export function sourceOf(topic: string): any[][] {
  return answered(() => {
    const { sources } = findTopic(oneText(topic, "Topic"));
    const rows = sources.map(({ author, year, title, where, standing, url }) => [
      author,
      year,
      title,
      where,
      standing,
      url,
    ]);
    return spilled(["Author", "Year", "Title", "Where", "Standing", "Address"], rows);
  });
}

/**
 * A caution to read before you act on a number. Local codes and licensed practice come before it.
 * @customfunction CAUTIONOF
 * @param topic Estimate, Felling, Sawing, Log weight, Ungraded lumber, Forester, Tax, Contracts and water, or Prices.
 * @returns One line and the text behind it.
 */
export function cautionOf(topic: string): string {
  return answered(() => {
    const { line, text } = chosen("Topic", oneText(topic, "Topic"), cautions);
    return `${line} ${text}`;
  });
}

/**
 * Version of this add-in and of its printed tables.
 * @customfunction BUILDINFO
 * @returns A heading row, then the add-in and each printed table with its version and date.
 */
export function buildInfo(): any[][] {
  return answered(() => {
    const { version } = packageFile;
    const tables = RELEASED.tables.map(({ title, date }) => [`Table: ${title}`, version, date]);
    return spilled(["Part", "Version", "Date"], [["Woodlot Reckoner", version, RELEASED.date], ...tables]);
  });
}
