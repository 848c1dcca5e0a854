import { field, type FieldId } from "../../engine/columns";
import { choicesOf, WHAT_IT_TAKES } from "../../engine/pages/about-columns";

/** Drop-downs offer words and do not refuse others: the engine reads more than the list holds. `kinds` names the cells of the gear kinds. */
export function dropDown(cells: Excel.Range, id: FieldId, kinds: string): void {
  const source = id === "gear" ? kinds : choicesOf(id)?.join(",");
  if (source === undefined) return;
  cells.dataValidation.rule = { list: { inCellDropDown: true, source } };
  cells.dataValidation.errorAlert = {
    showAlert: false,
    style: Excel.DataValidationAlertStyle.information,
    title: field(id).heading,
    message: WHAT_IT_TAKES[id],
  };
}
