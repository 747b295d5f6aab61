import { chosen } from "../../core/basis/choices";
import { cautions } from "../../core/reference/cautions";
import { cautionLine } from "../components/cautionLine";
import type { Pane } from "../pane";

/** The caution on a topic, from the list that the workbook's own sheets read: in full at first, later as one line. */
export const cautionOn = ({ state }: Pane, topic: string) =>
  cautionLine(chosen("Topic", topic, cautions), !state.seen.includes(state.view));
