/** Source lines put together by document. */
import type { SourceLine } from "../../engine/sources-list";

const STATUS: Record<string, string> = {
  read: "",
  restated: "The figure was read on a page that restates it.",
  practice: "Common practice; no published source.",
  unconfirmed: "Not confirmed; not used for a verdict.",
};

export function statusWord(status: string): string {
  return STATUS[status] ?? status;
}

/** An observation has no figure: finding it is enough. */
export function figureWords(figure: string): string {
  return figure === "any" ? "any fault takes it out" : figure;
}

export function byDocument(lines: readonly SourceLine[]): [string, SourceLine[]][] {
  const documents = new Map<string, SourceLine[]>();
  for (const line of lines) {
    const group = documents.get(line.document);
    if (group) group.push(line);
    else documents.set(line.document, [line]);
  }
  return [...documents];
}
