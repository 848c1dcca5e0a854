/** In which direction a section was read, and by which limit: two lines that differ only in these would look alike. Pure. */
import type { Finding } from "../../engine/check/finding";
import { typed } from "../../engine/check/read-sizes";
import type { FieldId } from "../../engine/columns";
import { GEAR } from "../../engine/gear/index";
import type { Cells } from "../../engine/log/cells";
import type { HeadingMatch } from "../../engine/log/match-headings";
import { showDecimal } from "../../engine/numbers/lengths";
import { readLength } from "../../engine/reading/length";
import { cellsOfItem } from "../../engine/report/compare-rules";
import type { ItemResult } from "../../engine/report/model";

/** Findings on the section at right angles; where both directions read the same, none has to be told apart. */
export function acrossIn(item: Pick<ItemResult, "gear" | "cells" | "verdict">, headings: readonly HeadingMatch[]): ReadonlySet<Finding> {
  const checks = GEAR.find((kind) => kind.id === item.gear)?.checks ?? [];
  const cells = cellsOfItem(item, headings);
  const across = item.verdict.findings.filter((finding) => {
    const check = checks.find(({ name }) => name === finding.check);
    if (check?.kind !== "loss" || check.acrossOriginal === undefined || check.acrossMeasured === undefined) return false;
    return shows(finding, cells, check.acrossOriginal, check.acrossMeasured) && !shows(finding, cells, check.original, check.measured);
  });
  return new Set(across);
}
/** Whether a finding's sizes are what these two cells say; without a unit they stand as bare figures. */
function shows({ original, measured }: Finding, cells: Cells, originalId: FieldId, measuredId: FieldId): boolean {
  const says = (id: FieldId, text: string | null): boolean => {
    const read = readLength(cells.value(id), { assume: cells.unit(id) ?? "in" });
    return read.kind === "value" && (text === typed(read) || text === showDecimal(read.value.size, 4));
  };
  return says(originalId, original) && says(measuredId, measured);
}
/** The limit in words: "worn in two directions, 5 % of as-new". */
export function limitWords({ criterion, limit }: Finding, gear: string | null): string {
  const record = GEAR.find((kind) => kind.id === gear)?.criteria.find(({ id }) => id === criterion);
  return [record?.twoWays === true ? "worn in two directions" : "", limit ?? ""].filter((words) => words !== "").join(", ");
}
