/** What documents and rule sets are, in a line each: for the pane and the note sheet, which the worksheet functions do not need. */
import type { SourceKey } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";

/** What each document behind a limit is. */
export const ABOUT: Readonly<Record<SourceKey, string>> = {
  "CFR 1910.179": "US federal law, overhead and gantry cranes",
  "CFR 1910.184": "US federal law, slings in general industry",
  "CFR 1926.1413": "US federal law, wire rope on cranes in construction",
  "CFR 1926.251": "US federal law, rigging equipment in construction",
  "WAC 33705": "Washington State law, rigging in construction; adopts ASME B30.9, B30.10 and B30.26",
  "WAC 33900": "Washington State law, rigging hardware (text of ASME B30.26-2010)",
  "WAC 33905": "Washington State law, shackles",
  "WAC 55800": "Washington State law, chain slings and the hooks on them (text of ASME B30.9)",
  "WAC 55820": "Washington State law, synthetic web slings (text of ASME B30.9)",
  "WAC 33825": "Washington State law, synthetic roundslings (text of ASME B30.9)",
  "WAC 24-29425": "Washington State law, wire rope slings in general industry",
  "WAC 304-07005": "Washington State law, shipyard gear",
  "EM 385": "US Army Corps of Engineers safety manual, restating ASME B30.10",
  "B30.9": "Consensus standard, slings",
  "B30.9 T3": "Consensus standard, least thickness of chain links",
  "B30.10": "Consensus standard, hooks",
  "B30.26": "Consensus standard, rigging hardware",
  "CFR 1910.184 T": "US federal law, least chain size at any point of a link",
  "WAC 33915": "Washington State law, compression hardware",
  "WAC 33810": "Washington State law, metal mesh slings",
  "CFR 1918 II": "US federal law, longshoring: wire rope clips",
  "Cal 8497": "California law, wire rope clips",
  "Mich 40834": "Michigan law, ropes on cranes",
  "B30.5": "Consensus standard, mobile cranes",
  "DOE 1090": "US Department of Energy hoisting and rigging standard",
  "TB 43-0142": "US Army bulletin, inspection of lifting devices",
  WRTB: "Rope oversize by diameter",
  "Rope handbook": "Sheave grooves",
  "Alberta OHS": "Alberta law, rigging",
  Queensland: "Queensland government guide",
  "DE discard": "German practice for load hooks",
  "ISO 16855": "International standard, ships' loose gear",
  house: "The house's own sheet of limits",
  practice: "What the trade does without a text behind it",
  "DOE checklist": "US laboratory practice, wire rope slings",
  "ISO 4309": "International standard, discard of crane ropes",
  "Marine code": "Classification rules: dimensions of new shackles by rated load",
  "34 Pa 25.43": "Pennsylvania law, idle hoisting chains",
};
/** What each rule set holds. */
export const HOLDS: Readonly<Record<BasisId, string>> = {
  law: "US federal text: throat opening more than 15 %, twist more than 10 degrees, the old chain table, broken wires",
  standard:
    "Consensus standards as adopted in public law: throat opening more than 5 % or 1/4 in (6 mm), any visible twist, 10 % wear, the newer chain table",
  practice:
    "Common practice without a published source: 10 % wear, 5 % in highly stressed areas and where wear runs in two directions, dressing, swivel clearance",
  strict: "Practice, and any measurable throat opening is a removal",
  alberta: "Alberta OHS Code: hooks at 15 % throat opening, 10 degrees twist, 10 % of the section's area",
  queensland: "Queensland guide for doggers: hooks at 5 % throat opening and 10 % wear, chain at 10 % wear",
  germany: "German discard list for load hooks: 10 % mouth widening, 5 % wear in the saddle",
  ships: "ISO 16855 for ships' loose gear: 10 % wastage, 6 % on pins, any crack or permanent deformation",
  iso: "ISO 4309: broken wires of crane ropes in 6 and 30 rope diameters, by rope category number, lay and drum; nothing else",
  house: "Limits on the workbook's own sheet; they only tighten, unless a row names the maker's written figure",
};
