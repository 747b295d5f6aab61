import { chosen } from "../../core/basis/choices";
import { cautions } from "../../core/reference/cautions";
import { cautionLine } from "./cautionLine";

/** The caution on a topic, from the list that the workbook's own sheets read. */
export const cautionOn = (topic: string) => cautionLine(chosen("Topic", topic, cautions));
