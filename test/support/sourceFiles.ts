import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

export const projectRoot = fileURLToPath(new URL("../..", import.meta.url));

/** A file of src with the files of src it imports; paths from src, without extension guesses left open. */
export interface SourceFile {
  readonly path: string;
  readonly syntax: ts.SourceFile;
  readonly imports: readonly string[];
}

/** Every TypeScript file of src, with its imports of our own files resolved. */
export function sourceFiles(): readonly SourceFile[] {
  const src = path.join(projectRoot, "src");
  const files = readdirSync(src, { recursive: true, encoding: "utf8" })
    .map((file) => file.split(path.sep).join("/"))
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"));
  const known = new Set(files);
  return files.map((file) => {
    const syntax = ts.createSourceFile(file, readFileSync(path.join(src, file), "utf8"), ts.ScriptTarget.ES2022, true);
    return { path: file, syntax, imports: importsOf(syntax).flatMap((name) => resolved(file, name, known)) };
  });
}

function importsOf(syntax: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
      found.push((node.moduleSpecifier as ts.StringLiteral).text);
    }
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [name] = node.arguments;
      if (name && ts.isStringLiteral(name)) found.push(name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return found;
}

function resolved(from: string, name: string, known: ReadonlySet<string>): string[] {
  if (!name.startsWith(".")) return [];
  const base = path.posix.join(path.posix.dirname(from), name);
  const file = [`${base}.ts`, `${base}/index.ts`, base].find((candidate) => known.has(candidate));
  if (file) return [file];
  if (/\.(json|css)$/.test(name)) return [];
  throw new Error(`${from} imports ${name}, which is no file of src`);
}

/** Identifiers that a file names in code, comments and texts left out. */
export function identifiersOf(syntax: ts.SourceFile): ReadonlySet<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) names.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return names;
}

/** Chains of two names joined by a dot, such as "Date.now". */
export function memberAccessesOf(syntax: ts.SourceFile): ReadonlySet<string> {
  const chains = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) {
      chains.add(`${node.expression.text}.${node.name.text}`);
    }
    if (ts.isNewExpression(node) && ts.isIdentifier(node.expression) && (node.arguments?.length ?? 0) === 0) {
      chains.add(`new ${node.expression.text}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return chains;
}
