import { readFileSync } from "node:fs";
import path from "node:path";
import { accuracyTable } from "../accuracy/report";
import { projectRoot } from "../support/sourceFiles";

interface FunctionMetadata {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly { readonly name: string; readonly optional?: boolean; readonly repeating?: boolean }[];
}

export const readmePath = path.join(projectRoot, "README.md");

/** The functions as functions.json tells of them; needs a build in dist/. */
function functionTable(): string {
  const { functions } = JSON.parse(readFileSync(path.join(projectRoot, "dist/functions.json"), "utf8")) as {
    functions: FunctionMetadata[];
  };
  const argument = ({ name, optional, repeating }: FunctionMetadata["parameters"][number]) =>
    repeating ? `${name}...` : optional ? `[${name}]` : name;
  const sorted = [...functions].sort((a, b) => (a.name < b.name ? -1 : 1));
  return [
    "| Function | What it answers |",
    "| --- | --- |",
    ...sorted.map(
      ({ name, description, parameters }) =>
        `| \`${name}(${parameters.map(argument).join(", ")})\` | ${description.replaceAll("|", "\\|")} |`,
    ),
  ].join("\n");
}

const sections: Readonly<Record<string, () => string>> = { functions: functionTable, accuracy: accuracyTable };

/** The README with its generated sections as they are now. */
export function freshReadme(readme: string): string {
  return Object.entries(sections).reduce((text, [name, made]) => {
    const section = new RegExp(`(<!-- ${name}: made by npm run readme -->)[\\s\\S]*?(<!-- end of ${name} -->)`);
    if (!section.test(text)) throw new Error(`The README has no section for ${name}.`);
    return text.replace(section, (_, start: string, end: string) => `${start}\n\n${made()}\n\n${end}`);
  }, readme);
}
