/** What a log's own result says of an item: by a list of good words. Any other word is asked about. */
import type { CellValue } from "./cell-value";
import { partsOf, readText } from "./text";

/** "good" speaks for its use, "rejected" is a plain rejection, "tagged" a tag, "cracked" a crack; "unclear" is everything else. */
export type Said = "good" | "rejected" | "tagged" | "cracked" | "unclear";
/** Words for its use. Sorted; each stands for a whole part of the cell. */
export const FOR_USE: readonly string[] = [
  "a1",
  "acc",
  "accept",
  "acceptable",
  "accepted",
  "active",
  "all good",
  "all ok",
  "approved",
  "as new",
  "available",
  "certified",
  "clean",
  "complies",
  "compliant",
  "conforms",
  "current",
  "excellent",
  "fit",
  "fit for purpose",
  "fit for service",
  "fit for use",
  "free of defects",
  "good",
  "good condition",
  "good order",
  "in good condition",
  "in good order",
  "in order",
  "in service",
  "in stock",
  "in store",
  "in use",
  "inspected ok",
  "intact",
  "keep",
  "kept",
  "new",
  "nff",
  "no action",
  "no action needed",
  "no action required",
  "no damage",
  "no defect",
  "no defects",
  "no faults",
  "no visible damage",
  "no visible defects",
  "no wear",
  "ok",
  "ok for use",
  "ok to use",
  "okay",
  "operational",
  "p",
  "pass",
  "passed",
  "passes",
  "released",
  "retained",
  "returned to service",
  "safe",
  "safe for use",
  "safe to use",
  "sat",
  "satisfactory",
  "serviceable",
  "sound",
  "spare",
  "stored",
  "suitable",
  "undamaged",
  "usable",
  "valid",
  "very good",
];
/** Plain rejections: the log itself says that the item is out. */
export const REJECTED: readonly string[] = [
  "bad",
  "cannot be used",
  "condemned",
  "defective",
  "destroy",
  "destroyed",
  "discard",
  "discarded",
  "do not use",
  "don't use",
  "f",
  "fail",
  "failed",
  "failed inspection",
  "fails",
  "failure",
  "must not be used",
  "n/g",
  "ng",
  "no good",
  "nok",
  "not acceptable",
  "not fit",
  "not fit for purpose",
  "not fit for service",
  "not fit for use",
  "not good",
  "not ok",
  "not passed",
  "not safe",
  "not safe to use",
  "not serviceable",
  "not to be used",
  "not usable",
  "reject",
  "rejected",
  "remove",
  "remove from service",
  "removed from service",
  "scrap",
  "scrapped",
  "to be scrapped",
  "u/s",
  "unacceptable",
  "unfit",
  "unfit for service",
  "unfit for use",
  "unsafe",
  "unsat",
  "unsatisfactory",
  "unserviceable",
  "unusable",
  "withdrawn",
  "withdrawn from service",
];
/** Words of tagging out. */
export const TAGGED: readonly string[] = [
  "in quarantine",
  "lock out",
  "locked out",
  "loto",
  "out of service",
  "out of use",
  "quarantine",
  "quarantined",
  "red tag",
  "red tagged",
  "tag out",
  "tagged",
  "tagged out",
  "taken out of service",
  "taken out of use",
];
const CRACKED = /^((hairline|surface|visible|small|large|fine) )?crack(s|ed)?( (found|seen|visible|noted))?$/;
/** What may stand beside a good word: when, and that it was looked at. */
const HARMLESS =
  /^(checked|inspected|examined|cleaned|greased|oiled|lubricated|today|visual(ly)?( (check|inspection))?|annual|no remarks?|\d{1,4}([-/.]\d{1,2}){0,2}([-/.]\d{2,4})?|(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\w* \d{2,4})$/;
const good = new Set(FOR_USE),
  rejected = new Set(REJECTED),
  tagged = new Set(TAGGED);
export function readResult(cell: CellValue): { readonly said: Said; readonly text: string } | null {
  const text = readText(cell);
  if (text === "" || /^(n\/?a|n\.a\.?|-+|—|–)$/i.test(text)) return null;
  const parts = partsOf(text.toLowerCase().replace(/tagged-out/g, "tagged out")).map((part) =>
    part
      .replace(/-/g, " ")
      .replace(/[.!]+$/g, "")
      .trim(),
  );
  const has = (set: ReadonlySet<string>): boolean => parts.some((part) => set.has(part));
  // What follows a rejection may date it, take it back, or say that it is over: only a lone one is plain.
  const plain = parts.every((part) => !/\b(was|were|old|previous\w*|last|until|repaired|replaced|released|20\d\d)\b/.test(part));
  if (has(tagged)) return { said: "tagged", text };
  if (has(rejected)) return { said: plain ? "rejected" : "unclear", text };
  if (parts.some((part) => CRACKED.test(part))) return { said: "cracked", text };
  const first = parts[0] ?? "";
  if (good.has(first) && parts.every((part) => good.has(part) || HARMLESS.test(part))) return { said: "good", text };
  if (parts.every((part) => DENIED_DAMAGE.test(part))) return { said: "good", text };
  return { said: "unclear", text };
}
const DENIED_DAMAGE =
  /^no (visible )?(cracks?|damage|defects?|faults?|wear|deformation|corrosion|issues?|problems?)( (found|seen|noted|observed|visible))?$/;
/** Whether a text says only when or how it was looked at, which beside a good word takes nothing back. */
export const isOnlyBeside = (text: string): boolean => partsOf(text.toLowerCase()).every((part) => HARMLESS.test(part));
