/** How large the type of a list is, measured, so that rows grow with it; and how many lines a text takes. Pure. */
export interface TypeSize {
  /** Pixels of a line of the name. */
  readonly name: number;
  /** Pixels of a line of the small text under it. */
  readonly line: number;
  /** Letters of the small text that one line of a row holds. */
  readonly letters: number;
}
/** Until the list is measured, and where there is no layout. */
export const USUAL: TypeSize = { name: 20, line: 16, letters: 50 };
/** Padding, gaps and the line under a row. */
const AROUND = 22;
export function rowHeight({ name, line }: TypeSize, lines: number): number {
  return AROUND + name + lines * line;
}
/** Lines that a text fills when it is broken between words, and inside a word only where that is longer than a line. */
export function linesOf(text: string, letters: number): number {
  let lines = 1;
  let at = 0;
  for (const word of text.split(" ")) {
    if (at > 0 && at + 1 + word.length > letters) {
      lines += 1;
      at = 0;
    }
    at += (at > 0 ? 1 : 0) + word.length;
    while (at > letters) {
      lines += 1;
      at -= letters;
    }
  }
  return lines;
}
