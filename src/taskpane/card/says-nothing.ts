/** The line about rule sets that hold no limit for an item. Pure. */
import { BASES, type BasisId } from "../../engine/bases";

/** "Law, Germany and Ships say nothing, or not enough, about a shackle." */
export function saysNothing(sets: readonly BasisId[], kind: string): string {
  const names: readonly string[] = sets.map((id) => BASES[id].name);
  const named = names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
  return `${named} ${names.length === 1 ? "says" : "say"} nothing, or not enough, about ${withArticle(kind)}.`;
}

/** Clips come several to an end and are named so. */
function withArticle(kind: string): string {
  if (kind.endsWith("s")) return kind;
  return `${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`;
}
