/** The add-in's worksheet functions as built, loaded the way Excel loads them: a script that associates ids, and their description. */
import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import type { ParameterShape, WorksheetFunction } from "../calculation/worksheet-functions";

const NAMESPACE = "GEAR";
export interface AddInFunctions {
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  readonly shapes: ReadonlyMap<string, readonly ParameterShape[]>;
  /** For the list that opens while a formula is typed. */
  readonly described: readonly IFunctionInfo[];
}
interface DescribedParameter extends ParameterShape {
  readonly name: string;
  readonly description?: string;
  readonly optional?: boolean;
}
interface DescribedFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly DescribedParameter[];
}
class FunctionError extends Error {
  readonly code: string;

  constructor(code: string, message = "") {
    super(message);
    this.code = code;
  }
}
export async function loadFunctions(address: string): Promise<AddInFunctions> {
  const associated = new Map<string, WorksheetFunction>();
  Object.assign(window, {
    CustomFunctions: {
      associate: (id: string, run: WorksheetFunction) => associated.set(id.toUpperCase(), run),
      Error: FunctionError,
      ErrorCode: {
        invalidValue: "#VALUE!",
        notAvailable: "#N/A",
        invalidNumber: "#NUM!",
        divisionByZero: "#DIV/0!",
        invalidReference: "#REF!",
        nullReference: "#NULL!",
        invalidName: "#NAME?",
      },
    },
  });
  await runScript(`${address}functions.js`);
  const answer = await fetch(`${address}functions.json`);
  if (!answer.ok) throw new Error("The worksheet functions are not built (functions.json is missing); run npm run build.");
  const metadata = (await answer.json()) as { functions: DescribedFunction[] };
  const functions = new Map<string, WorksheetFunction>();
  const shapes = new Map<string, readonly ParameterShape[]>();
  for (const { id, name, parameters } of metadata.functions) {
    const run = associated.get(id.toUpperCase());
    if (!run) throw new Error(`The built functions lack ${id}, which their description lists; run npm run build.`);
    functions.set(`${NAMESPACE}.${name}`, run);
    shapes.set(`${NAMESPACE}.${name}`, parameters);
  }
  return { functions, shapes, described: metadata.functions.map(describe) };
}
function runScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => {
      resolve();
    });
    script.addEventListener("error", () => {
      reject(new Error("The worksheet functions are not built (functions.js is missing); run npm run build."));
    });
    document.head.append(script);
  });
}
function describe({ name, description, parameters }: DescribedFunction): IFunctionInfo {
  return {
    functionName: `${NAMESPACE}.${name}`,
    functionType: FunctionType.User,
    description,
    abstract: description.split(". ")[0] ?? description,
    functionParameter: parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? "",
      example: "",
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  };
}
