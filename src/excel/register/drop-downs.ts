import { field, type FieldId } from "../../engine/columns";
import { GEAR } from "../../engine/gear/index";
import { matchKind } from "../../engine/names/gear-name";
import { choicesOf, WHAT_IT_TAKES } from "../../engine/pages/about-columns";
import { fittingChoices } from "../kit/choices";

/** Gear kinds for the drop-down: those that the register holds, then the others as far as the list reaches. */
export function gearChoices(gears: readonly string[]): readonly string[] {
  const held = new Set(
    [...new Set(gears)].map((gear) => {
      const kind = matchKind(gear);
      return kind.ok ? kind.kind.id : "";
    }),
  );
  const order = [...GEAR].sort((a, b) => Number(held.has(b.id)) - Number(held.has(a.id)));
  return fittingChoices(order.map((kind) => kind.id));
}
/** Drop-downs offer words and do not refuse others: the engine reads more than the list holds. */
export function dropDown(cells: Excel.Range, id: FieldId, gears: readonly string[]): void {
  const choices = id === "gear" ? gears : choicesOf(id);
  if (choices === undefined) return;
  cells.dataValidation.rule = { list: { inCellDropDown: true, source: choices.join(",") } };
  cells.dataValidation.errorAlert = {
    showAlert: false,
    style: Excel.DataValidationAlertStyle.information,
    title: field(id).heading,
    message: WHAT_IT_TAKES[id],
  };
}
