/** Conditional formats with a formula; other kinds are not modelled. */
import { addressOf } from "../../book/address";
import type { Box, FormatRule, Sheet } from "../../book/book";
import { colorOf } from "../../book/colors";
import { invalidArgument, notModelled } from "../../book/errors";
import { faultOf, piecesOf } from "../../book/formula-text";
import { HostCollection, HostObject } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";
import { requireUnlocked } from "../sheet/cells";
import { clearRules, removeRule, rulesIn } from "../sheet/rules";

export class ConditionalFormatCollection extends HostCollection<ConditionalFormat> {
  readonly type = "ConditionalFormatCollection";
  private readonly sheet: Sheet;
  private readonly box: Box;

  constructor(state: HostState, sheet: Sheet, box: Box) {
    super(state);
    this.sheet = sheet;
    this.box = box;
  }

  list(): ConditionalFormat[] {
    return rulesIn(this.sheet, this.box).map((rule) => new ConditionalFormat(this.state, this.sheet, rule));
  }

  answersTo(item: ConditionalFormat, key: string | number): boolean {
    return item.Id === key;
  }

  /** A new rule comes before all others. */
  Add(kind: string): ConditionalFormat {
    if (kind !== "Custom") throw notModelled(`ConditionalFormatCollection.Add(${kind})`);
    requireUnlocked(this.sheet, this.box, "ConditionalFormatCollection.add");
    const rule: FormatRule = { id: `{rule-${String(this.state.book.nextId())}}`, box: { ...this.box }, formula: "", stopIfTrue: false };
    this.sheet.rules.unshift(rule);
    this.state.book.tell({ kind: "rules", sheet: this.sheet });
    return new ConditionalFormat(this.state, this.sheet, rule);
  }

  ClearAll(): null {
    requireUnlocked(this.sheet, this.box, "ConditionalFormatCollection.clearAll");
    clearRules(this.state, this.sheet, this.box);
    return null;
  }
}
class ConditionalFormat extends HostObject {
  readonly type = "ConditionalFormat";
  readonly scalars = ["Id", "Type", "Priority", "StopIfTrue"];
  readonly Type = "Custom";
  private readonly sheet: Sheet;
  private readonly rule: FormatRule;

  constructor(state: HostState, sheet: Sheet, rule: FormatRule) {
    super(state);
    this.sheet = sheet;
    this.rule = rule;
  }

  get Id(): string {
    return this.rule.id;
  }
  get Custom(): CustomConditionalFormat {
    return new CustomConditionalFormat(this.state, this.sheet, this.rule);
  }
  get CustomOrNullObject(): CustomConditionalFormat {
    return this.Custom;
  }
  GetRange(): RangeObject {
    return this.state.make.range(this.sheet, this.rule.box);
  }
  GetRangeOrNullObject(): RangeObject {
    return this.GetRange();
  }

  get StopIfTrue(): boolean {
    return this.rule.stopIfTrue;
  }
  set StopIfTrue(stop: boolean) {
    this.rule.stopIfTrue = stop;
    this.state.book.tell({ kind: "rules", sheet: this.sheet });
  }

  get Priority(): number {
    return this.sheet.rules.indexOf(this.rule);
  }
  set Priority(priority: number) {
    if (!Number.isInteger(priority) || priority < 0) throw invalidArgument(undefined, "ConditionalFormat.priority");
    this.sheet.rules = this.sheet.rules.filter((rule) => rule !== this.rule);
    this.sheet.rules.splice(priority, 0, this.rule);
    this.state.book.tell({ kind: "rules", sheet: this.sheet });
  }

  Delete(): null {
    removeRule(this.state, this.sheet, this.rule);
    return null;
  }
}
abstract class RulePart extends HostObject {
  protected readonly sheet: Sheet;
  protected readonly rule: FormatRule;

  constructor(state: HostState, sheet: Sheet, rule: FormatRule) {
    super(state);
    this.sheet = sheet;
    this.rule = rule;
  }

  protected tell(): void {
    this.state.book.tell({ kind: "rules", sheet: this.sheet });
  }
}
class CustomConditionalFormat extends RulePart {
  readonly type = "CustomConditionalFormat";
  readonly scalars = [];
  get Rule(): ConditionalFormatRule {
    return new ConditionalFormatRule(this.state, this.sheet, this.rule);
  }
  get Format(): ConditionalRangeFormat {
    return new ConditionalRangeFormat(this.state, this.sheet, this.rule);
  }
}
class ConditionalFormatRule extends RulePart {
  readonly type = "ConditionalFormatRule";
  readonly scalars = ["Formula"];
  get Formula(): string {
    return this.rule.formula;
  }
  set Formula(formula: string) {
    const fault = faultOfRule(formula);
    if (fault !== null)
      throw invalidArgument(
        `Excel can't take the rule ${formula} for ${addressOf(this.rule.box)}: ${fault}.`,
        "ConditionalFormatRule.formula",
      );
    this.rule.formula = formula;
    this.tell();
  }
}
/** What rules of conditional formats and of data validation can't hold. */
export function faultOfRule(formula: unknown): string | null {
  if (typeof formula !== "string" || !formula.startsWith("=")) return "a formula begins with =";
  const fault = faultOf(formula);
  if (fault !== null) return fault;
  if (piecesOf(formula)?.some((piece) => piece.kind === "bracket")) return "table references can't stand in rules";
  const ofAddIn = /(?<![\p{L}\p{N}_.])GEAR\.[\p{L}\p{N}_.]+\s*\(/iu;
  return piecesOf(formula)?.some((piece) => piece.kind === "code" && ofAddIn.test(piece.text))
    ? "functions of an add-in can't stand in rules"
    : null;
}
class ConditionalRangeFormat extends RulePart {
  readonly type = "ConditionalRangeFormat";
  readonly scalars = [];
  get Fill(): ConditionalRangeFill {
    return new ConditionalRangeFill(this.state, this.sheet, this.rule);
  }
  get Font(): ConditionalRangeFont {
    return new ConditionalRangeFont(this.state, this.sheet, this.rule);
  }
}
class ConditionalRangeFill extends RulePart {
  readonly type = "ConditionalRangeFill";
  readonly scalars = ["Color"];
  get Color(): string {
    return this.rule.fill ?? "";
  }
  set Color(given: unknown) {
    this.rule.fill = colorOf(given, "ConditionalRangeFill.color");
    this.tell();
  }
  Clear(): null {
    delete this.rule.fill;
    this.tell();
    return null;
  }
}
class ConditionalRangeFont extends RulePart {
  readonly type = "ConditionalRangeFont";
  readonly scalars = ["Color", "Bold", "Italic", "Strikethrough"];
  get Color(): string {
    return this.rule.color ?? "";
  }
  set Color(given: unknown) {
    this.rule.color = colorOf(given, "ConditionalRangeFont.color");
    this.tell();
  }
  get Bold(): boolean {
    return this.rule.bold ?? false;
  }
  set Bold(bold: boolean) {
    this.rule.bold = bold;
    this.tell();
  }
  get Italic(): boolean {
    return this.rule.italic ?? false;
  }
  set Italic(italic: boolean) {
    this.rule.italic = italic;
    this.tell();
  }
  get Strikethrough(): boolean {
    return this.rule.strikethrough ?? false;
  }
  set Strikethrough(struck: boolean) {
    this.rule.strikethrough = struck;
    this.tell();
  }
  Clear(): null {
    delete this.rule.color;
    delete this.rule.bold;
    delete this.rule.italic;
    delete this.rule.strikethrough;
    this.tell();
    return null;
  }
}
