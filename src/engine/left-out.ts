/** What the documents say and this catalogue does not judge, with the reason. */
export interface LeftOut {
  readonly document: string;
  readonly clause: string;
  readonly what: string;
  readonly why: string;
}

export const LEFT_OUT: readonly LeftOut[] = [
  { document: "29 CFR 1910.184", clause: "(e)(6), (f)(4), (g)(6), (i)(7)", what: "exposure to heat and cold by temperature", why: "a log records marks of heat, seldom a temperature; GEAR.HOTSHARE answers for chain" },
  { document: "29 CFR 1910.184", clause: "(f)(5)(ii)", what: "wear of outer wires by a third", why: "recorded on running ropes only" },
  { document: "29 CFR 1926.251", clause: "Table H-1 (H-2 before 2012)", what: "chain wear table", why: "the same figures as Table N-184-1, as wear instead of thickness: nominal less wear is the least thickness in every row" },
  { document: "29 CFR 1926.251", clause: "(c)(4)(iv)", what: "more than 10 % of all wires broken over eight diameters", why: "needs the number of wires in the rope, which logs do not have" },
  { document: "ASME B30.9", clause: "Table 9-1.9.5-1, rows 7/32 and 3/4", what: "least thickness of chain links", why: "the component sheet that was read gives other figures, for other chain; kept as unconfirmed and not used" },
  { document: "ASME B30.10", clause: "10-1.2.1.x", what: "thread wear of hook shanks", why: "no figure was read" },
  { document: "ISO 4309:2010", clause: "Table 3", what: "broken wires by rope category number", why: "restated with cells that differ between copies; kept as data, not used for verdicts" },
  { document: "ISO 4309:2010", clause: "Tables 4 and 5", what: "rotation-resistant ropes, uniform diameter loss", why: "not read in a copy" },
  { document: "Mich. R 408.40834", clause: "(1)(d)", what: "stepped diameter loss", why: "looser than the 5 % of the federal text in nearly every band and silent between the bands" },
  { document: "30 CFR 56.19024, 77.1434", clause: "", what: "mine hoist ropes", why: "another trade's ropes" },
  { document: "WAC 296-155-33905", clause: "Fig. 17", what: "side load of shackles", why: "no removal limit; GEAR.SIDESHARE answers" },
  { document: "DOE-STD-1090-96", clause: "15.4.8 a.1", what: "15 % deformation of shackles and rings", why: "superseded by any deformation" },
  { document: "Queensland guide PN10123", clause: "p. 38", what: "ring stretch more than 5 %", why: "needs the ring's inside length, which logs do not have; any stretch is removal under standard" },
  { document: "EN 818-6", clause: "Annex A", what: "mean diameter below 90 % of nominal", why: "not read in a copy" },
  { document: "Alberta OHS Code", clause: "s.305", what: "damage of web slings in shares of the width", why: "figures not seen; any cut is removal under standard" },
];
