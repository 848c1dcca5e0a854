/** Where files stand: each room imports only from rooms on a lower floor, and no file stands in a circle. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const SRC = fileURLToPath(new URL("../src", import.meta.url));

/** Rooms of the engine from the ground up; rooms on one floor do not know each other. */
const ENGINE: readonly (readonly string[])[] = [
  ["numbers", "decision", "words", "memory"],
  ["tables", "reading"],
  ["rules"],
  ["columns"],
  ["gear", "due"],
  ["names", "pages"],
  ["log", "house"],
  ["types"],
  ["check"],
  ["item"],
  ["report"],
  ["programme"],
  ["ask", "lift"],
];

/** Folders of src: what each may import from beside itself. */
const HOUSE: Record<string, readonly string[]> = {
  engine: [],
  functions: ["engine"],
  excel: ["engine"],
  taskpane: ["engine", "excel"],
  trial: ["engine", "excel", "functions", "taskpane"],
};

const FILES = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((file) => file.split("\\").join("/"))
  .filter((file) => /\.tsx?$/.test(file) && !file.endsWith(".d.ts"));

/** The files of src that a file imports, types and later loading included. */
function importsOf(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(join(SRC, file), "utf8"), ts.ScriptTarget.ES2022, true);
  const names: string[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier))
      names.push(node.moduleSpecifier.text);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [name] = node.arguments;
      if (name && ts.isStringLiteral(name)) names.push(name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return names
    .filter((name) => name.startsWith("."))
    .map((name) => posix.normalize(posix.join(dirname(file), name)))
    .map((name) => [`${name}.ts`, `${name}.tsx`, `${name}/index.ts`].find((path) => existsSync(join(SRC, path))) ?? "")
    .filter((name) => name !== "");
}

const IMPORTS = new Map(FILES.map((file) => [file, importsOf(file)]));

const roomOf = (file: string): string => file.split("/")[1]?.replace(/\.tsx?$/, "") ?? "";
const floorOf = (room: string): number => ENGINE.findIndex((floor) => floor.includes(room));

/** The files of one circle, if there is any: a walk that comes back to where it stands. */
function circle(): string[] {
  const done = new Set<string>();
  const walk = (file: string, way: readonly string[]): string[] => {
    const back = way.indexOf(file);
    if (back >= 0) return [...way.slice(back), file];
    if (done.has(file)) return [];
    for (const next of IMPORTS.get(file) ?? []) {
      const found = walk(next, [...way, file]);
      if (found.length > 0) return found;
    }
    done.add(file);
    return [];
  };
  for (const file of FILES) {
    const found = walk(file, []);
    if (found.length > 0) return found;
  }
  return [];
}

describe("the rooms of src", () => {
  it("are all read", () => {
    expect(FILES.length).toBeGreaterThan(300);
    expect([...IMPORTS.values()].flat().length).toBeGreaterThan(1000);
    expect(relative(SRC, join(SRC, "engine"))).toBe("engine");
  });

  it("stand in a known folder, and each imports only from folders below", () => {
    const wrong = FILES.flatMap((file) => {
      const [from = ""] = file.split("/");
      const allowed = HOUSE[from] ?? [];
      return (IMPORTS.get(file) ?? [])
        .filter((to) => !to.startsWith(`${from}/`) && !allowed.includes(to.split("/")[0] ?? ""))
        .map((to) => `${file} -> ${to}`);
    });
    expect(wrong).toEqual([]);
  });

  it("of the engine stand on a known floor, and each imports only from lower floors", () => {
    const engine = FILES.filter((file) => file.startsWith("engine/"));
    expect(engine.filter((file) => floorOf(roomOf(file)) < 0)).toEqual([]);
    const wrong = engine.flatMap((file) =>
      (IMPORTS.get(file) ?? [])
        .filter((to) => roomOf(to) !== roomOf(file) && floorOf(roomOf(to)) >= floorOf(roomOf(file)))
        .map((to) => `${file} -> ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  it("hold no circle of files", () => {
    expect(circle()).toEqual([]);
  });
});
