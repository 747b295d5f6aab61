import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { freshReadme, readmePath } from "./sections";

it("the README's list of functions and its accuracy table are those of this build; if not, run npm run readme", () => {
  const readme = readFileSync(readmePath, "utf8");
  expect(readme).toBe(freshReadme(readme));
});
