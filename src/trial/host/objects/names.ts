/** Defined names of the workbook. */
import { addressOf, parseBox, quoteSheet } from "../../book/address";
import { invalidArgument, itemAlreadyExists, itemNotFound } from "../../book/errors";
import { faultOf } from "../../book/formula-text";
import { type Found, HostCollection, HostObject, type Key, NULL_OBJECT, sameText, isRange } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";
import { placeOfFormula } from "../sheet/named-range";

export class NamedItemCollection extends HostCollection<NamedItem> {
  readonly type = "NamedItemCollection";

  list(): NamedItem[] {
    return [...this.state.book.names.keys()].map((name) => new NamedItem(this.state, name));
  }

  answersTo(item: NamedItem, key: Key): boolean {
    return sameText(item.Name, key);
  }

  Add(name: string, reference: RangeObject | string): NamedItem {
    const location = "NamedItemCollection.add";
    requireName(name, location);
    if (this.find(name)) throw itemAlreadyExists(`a name ${name}`, location);
    if (this.state.book.tables.some((table) => sameText(table.name, name))) throw itemAlreadyExists(`a table named ${name}`, location);
    this.state.book.names.set(name, formulaOf(reference, location));
    this.state.book.tell({ kind: "sheets" });
    return new NamedItem(this.state, name);
  }
}
/** The rules for names of ranges and of tables: no blanks, not like an address. */
export function requireName(name: unknown, location: string): asserts name is string {
  const fits =
    typeof name === "string" &&
    name.length <= 255 &&
    /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u.test(name) &&
    parseBox(name) === null &&
    !/^(?:r|c|r\d+c\d+)$/i.test(name);
  if (!fits) throw invalidArgument(`${String(name)} can't be a name.`, location);
}
function formulaOf(reference: RangeObject | string, location: string): string {
  if (isRange(reference)) return `=${quoteSheet(reference.sheet.name)}!${addressOf(reference.box, true)}`;
  const formula = reference.startsWith("=") ? reference : `="${reference.replace(/"/g, '""')}"`;
  const fault = faultOf(formula);
  if (fault !== null) throw invalidArgument(`Excel can't take ${formula}: ${fault}.`, location);
  return formula;
}
class NamedItem extends HostObject {
  readonly type = "NamedItem";
  readonly scalars = ["Name", "Formula", "Type", "Value", "Visible", "Scope", "Comment"];
  readonly Name: string;
  readonly Visible = true;
  readonly Scope = "Workbook";
  readonly Comment = "";

  constructor(state: HostState, name: string) {
    super(state);
    this.Name = name;
  }

  get _Id(): string {
    return this.Name;
  }
  get Id(): string {
    return this.Name;
  }

  get Formula(): string {
    const formula = this.state.book.names.get(this.Name);
    if (formula === undefined) throw itemNotFound("NamedItem.formula");
    return formula;
  }
  set Formula(formula: string) {
    this.state.book.names.set(this.Name, formulaOf(formula, "NamedItem.formula"));
    this.state.book.tell({ kind: "sheets" });
  }

  get Type(): string {
    return placeOfFormula(this.state, this.Formula) ? "Range" : "String";
  }
  get Value(): string {
    return this.Formula.replace(/^=/, "").replace(/^"(.*)"$/, "$1");
  }

  GetRange(): RangeObject {
    const range = this.GetRangeOrNullObject();
    if (range === NULL_OBJECT) throw itemNotFound("NamedItem.getRange");
    return range;
  }

  GetRangeOrNullObject(): Found<RangeObject> {
    const place = placeOfFormula(this.state, this.Formula);
    return place ? this.state.make.range(place.sheet, place.box) : NULL_OBJECT;
  }

  Delete(): null {
    this.state.book.names.delete(this.Name);
    this.state.book.tell({ kind: "sheets" });
    return null;
  }
}
