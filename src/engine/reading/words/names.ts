/** Words of a remark that are nobody's vocabulary: names, days, numbers and codes. */

/** A number, a date or a code such as H-12, 3/4, 2026-03-01 or Q2. */
export const isDayOrCode = (word: string): boolean => /\d/.test(word) && !/^\d+([.,/]\d+)?(mm|cm|in|"|''|%|deg|°|x)$/.test(word);
/** A size as wear is told in it: "stands 6 mm open". */
export function isSmallSize(words: readonly string[], at: number): boolean {
  const word = words[at] ?? "";
  if (/^(mm|cm|in|inch|inches|deg|degrees|°|%|percent|per)$/.test(word)) return /\d/.test(words[at - 1] ?? "");
  return /^\d+([.,/]\d+)?(mm|cm|in|"|''|%|deg|°)$/.test(word);
}
const BEFORE_NAME: ReadonlySet<string> = new Set(
  "and at bay berth boat by captain crane crew dock for from in insp inspector mate messrs miss mr mrs ms near of on owner per quay sent ship site to vessel via with yard".split(
    " ",
  ),
);
const NAME = /^\p{Lu}[\p{Ll}'’]+$/u;
const INITIAL = /^\p{Lu}\.?$/u;
/** "R. Tern", "by Tern", "to Bay Hall": a capital inside a remark that is not all in capitals, behind a word that leads to a name. */
export function isName(typed: readonly string[], at: number, shouted: boolean): boolean {
  const word = typed[at] ?? "";
  if (INITIAL.test(word)) return true;
  const before = typed[at - 1] ?? "";
  // Initials: "checked by JT".
  if (/^\p{Lu}{1,3}$/u.test(word))
    return /^(by|per|insp|inspector|initials|signed|checked|inspected|examined|measured|tested|verified)$/i.test(before);
  if (shouted || !NAME.test(word) || before === "") return false;
  if (INITIAL.test(before) || /^(mr|mrs|ms|mr\.|capt|capt\.)$/i.test(before)) return true;
  // In A Title Each Word Has A Capital, so a capital tells nothing.
  if (!typed.some((one) => /^\p{Ll}/u.test(one))) return false;
  return BEFORE_NAME.has(before.toLowerCase()) || (at > 1 && NAME.test(before) && isName(typed, at - 1, shouted));
}
/** Two capitals at the end: "ok - RT". */
export const isSignature = (typed: readonly string[]): boolean => typed.length === 1 && /^(?!NG|NO|US|OS)\p{Lu}{2}$/u.test(typed[0] ?? "");
