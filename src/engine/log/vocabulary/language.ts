/** Another language than English. */

/** Another language than English: what its clerks write, in the words above and in those of `columns.ts`. */
export interface Language {
  readonly name: string;
  /** A part of a heading, in small letters, to English words; the longest part that fits comes first. */
  readonly headings: Readonly<Record<string, string>>;
  /** A whole cell, or a part of one set off by a comma, in small letters, to English words. */
  readonly cells: Readonly<Record<string, string>>;
  /** Figures are written with a decimal comma. */
  readonly decimalComma: boolean;
}
