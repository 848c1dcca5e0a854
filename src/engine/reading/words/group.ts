/** Words as data: what stands in the files beside this one, and how phrases of them are found in a text. */

export interface Group {
  /** What the words say, and what follows from it. */
  readonly why: string;
  /** Sorted, in small letters; a phrase has single spaces. */
  readonly words: readonly string[];
}
/** A list as it is typed: words and phrases set off by commas or line ends. */
export const list = (text: string): readonly string[] =>
  text
    .split(/[,\n]/)
    .map((word) => word.trim())
    .filter((word) => word !== "");
/** Words and phrases, found at a place of a text that was taken apart into words; the longest one counts. */
export class Phrases {
  private readonly byFirst = new Map<string, string[][]>();
  constructor(...groups: readonly Group[]) {
    for (const { words } of groups)
      for (const phrase of words) {
        const parts = phrase.split(" ");
        const first = parts[0] ?? "";
        const others = this.byFirst.get(first) ?? [];
        others.push(parts);
        this.byFirst.set(first, others);
      }
    for (const phrases of this.byFirst.values()) phrases.sort((a, b) => b.length - a.length);
  }
  /** How many words of the text make a phrase from `at` on; 0 when none does. */
  at(words: readonly string[], at: number): number {
    for (const phrase of this.byFirst.get(words[at] ?? "") ?? [])
      if (phrase.every((word, i) => words[at + i] === word)) return phrase.length;
    return 0;
  }
  /** Whether a text is one of the phrases, whole. */
  has(phrase: string): boolean {
    const words = phrase.split(" ");
    return this.at(words, 0) === words.length;
  }
}
