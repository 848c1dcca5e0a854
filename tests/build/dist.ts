/** The built files; `npm test` builds them first. */
import { existsSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

const at = (file: string): URL => new URL(`../../dist/${file}`, import.meta.url);

export function built(file: string): string {
  if (!existsSync(at(file))) throw new Error(`dist/${file} is not built; run npm run build`);
  return readFileSync(at(file), "utf8");
}

export function gzipped(file: string): number {
  return gzipSync(Buffer.from(built(file))).length;
}

export interface BuiltFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly type: string;
    readonly optional?: boolean;
    readonly dimensionality?: string;
  }[];
}

export function metadata(): readonly BuiltFunction[] {
  return (JSON.parse(built("functions.json")) as { functions: BuiltFunction[] }).functions;
}

/** Loads functions.js in a bare runtime whose only global beside the language is CustomFunctions. */
export async function loadFunctions(): Promise<{
  readonly functions: ReadonlyMap<string, (...args: unknown[]) => unknown>;
  readonly CellError: new (code: string, message?: string) => Error & { code: string };
}> {
  const { default: vm } = await import("node:vm");
  const functions = new Map<string, (...args: unknown[]) => unknown>();
  class CellError extends Error {
    readonly code: string;
    constructor(code: string, message = "") {
      super(message);
      this.code = code;
    }
  }
  vm.runInNewContext(built("functions.js"), {
    CustomFunctions: {
      associate: (id: string, fn: (...args: unknown[]) => unknown) => functions.set(id, fn),
      Error: CellError,
      ErrorCode: {
        invalidValue: "#VALUE!",
        notAvailable: "#N/A",
        invalidNumber: "#NUM!",
        divisionByZero: "#DIV/0!",
        invalidReference: "#REF!",
        nullReference: "#NULL!",
      },
    },
  });
  return { functions, CellError };
}
