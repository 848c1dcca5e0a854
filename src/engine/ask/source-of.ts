import { everyMonths, INTERVAL_CRITERIA } from "../due/interval-criteria";
import { GEAR } from "../gear/index";
import { type Answer, good, none } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { cite } from "../rules/documents";
import { limitInWords } from "../rules/limit-in-words";

/** Document, clause, edition and status of the criteria whose id is, or begins with, the text. */
export function sourceOf(criterion: CellValue): Answer<string> {
  const text = readText(criterion).toLowerCase().replace(/\s+/g, "-");
  if (text === "") return none("The criterion is missing.");
  const all = [
    ...GEAR.flatMap((kind) => kind.criteria).map((c) => ({ c, figure: limitInWords(c.limit) })),
    ...INTERVAL_CRITERIA.map((c) => ({ c, figure: `${everyMonths(c.months)} at most` })),
  ];
  const found = all.filter(({ c }) => c.id.toLowerCase() === text);
  const near =
    found.length > 0
      ? found
      : all.filter(({ c }) => c.id.toLowerCase().startsWith(`${text}.`) || c.id.toLowerCase().startsWith(`${text}-`));
  if (near.length === 0) return none(`There is no criterion "${readText(criterion)}"; ids are like ${all[0]?.c.id ?? ""}.`);
  return good(near.map(({ c, figure }) => `${c.id}: ${figure}; ${cite(c.source)}; ${STATUS[c.status]}, checked ${c.checked}`).join("\n"));
}
const STATUS = {
  read: "read in the document",
  restated: "read on a page that restates it",
  practice: "common practice",
  unconfirmed: "unconfirmed, not used",
} as const;
