/** What an auditor asks first of an item, as its log has it. Pure. */
import type { FieldId } from "../../engine/columns";
import { readDate } from "../../engine/reading/date";
import { loadUnitOfHeading } from "../../engine/reading/load";
import { readText } from "../../engine/reading/text";
import { cellsOfItem } from "../../engine/report/compare-rules";
import type { ItemResult, Report } from "../../engine/report/model";
import { showDay } from "../shared/days";
import { showBasis } from "../shared/words";

export interface Fact {
  readonly name: string;
  readonly text: string;
}
const ASKED: readonly FieldId[] = ["inspected", "inspector", "size", "ratedLoad", "gauge"];
const NAMES: Partial<Record<FieldId, string>> = {
  inspected: "Last inspection",
  inspector: "Inspected by",
  size: "Size",
  ratedLoad: "Rated load",
  gauge: "Gauge",
};
/** Cells that are filled, a bare figure with the unit of its heading or row. Then the day and the rules that the item is judged by. */
export function factsOf(
  item: Pick<ItemResult, "cells">,
  { headings, asOf, basis }: Pick<Report, "headings" | "asOf" | "basis">,
): readonly Fact[] {
  const cells = cellsOfItem(item, headings);
  const facts = ASKED.flatMap((id): Fact[] => {
    const cell = cells.value(id);
    const day = id === "inspected" ? readDate(cell) : null;
    const text = day?.kind === "value" ? showDay(day.value) : readText(cell);
    if (text === "") return [];
    const unit = id === "ratedLoad" ? loadUnitOfHeading(cells.heading(id)) : id === "gauge" ? cells.unit(id) : null;
    return [{ name: NAMES[id] ?? id, text: unit !== null && /^[\d.,/ ]+$/.test(text) ? `${text} ${unit}` : text }];
  });
  return [...facts, { name: "Judged as of", text: showDay(asOf) }, { name: "Rules in force", text: showBasis(basis) }];
}
