export const BASES = {
  law: { name: "Law" },
  standard: { name: "Standard" },
  practice: { name: "Practice" },
  strict: { name: "Strict" },
  alberta: { name: "Alberta" },
  queensland: { name: "Queensland" },
  germany: { name: "Germany" },
  ships: { name: "Ships" },
  iso: { name: "ISO" },
  uk: { name: "UK" },
  house: { name: "House" },
} as const;
export type BasisId = keyof typeof BASES;
/** The published rule sets; the house's own limits come with a sheet. */
export const BASIS_IDS = (Object.keys(BASES) as BasisId[]).filter((id) => id !== "house");
/** Rule sets by their names, as people choose them; read back in any form that names them. */
export function showRules(ids: readonly BasisId[]): string {
  return ids.map((id) => BASES[id].name).join(" + ");
}
export const DEFAULT_BASIS: readonly BasisId[] = ["standard", "practice"];
/** Sets that a set contains, itself included. */
const CONTAINS: Record<BasisId, readonly BasisId[]> = {
  law: ["law"],
  standard: ["standard"],
  practice: ["practice"],
  strict: ["strict", "practice"],
  alberta: ["alberta"],
  queensland: ["queensland"],
  germany: ["germany"],
  ships: ["ships"],
  iso: ["iso"],
  uk: ["uk"],
  house: ["house"],
};
/** All rule sets whose criteria apply under a choice. */
export function inForce(chosen: readonly BasisId[]): ReadonlySet<BasisId> {
  return new Set(chosen.flatMap((id) => CONTAINS[id]));
}
