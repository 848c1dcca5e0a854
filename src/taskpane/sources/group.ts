/** Lines put together by document, and found by words. */
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
/** Whether every word searched for stands somewhere in the texts. */
export function matching(words: readonly string[], texts: readonly string[]): boolean {
  const all = texts.join(" ").toLowerCase();
  return words.every((word) => all.includes(word));
}
export function byDocument<T extends { readonly document: string }>(lines: readonly T[]): [string, T[]][] {
  const documents = new Map<string, T[]>();
  for (const line of lines) {
    const group = documents.get(line.document);
    if (group) group.push(line);
    else documents.set(line.document, [line]);
  }
  return [...documents];
}
