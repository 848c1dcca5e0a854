/** The worksheet functions as built: dist/functions.js in a runtime of its own, called by what dist/functions.json says. */
import { readFileSync } from "node:fs";
import vm from "node:vm";
import type { ParameterShape, WorksheetFunction } from "./worksheet-functions";

/** Error of a cell, as the add-in runtime's own: a code and a sentence. */
class CellError extends Error {
  readonly code: string;

  constructor(code: string, message = "") {
    super(message);
    this.code = code;
  }
}
export interface BuiltFunctions {
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  readonly shapes: ReadonlyMap<string, readonly ParameterShape[]>;
}
interface Described {
  readonly id: string;
  readonly name: string;
  readonly parameters: readonly ParameterShape[];
}
/** Namespace that the manifest gives the functions. */
export const NAMESPACE = "GEAR";
export function loadBuiltFunctions(script: string, metadata: string): BuiltFunctions {
  const associated = new Map<string, WorksheetFunction>();
  vm.runInNewContext(readFileSync(script, "utf8"), {
    CustomFunctions: {
      associate: (id: string, run: WorksheetFunction) => associated.set(id, run),
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
  const described = (JSON.parse(readFileSync(metadata, "utf8")) as { functions: Described[] }).functions;
  const functions = new Map<string, WorksheetFunction>();
  const shapes = new Map<string, readonly ParameterShape[]>();
  for (const { id, name, parameters } of described) {
    const run = associated.get(id);
    if (run === undefined) throw new Error(`functions.js associates nothing with ${id}`);
    functions.set(`${NAMESPACE}.${name}`, run);
    shapes.set(`${NAMESPACE}.${name}`, parameters);
  }
  return { functions, shapes };
}
