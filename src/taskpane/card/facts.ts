/** What an auditor asks first of an item, as its log has it. Pure. */
import { readDate, readText } from "../../engine/cell";
import type { FieldId } from "../../engine/fields";
import type { HeadingMatch, ItemResult, Report } from "../../engine/model";
import { showDay } from "../days";
import { showBasis } from "../words";

export interface Fact {
  readonly name: string;
  readonly text: string;
}

const ASKED: readonly FieldId[] = ["inspected", "inspector", "size", "ratedLoad", "gauge"];
const NAMES: Partial<Record<FieldId, string>> = { inspected: "Last inspection", inspector: "Inspected by", size: "Size", ratedLoad: "Rated load", gauge: "Gauge" };

/** Cells that are filled; a bare figure keeps the heading that holds its unit. Then the day and the rules that the item is judged by. */
export function factsOf({ cells }: Pick<ItemResult, "cells">, { headings, asOf, basis }: Pick<Report, "headings" | "asOf" | "basis">): readonly Fact[] {
  const facts = ASKED.flatMap((id): Fact[] => {
    const cell = cells.get(id);
    const day = id === "inspected" ? readDate(cell) : null;
    const text = day?.kind === "value" ? showDay(day.value) : readText(cell);
    if (text === "") return [];
    const heading = headings.find(({ field }) => field === id);
    return [{ name: NAMES[id] ?? id, text: heading !== undefined && typeof cell === "number" ? withUnit(text, heading) : text }];
  });
  return [...facts, { name: "Judged as of", text: showDay(asOf) }, { name: "Rules in force", text: showBasis(basis) }];
}

function withUnit(text: string, { heading, unit }: HeadingMatch): string {
  return unit === null ? `${text} (${heading})` : `${text} ${unit}`;
}
