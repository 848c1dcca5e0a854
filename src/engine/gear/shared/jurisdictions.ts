/** What other public texts say, one list for each gear kind that they name. */
import type { Criterion, Limit } from "../../rules/criterion";
import type { SourceKey } from "../../rules/documents";
import type { BasisId } from "../../rules/rule-sets";
import { CHECKED, from, removedOnSight } from "./records";

const record = (
  kind: string,
  check: string,
  basis: BasisId,
  limit: Limit,
  document: SourceKey,
  clause: string,
  status: Criterion["status"] = "read",
): Criterion => ({
  id: `${kind}.${check.replaceAll(" ", "-")}.${basis}`,
  check,
  basis,
  limit,
  beyond: "REMOVE",
  source: from(document, clause),
  status,
  checked: CHECKED,
});
/** Alberta's hook rules: the section by area, not by diameter. */
export function albertaHook(kind: string, throat: string, wear: readonly string[], twist: string): readonly Criterion[] {
  return [
    record(kind, throat, "alberta", { word: "above", share: "0.15" }, "Alberta OHS", "s.309(a)"),
    record(kind, twist, "alberta", { word: "above", degrees: "10" }, "Alberta OHS", "s.309(b)"),
    ...wear.map((check) => record(kind, check, "alberta", { word: "from", area: "0.10" }, "Alberta OHS", "s.309(c)")),
    ...removedOnSight(kind, "cracks", { alberta: ["Alberta OHS", "s.309(d)"] }),
  ];
}
export function queenslandHook(kind: string, throat: string, wear: readonly string[]): readonly Criterion[] {
  return [
    record(kind, throat, "queensland", { word: "above", share: "0.05" }, "Queensland", "pp. 34, 38"),
    ...wear.map((check) => record(kind, check, "queensland", { word: "above", share: "0.10" }, "Queensland", "p. 34")),
  ];
}
export function germanHook(kind: string, throat: string, saddle: string): readonly Criterion[] {
  return [
    record(kind, throat, "germany", { word: "above", share: "0.10" }, "DE discard", "", "restated"),
    record(kind, saddle, "germany", { word: "above", share: "0.05" }, "DE discard", "", "restated"),
    ...removedOnSight(kind, "cracks", { germany: ["DE discard", ""] }),
  ];
}
/** Ships' loose gear: body 10 %, pins 6 %, any crack or permanent deformation. */
export function shipsGear(kind: string, wear: readonly string[], pins: readonly string[]): readonly Criterion[] {
  return [
    ...wear.map((check) => record(kind, check, "ships", { word: "above", share: "0.10" }, "ISO 16855", "")),
    ...pins.map((check) => record(kind, check, "ships", { word: "above", share: "0.06" }, "ISO 16855", "")),
    ...removedOnSight(kind, "cracks", { ships: ["ISO 16855", ""] }),
    ...removedOnSight(kind, "deformation", { ships: ["ISO 16855", ""] }),
  ];
}
/** Queensland on chain: 10 % wear of the link's diameter, 10 % longer. */
export function queenslandChain(kind: string, thickness: string, length: string): readonly Criterion[] {
  return [
    record(kind, thickness, "queensland", { word: "above", share: "0.10" }, "Queensland", "p. 34"),
    record(kind, length, "queensland", { word: "above", share: "0.10" }, "Queensland", "p. 35"),
  ];
}
/** German practice on chain slings: 5 % on the length of the chain or the inside of one link, 10 % of the nominal thickness anywhere. */
export function germanChain(kind: string, thickness: string, length: string): readonly Criterion[] {
  return [
    record(kind, length, "germany", { word: "above", share: "0.05" }, "DE slings", "", "restated"),
    record(kind, thickness, "germany", { word: "above", share: "0.10" }, "DE slings", "", "restated"),
  ];
}
