import { addressOf, holds, intersection, quoteSheet, without } from "../../book/address";
import type { Box, Sheet, Validation } from "../../book/book";
import { invalidArgument, notModelled } from "../../book/errors";
import { HostObject, isRange } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { requireUnlocked } from "../sheet/cells";
import { faultOfRule } from "./conditional-formats";

const KINDS: Readonly<Record<string, string>> = {
  list: "List",
  wholeNumber: "WholeNumber",
  decimal: "Decimal",
  date: "Date",
  time: "Time",
  textLength: "TextLength",
  custom: "Custom",
};
/** Excel takes at most this many characters of a list written out in the rule. */
const LONGEST_LIST = 255;
export class DataValidation extends HostObject {
  readonly type = "DataValidation";
  readonly scalars = ["Type", "Rule", "Prompt", "ErrorAlert", "IgnoreBlanks"];
  private readonly sheet: Sheet;
  private readonly box: Box;

  constructor(state: HostState, sheet: Sheet, box: Box) {
    super(state);
    this.sheet = sheet;
    this.box = box;
  }

  get Type(): string | null {
    const touched = this.sheet.validations.filter((validation) => intersection(validation.box, this.box) !== null);
    if (touched.length === 0) return "None";
    const validation = touched[0];
    if (touched.length > 1 || !validation || !holds(validation.box, this.box)) return "Inconsistent";
    const kind = Object.keys(validation.rule)[0];
    return kind === undefined ? "None" : (KINDS[kind] ?? null);
  }

  get Rule(): Record<string, unknown> {
    return this.found()?.rule ?? {};
  }
  set Rule(given: Record<string, unknown>) {
    const rule = this.readRule(given);
    this.change("rule", (validation) => {
      validation.rule = rule;
    });
  }

  get Prompt(): NonNullable<Validation["prompt"]> {
    return this.found()?.prompt ?? { title: "", message: "", showPrompt: true };
  }
  set Prompt(given: Partial<NonNullable<Validation["prompt"]>>) {
    const prompt = { title: "", message: "", showPrompt: true, ...given };
    // Excel's own limits for what pops up beside a cell.
    if (prompt.title.length > 32 || prompt.message.length > 255)
      throw invalidArgument("A prompt takes 32 characters of title and 255 of message.", "DataValidation.prompt");
    this.change("prompt", (validation) => {
      validation.prompt = prompt;
    });
  }

  get ErrorAlert(): NonNullable<Validation["errorAlert"]> {
    return this.found()?.errorAlert ?? { title: "", message: "", showAlert: true, style: "Stop" };
  }
  set ErrorAlert(given: Partial<NonNullable<Validation["errorAlert"]>>) {
    const errorAlert = { title: "", message: "", showAlert: true, style: "Stop", ...given };
    if (errorAlert.title.length > 32 || errorAlert.message.length > 255)
      throw invalidArgument("An alert takes 32 characters of title and 255 of message.", "DataValidation.errorAlert");
    this.change("errorAlert", (validation) => {
      validation.errorAlert = errorAlert;
    });
  }

  get IgnoreBlanks(): boolean {
    return this.found()?.ignoreBlanks ?? true;
  }
  set IgnoreBlanks(ignore: boolean) {
    this.change("ignoreBlanks", (validation) => {
      validation.ignoreBlanks = ignore;
    });
  }

  Clear(): null {
    requireUnlocked(this.sheet, this.box, "DataValidation.clear");
    this.cutOut();
    this.state.book.tell({ kind: "validations", sheet: this.sheet });
    return null;
  }

  private found(): Validation | undefined {
    return this.sheet.validations.find((validation) => holds(validation.box, this.box));
  }

  /** Other cells of a validation keep it. */
  private cutOut(): void {
    this.sheet.validations = this.sheet.validations.flatMap((validation) =>
      without(validation.box, this.box).map((part) => (part === validation.box ? validation : { ...validation, box: part })),
    );
  }

  private change(member: string, change: (validation: Validation) => void): void {
    requireUnlocked(this.sheet, this.box, `DataValidation.${member}`);
    const own: Validation = { rule: {}, ignoreBlanks: true, ...this.found(), box: { ...this.box } };
    this.cutOut();
    change(own);
    this.sheet.validations.push(own);
    this.state.book.tell({ kind: "validations", sheet: this.sheet });
  }

  private readRule(given: Record<string, unknown>): Record<string, unknown> {
    const location = "DataValidation.rule";
    const kinds = Object.keys(given).filter((kind) => given[kind] !== null && given[kind] !== undefined);
    const kind = kinds[0];
    if (kind === undefined || kinds.length > 1 || !(kind in KINDS)) throw invalidArgument("A rule is of exactly one kind.", location);
    const rule = structuredCloneOf(given[kind]);
    if (kind === "list") {
      const { source } = rule;
      if (typeof source !== "string" || source === "") throw invalidArgument("A list needs a source.", location);
      if (source.startsWith("=")) this.requireRule(source);
      else if (source.length > LONGEST_LIST)
        throw invalidArgument(
          `A list written out in the rule takes ${String(LONGEST_LIST)} characters; this one has ${String(source.length)}.`,
          location,
        );
    } else if (kind === "custom") {
      this.requireRule(rule["formula"]);
    } else if (typeof rule["operator"] !== "string" || rule["formula1"] === undefined) {
      throw invalidArgument("The rule needs formula1 and operator.", location);
    }
    return { [kind]: rule };
  }

  private requireRule(formula: unknown): void {
    const fault = faultOfRule(formula);
    if (fault !== null) throw invalidArgument(`Excel can't take the rule ${String(formula)}: ${fault}.`, "DataValidation.rule");
  }
}
/** A plain copy; a range among the members becomes its address. */
function structuredCloneOf(given: unknown): Record<string, unknown> {
  if (given === null || typeof given !== "object") throw invalidArgument(undefined, "DataValidation.rule");
  return Object.fromEntries(
    Object.entries(given).map(([name, value]: [string, unknown]) => {
      if (isRange(value)) return [name, `=${quoteSheet(value.sheet.name)}!${addressOf(value.box, true)}`];
      if (value !== null && typeof value === "object") throw notModelled(`DataValidation.rule with ${name}`);
      return [name, value];
    }),
  );
}
