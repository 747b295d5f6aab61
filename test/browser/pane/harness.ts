import { demoWorkbook } from "../../../src/demo/demoWorkbook";
import { mountPane, type PaneOptions } from "../../../src/pane/mountPane";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";
import { practiceSheets } from "./practiceSheets";

/** The pane over a workbook in memory, for looking at and for tests; what it shows is chosen in the address. */
const asked = new URLSearchParams(location.search);
const root = document.getElementById("pane");
if (!root) throw new Error("The page has no element for the pane.");

Object.assign(globalThis, {
  CustomFunctions: {
    Error: class extends Error {
      constructor(
        readonly code: string,
        message?: string,
      ) {
        super(message);
      }
    },
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  },
});

const host = memoryHost(cruiseCalculation);
const books = { demo: demoWorkbook, practice: practiceSheets } as const;
const book = books[asked.get("book") as keyof typeof books];
if (book) await host.lay(book());
host.wait = Number(asked.get("wait") ?? 0);

const options: PaneOptions = {
  ...(asked.has("theme") && { theme: asked.get("theme") === "dark" ? "dark" : "light" }),
  ...(asked.get("drafts") !== "none" && { drafts: localStorage }),
};
const pane = mountPane(root, host, options);
const harness = { host, pane };
export type Harness = typeof harness;
Object.assign(window, { harness });
await pane.refresh();
document.documentElement.dataset["ready"] = "yes";
