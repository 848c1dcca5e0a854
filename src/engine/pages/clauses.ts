/** The clauses behind the verdicts as a page: covered, unconfirmed, left out, by document. Written by `npm run clauses`. */
import { listSources, type SourceLine } from "./figures";
import { LEFT_OUT, unconfirmed } from "./not-judged";

const STATUS: Record<string, string> = {
  read: "read",
  restated: "restated",
  practice: "common practice",
  unconfirmed: "unconfirmed, not used",
};
function groups(lines: readonly SourceLine[]): ReadonlyMap<string, readonly SourceLine[]> {
  const byDocument = new Map<string, SourceLine[]>();
  for (const line of lines) byDocument.set(line.document, [...(byDocument.get(line.document) ?? []), line]);
  return new Map([...byDocument].sort(([a], [b]) => a.localeCompare(b, "en")));
}
const row = (cells: readonly string[]): string => `| ${cells.map((c) => c.replaceAll("|", "/")).join(" | ")} |`;
/** The page as Markdown. */
export function coveragePage(): string {
  const lines = listSources();
  const documents = [...groups(lines)].flatMap(([document, of]) => [
    `## ${document}`,
    "",
    row(["clause", "gear", "check", "comes out", "rule set", "figure"]),
    row(["---", "---", "---", "---", "---", "---"]),
    ...of.map((l) => row([l.clause === "" ? "-" : l.clause, l.gear, l.check, l.figure, l.basis, STATUS[l.status] ?? l.status])),
    "",
  ]);
  return [
    "# Clauses covered, unconfirmed and left out",
    "",
    'Generated from the criteria records by `npm run clauses`; do not edit. "read": the figure was read in a copy of the document; "restated": on a page that restates it.',
    "",
    ...documents,
    "## Unconfirmed, not used",
    "",
    row(["document", "clause", "what it is said to say", "why it is not used"]),
    row(["---", "---", "---", "---"]),
    ...unconfirmed().map((l) => row([l.document, l.clause === "" ? "-" : l.clause, l.what, l.why])),
    "",
    "## Left out",
    "",
    row(["document", "clause", "what it says", "why it is not judged"]),
    row(["---", "---", "---", "---"]),
    ...LEFT_OUT.map((l) => row([l.document, l.clause === "" ? "-" : l.clause, l.what, l.why])),
    "",
  ].join("\n");
}
