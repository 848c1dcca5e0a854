import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const ENGINE = fileURLToPath(new URL("../../src/engine", import.meta.url));
const FILES = readdirSync(ENGINE, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));

const parsed = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, readFileSync(join(ENGINE, file), "utf8"), ts.ScriptTarget.ES2022, true);

/** What a file holds of what it should not, each with its line. */
function found(source: ts.SourceFile, test: (node: ts.Node) => boolean): string[] {
  const hits: string[] = [];
  const visit = (node: ts.Node): void => {
    if (test(node))
      hits.push(
        `${source.fileName}:${String(source.getLineAndCharacterOfPosition(node.getStart()).line + 1)} ${node.getText().slice(0, 60)}`,
      );
    ts.forEachChild(node, visit);
  };
  visit(source);
  return hits;
}

const COMPARISONS = new Set([
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
]);
const isComparison = (node: ts.Node): boolean => ts.isBinaryExpression(node) && COMPARISONS.has(node.operatorToken.kind);

describe("the engine", () => {
  it("is found, with its gear kinds", () => {
    expect(FILES.length).toBeGreaterThan(25);
    expect(FILES.filter((file) => file.startsWith("gear/")).length).toBeGreaterThanOrEqual(12);
  });

  it("compares nothing in the gear kinds: the comparison word is data", () => {
    expect(found(ts.createSourceFile("sample.ts", "const a = 1 < 2;", ts.ScriptTarget.ES2022, true), isComparison)).toHaveLength(1);
    expect(FILES.filter((file) => file.startsWith("gear/")).flatMap((file) => found(parsed(file), isComparison))).toEqual([]);
  });

  it("meets a reading with a limit in one file only", () => {
    // Exact numbers are compared by .compare(); check/compare.ts is where their sides are told.
    const compares = (node: ts.Node): boolean =>
      ts.isBinaryExpression(node) && COMPARISONS.has(node.operatorToken.kind) && node.getText().includes(".compare(");
    const allowed = ["check/compare.ts", "numbers/exact.ts", "reading/number.ts"];
    expect(FILES.filter((file) => !allowed.includes(file)).flatMap((file) => found(parsed(file), compares))).toEqual([]);
  });

  it("imports nothing but itself and the shape checker", () => {
    const imports = FILES.flatMap((file) =>
      parsed(file)
        .statements.filter(ts.isImportDeclaration)
        .map((node) => ({ file, from: (node.moduleSpecifier as ts.StringLiteral).text })),
    );
    const outside = imports.filter(({ file, from }) => {
      if (from === "zod/mini") return false;
      if (!from.startsWith(".")) return true;
      return relative(ENGINE, join(ENGINE, file, "..", from)).startsWith("..");
    });
    expect(imports.length).toBeGreaterThan(50);
    expect(outside).toEqual([]);
    expect(
      FILES.flatMap((file) =>
        found(parsed(file), (node) => ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword),
      ),
    ).toEqual([]);
  });

  it("knows no clock, no chance, no host, no network and no console", () => {
    const names = new Set([
      "Date",
      "Office",
      "Excel",
      "CustomFunctions",
      "OfficeRuntime",
      "window",
      "document",
      "globalThis",
      "process",
      "fetch",
      "localStorage",
      "navigator",
      "performance",
      "console",
      "setTimeout",
      "Intl",
    ]);
    const uses = (node: ts.Node): boolean =>
      ts.isIdentifier(node) &&
      names.has(node.text) &&
      !ts.isPropertyAssignment(node.parent) &&
      !ts.isPropertySignature(node.parent) &&
      !(ts.isPropertyAccessExpression(node.parent) && node.parent.name === node);
    expect(found(ts.createSourceFile("sample.ts", "new Date();", ts.ScriptTarget.ES2022, true), uses)).toHaveLength(1);
    const hits = FILES.flatMap((file) => found(parsed(file), (node) => uses(node) && !isLocal(node)));
    expect(hits).toEqual([]);
    expect(
      FILES.flatMap((file) => found(parsed(file), (node) => ts.isPropertyAccessExpression(node) && node.getText() === "Math.random")),
    ).toEqual([]);
  });

  it("swallows no error", () => {
    expect(FILES.flatMap((file) => found(parsed(file), (node) => ts.isCatchClause(node)))).toEqual([]);
  });
});

/** A parameter or variable of the same name, such as `document` in a function that cites one. */
function isLocal(node: ts.Node): boolean {
  for (let scope: ts.Node = node; !ts.isSourceFile(scope); scope = scope.parent) {
    if (ts.isFunctionLike(scope) && scope.parameters.some((p) => mentions(p.name, node.getText()))) return true;
    if (ts.isParameter(scope) || ts.isVariableDeclaration(scope)) if (mentions(scope.name, node.getText())) return true;
    if (ts.isBlock(scope))
      for (const statement of scope.statements)
        if (ts.isVariableStatement(statement) && statement.declarationList.declarations.some((d) => mentions(d.name, node.getText())))
          return true;
  }
  return false;
}

const mentions = (name: ts.BindingName, text: string): boolean =>
  ts.isIdentifier(name) ? name.text === text : name.elements.some((e) => ts.isBindingElement(e) && mentions(e.name, text));
