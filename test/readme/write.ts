import { readFileSync, writeFileSync } from "node:fs";
import { freshReadme, readmePath } from "./sections";

writeFileSync(readmePath, freshReadme(readFileSync(readmePath, "utf8")));
