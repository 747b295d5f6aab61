import { readdirSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const folder = path.join(root, "src/hosts/excel");
const files = readdirSync(folder)
  .filter((file) => file.endsWith(".ts"))
  .map((file) => path.join(folder, file));

/** A file that uses what is too new, so that the search is seen to find it. */
const TOO_NEW = path.join(root, "tooNew.ts");
const tooNewText = "declare const range: Excel.Range; export const answer = range.valuesAsJson;";

/** The requirement set that the add-in states: Excel 2021 and later. */
const MINIMUM = 12;

interface Use {
  readonly file: string;
  readonly member: string;
  /** Minor version of ExcelApi 1.x; undefined where the vendor's types state none. */
  readonly set: number | undefined;
}

const uses = usesOfExcel();

describe("members of Excel's programming interface that the host uses", () => {
  const ours = uses.filter(({ file }) => file !== path.basename(TOO_NEW));

  it(`are none newer than ExcelApi 1.${MINIMUM}`, () => {
    expect(ours.filter(({ set }) => set !== undefined && set > MINIMUM)).toEqual([]);
  });

  it("all state their requirement set in the vendor's types, but for the way in", () => {
    const unstated = new Set(ours.filter(({ set }) => set === undefined).map(({ member }) => member));
    expect([...unstated]).toEqual(["RequestContext.workbook"]);
  });

  it("are found at all, the newest one among them, and a newer one would be", () => {
    expect(ours.length).toBeGreaterThan(60);
    expect(ours).toContainEqual({ file: "nameVerbs.ts", member: "Range.getSpillingToRangeOrNullObject", set: 12 });
    expect(uses).toContainEqual({ file: "tooNew.ts", member: "Range.valuesAsJson", set: 16 });
  });
});

/** Every access of a member that is declared in the namespace Excel, resolved by the compiler. */
function usesOfExcel(): readonly Use[] {
  const config = ts.getParsedCommandLineOfConfigFile(
    path.join(root, "tsconfig.json"),
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: (problem) => {
        throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, " "));
      },
    },
  );
  const options = config?.options ?? {};
  const host = ts.createCompilerHost(options);
  const plain = ts.createCompilerHost(options);
  host.fileExists = (name) => name === TOO_NEW || plain.fileExists(name);
  host.getSourceFile = (name, version) =>
    name === TOO_NEW ? ts.createSourceFile(name, tooNewText, version) : plain.getSourceFile(name, version);

  const program = ts.createProgram([...files, TOO_NEW], options, host);
  const checker = program.getTypeChecker();
  const found: Use[] = [];
  for (const name of [...files, TOO_NEW]) {
    const source = program.getSourceFile(name);
    if (!source) throw new Error(`no source ${name}`);
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAccessExpression(node)) {
        const member = excelMember(checker.getSymbolAtLocation(node.name));
        if (member) found.push({ file: path.basename(name), ...member });
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}

function excelMember(symbol: ts.Symbol | undefined): Pick<Use, "member" | "set"> | undefined {
  const declarations = (symbol?.declarations ?? []).filter(isExcels);
  const [first] = declarations;
  const owner = first?.parent;
  if (!symbol || !first || !owner || !("name" in owner)) return undefined;
  const sets = declarations.map(setOf).filter((set) => set !== undefined);
  const set = sets.length > 0 ? Math.min(...sets) : setOf(owner);
  return { member: `${(owner.name as ts.Node).getText()}.${symbol.name}`, set };
}

/** True for what the vendor declares as a class or an interface of the namespace Excel. */
function isExcels(declaration: ts.Declaration): boolean {
  const type = declaration.parent;
  if (!ts.isClassDeclaration(type) && !ts.isInterfaceDeclaration(type)) return false;
  const namespace = type.parent.parent as ts.Node | undefined;
  return namespace !== undefined && ts.isModuleDeclaration(namespace) && namespace.name.text === "Excel";
}

/** The set that is marked in the comment over a declaration. */
function setOf(declaration: ts.Node): number | undefined {
  const comment = declaration.getSourceFile().text.slice(declaration.getFullStart(), declaration.getStart());
  const [, minor] = /\[Api set: ExcelApi 1\.(\d+)/.exec(comment) ?? [];
  if (/\[Api set: ExcelApi(?: BETA|Online|Desktop)/.test(comment)) return Infinity;
  return minor === undefined ? undefined : Number(minor);
}
