/** Every document behind a limit, once. A citation names a key of this list, a clause, and inherits the edition. */

/** Where a figure stands: document key of `sources.ts`, clause and edition. */
export interface Citation {
  readonly document: string;
  readonly clause: string;
}
export interface Source {
  readonly name: string;
  readonly edition: string;
}
export const SOURCES = {
  "B30.26 periodic": { name: "ASME B30.26", edition: "2010 excerpt" },
  "VBG 9a": { name: "former VBG 9a", edition: "undated copy" },
  "CFR 1918 I": { name: "29 CFR 1918 Appendix I (ILO 152)", edition: "in force" },
  "CFR 1910.179": { name: "29 CFR 1910.179", edition: "1972 text, in force" },
  "CFR 1910.184": { name: "29 CFR 1910.184", edition: "as amended 2011" },
  "CFR 1926.1413": { name: "29 CFR 1926.1413", edition: "2010" },
  "WAC 33705": { name: "WAC 296-155-33705", edition: "2016" },
  "WAC 33900": { name: "WAC 296-155-33900, Table 19", edition: "2016" },
  "WAC 33905": { name: "WAC 296-155-33905", edition: "2016" },
  "WAC 55800": { name: "WAC 296-155-55800, Table 12", edition: "2013" },
  "WAC 55820": { name: "WAC 296-155-55820, Table 25", edition: "2013" },
  "WAC 33825": { name: "WAC 296-155-33825, Table 17", edition: "in force" },
  "WAC 24-29425": { name: "WAC 296-24-29425", edition: "2016" },
  "EM 385": { name: "EM 385-1-1", edition: "2014" },
  "B30.9": { name: "ASME B30.9", edition: "as restated on public pages" },
  "B30.9 T3": { name: "ASME B30.9, Table 9-1.9.5-1", edition: "as restated on a component sheet" },
  "B30.10": { name: "ASME B30.10", edition: "2005 excerpt" },
  "B30.26": { name: "ASME B30.26", edition: "2004 excerpt" },
  "CFR 1910.184 T": { name: "29 CFR 1910.184(e)(8), Table N-184-1", edition: "as kept 2011; text read in Mich. R 408.14923 (2021)" },
  "CFR 1915.112": { name: "29 CFR 1915.112", edition: "as amended 2011" },
  "WAC 24-24013": { name: "WAC 296-24-24013", edition: "2016" },
  "WAC 24-29405": { name: "WAC 296-24-29405", edition: "2016" },
  "WAC 24-29423": { name: "WAC 296-24-29423", edition: "2022" },
  "NI 1999/304": { name: "Lifting Operations and Lifting Equipment Regulations (Northern Ireland) 1999, SR 1999/304", edition: "as made" },
  "DGUV 109-006": { name: "DGUV Regel 109-006", edition: "2011" },
  "DGUV 215-320": { name: "DGUV Information 215-320", edition: "undated copy" },
  "DGUV 305-002": { name: "DGUV Grundsatz 305-002", edition: "undated copy" },
  "DE slings": { name: "German trade-association guidance on chain slings", edition: "undated, as restated" },
  "WAC 33915": { name: "WAC 296-155-33915", edition: "2016" },
  "WAC 33810": { name: "WAC 296-155-33810, Table 12", edition: "2013" },
  "CFR 1918 II": { name: "29 CFR 1918 Appendix II", edition: "2008" },
  "Cal 8497": { name: "Cal. Code Regs. tit. 8 section 8497", edition: "in force" },
  "Mich 40834": { name: "Mich. R 408.40834", edition: "in force" },
  "B30.29": { name: "ASME B30.29", edition: "2012, as restated" },
  "B30.5": { name: "ASME B30.5", edition: "2011, as restated" },
  "DOE 1090": { name: "DOE-STD-1090-96", edition: "1996" },
  "TB 43-0142": { name: "TB 43-0142", edition: "1997" },
  WRTB: { name: "Wire Rope Technical Board table", edition: "as restated" },
  "Rope handbook": { name: "wire rope handbook practice", edition: "as restated" },
  "Alberta OHS": { name: "Alberta OHS Code", edition: "2009" },
  Queensland: { name: "Queensland Guide for doggers PN10123", edition: "2010" },
  "DE discard": { name: "German discard list (DIN 15405 and accident insurance rules, summarised)", edition: "as restated" },
  "ISO 16855": { name: "ISO 16855", edition: "2013" },
  house: { name: "house limit", edition: "" },
  practice: { name: "common practice, no published source", edition: "" },
  "DOE checklist": { name: "rigging inspection checklist after DOE-STD-1090", edition: "as restated by a university laboratory" },
  "ISO 4309": { name: "ISO 4309", edition: "2010, as restated" },
  "Marine code": { name: "Code for Lifting Appliances in a Marine Environment", edition: "2022" },
} as const satisfies Record<string, Source>;
export type SourceKey = keyof typeof SOURCES;
/** A citation in words: document, clause, edition. */
export function cite(citation: Citation): string {
  const known = CITED.get(citation);
  if (known !== undefined) return known;
  const words = inWords(citation);
  CITED.set(citation, words);
  return words;
}
const CITED = new WeakMap<Citation, string>();
function inWords(citation: Citation): string {
  const source: Source | undefined = (SOURCES as Record<string, Source>)[citation.document];
  if (!source) throw new Error(`No source "${citation.document}" in sources.ts`);
  const clause = citation.clause === "" ? "" : ` ${citation.clause}`;
  const edition = source.edition === "" ? "" : ` (${source.edition})`;
  return `${source.name}${clause}${edition}`;
}
