/** From what is picked and typed to the engine's answer. */
import { type HookupItem, type HookupRequest, type HookupResult, judgeHookup } from "../../engine/lift/judge-lift";
import { SLINGS } from "../../engine/lift/reductions";
import { loadUnitOfHeading } from "../../engine/reading/load";
import type { ItemResult, Report } from "../../engine/report/model";
import type { LiftForm } from "../state/lift-form";

export interface JudgedLift {
  readonly request: HookupRequest;
  readonly result: HookupResult;
}
/** A sling goes into a leg; what else is picked is taken to hold the whole load until the user says otherwise. */
export function firstPlace(item: ItemResult): "leg" | "top" {
  return item.gear !== null && SLINGS.includes(item.gear) ? "leg" : "top";
}
export function judgeLift(form: LiftForm, report: Report): JudgedLift {
  // The same id in other letters is the same id: nobody can tell which row is the item in the hand.
  const found = form.picked.map((picked) => ({
    picked,
    items: report.items.filter((item) => item.id.toLowerCase() === picked.id.toLowerCase()),
  }));
  const items = found.flatMap(({ picked, items: same }): HookupItem[] => same.map((item) => ({ item, place: picked.place })));
  const { load, loadUnit, ...rest } = form.inputs;
  const heading = report.headings.find((h) => h.field === "ratedLoad")?.heading;
  const request: HookupRequest = {
    ...rest,
    items,
    load: load.trim() === "" ? "" : `${load.trim()} ${loadUnit}`.trim(),
    chokeAngle: rest.hitch === "choker" ? rest.chokeAngle : "",
    sideAngles: Object.fromEntries(form.picked.map(({ id, side }) => [id, side])),
    asOf: report.asOf,
    strict: report.basis.includes("strict") || (form.strict && (rest.legs === "3" || rest.legs === "4" || rest.hitch === "basket")),
    ...(heading === undefined ? {} : { ratedUnit: loadUnitOfHeading(heading), ratedHeading: heading }),
  };
  const result = judgeHookup(request);
  const gone = found
    .filter(({ items: same }) => same.length === 0)
    .map(({ picked }) => `${picked.id} was picked and is no longer in the log; drop it or put it back.`);
  return { request, result: gone.length === 0 ? result : { ...result, ok: false, refusals: [...gone, ...result.refusals] } };
}
export type Outcome = "nothing picked" | "awaited" | "refused" | "overloaded" | "carries";
/** An overload is told first, whatever else is missing. */
export function outcomeOf(form: LiftForm, result: HookupResult): Outcome {
  if (form.picked.length === 0) return "nothing picked";
  if (result.lines.some((line) => line.decision === "OVERLOADED")) return "overloaded";
  if (result.ok) return "carries";
  return result.refusals.every((sentence) => sentence === result.awaited) ? "awaited" : "refused";
}
