/** What the documents say and this catalogue does not judge, with the reason; and what it holds but nobody read. */
import { cite } from "../rules/documents";
import { CHAIN_NEW, CHAIN_OLD, type ChainRow } from "../tables/chain";
import { listSources } from "./figures";

export interface LeftOut {
  readonly document: string;
  readonly clause: string;
  readonly what: string;
  readonly why: string;
}
const RECALLED = "recalled, not read; out of every rule set until somebody reads it";
const NO_SET = "fits no rule set here";
export const LEFT_OUT: readonly LeftOut[] = [
  // Slings.
  { document: "29 CFR 1910.184", clause: "(e)(9)(ii), (f)(5)(vi)", what: "hooks on slings: throat 15 %, twist 10 degrees", why: RECALLED },
  {
    document: "29 CFR 1926.1413; Cal. Code Regs. tit. 8 section 5036",
    clause: "(a)(2)(iii)(A); (a)(3)(A)",
    what: "rotation-resistant rope: core protrusion or other distortion that tells of a failed core",
    why: "no column of its own; it stands with kinks and crushing: removed by practice, out of use under law until a competent person has decided",
  },
  {
    document: "Cal. Code Regs. tit. 8 section 5036",
    clause: "(a)(2), (3)",
    what: "crane ropes: broken wires, 5 % of the diameter, power-line contact, a broken strand",
    why: `${NO_SET}; the same words as 29 CFR 1926.1413(a)(2), which is judged under law`,
  },
  {
    document: "29 CFR 1910.184",
    clause: "(e)(2)",
    what: "makeshift links, bolts and rods on chain",
    why: "a log has no column for it; they stand with field changes",
  },
  {
    document: "29 CFR 1917.42",
    clause: "(b), (g)",
    what: "10 broken wires in a lay, 3 in a strand, more than 1 at a fitting; chain stretched by more than 5 %",
    why: RECALLED,
  },
  { document: "29 CFR 1915.112", clause: "(c)", what: "chain slings in shipyards stretched by more than 5 %", why: RECALLED },
  {
    document: "29 CFR 1915.112",
    clause: "(b)(3), Table G-1",
    what: "count and spacing of clips in shipyards",
    why: "its rows were not read; the longshoring table of the same family is judged",
  },
  {
    document: "Mich. R 408.14911",
    clause: "(3)",
    what: "slings without legible markings",
    why: "the same words as the federal ones, which are judged",
  },
  {
    document: "WAC 296-24-29429",
    clause: "(2)",
    what: "fibre rope slings below -20 °F, above 180 °F or wet and frozen: the maker is asked",
    why: "a log records marks of heat, seldom a temperature",
  },
  {
    document: "ASME B30.9",
    clause: "9-2.1.1",
    what: "rotation-resistant rope not to be made into slings",
    why: "recalled, not read; such rope is not judged as a sling, whatever the text",
  },
  {
    document: "DGUV Regel 109-005",
    clause: "7",
    what: "end fittings of wire rope slings ground away by more than 10 % of nominal",
    why: "a log has no size of end fittings; a nick there is looked at",
  },
  {
    document: "TM 10-3950-672-10",
    clause: "p. 6-32 step c",
    what: "wedge sockets: about 9 rope diameters beyond the socket, at least 6 in",
    why: "one crane's manual, in no rule set here; where it is in force, hold the tail to 9 diameters",
  },
  {
    document: "O. Reg. 213/91 (Ontario)",
    clause: "s.168(2)",
    what: "crane ropes: 6 broken wires in a lay, 3 in a strand; 1, 2 or 3 mm under nominal; outer wires worn by a third",
    why: NO_SET,
  },
  {
    document: "WAC 296-54-557",
    clause: "(2)(e)",
    what: "standing ropes in logging: more than 2 broken wires in a lay, more than 1 at an end",
    why: "another trade's ropes; the same figures are judged under law",
  },
  {
    document: "34 Pa. Code 25.43",
    clause: "(a), (e)",
    what: "hoist chains and running ropes: thorough inspection with a signed report every month, and before use after a month of rest",
    why: `${NO_SET}; running ropes of cranes and hoists are monthly under law and standard`,
  },
  {
    document: "34 Pa. Code 25.43",
    clause: "(f)",
    what: "running rope whose design factor has fallen by 15 %",
    why: "needs a strength, which logs do not have",
  },
  {
    document: "ASME B30.10",
    clause: "10-1.10, 2014 and 2019",
    what: "securing means damaged or missing; threads worn or corroded; welds",
    why: "recalled, not read; judged by the list of rigging hardware and common practice",
  },
  {
    document: "29 CFR 1910.184",
    clause: "(e)(6), (f)(4), (g)(6), (h)(2), (i)(7)",
    what: "exposure to heat and cold by temperature",
    why: "a log records marks of heat, seldom a temperature; GEAR.HOTSHARE answers for chain",
  },
  {
    document: "29 CFR 1910.184",
    clause: "(f)(2)",
    what: "least clear length: 10 rope diameters between splices, 40 on braided slings",
    why: "settled when the sling is made; a log has no column for it",
  },
  {
    document: "29 CFR 1910.184",
    clause: "(h)(3)",
    what: "splices of fibre rope: 3 full tucks in an eye and 6 in a short splice (manila), 4 and 8 (synthetic); tails 6 rope diameters, or 6 in from 1 in rope up",
    why: "a log has no column for it",
  },
  {
    document: "29 CFR 1926.251",
    clause: "Table H-1 (H-2 before 2012)",
    what: "chain wear table",
    why: "the same figures as Table N-184-1, as wear instead of thickness: nominal less wear is the least thickness in every row",
  },
  {
    document: "29 CFR 1926.251",
    clause: "(c)(4)(iv)",
    what: "more than 10 % of all wires broken over eight diameters",
    why: "needs the number of wires in the rope, which logs do not have",
  },
  {
    document: "29 CFR 1926.251",
    clause: "(e)(6)",
    what: "nylon near acids, polyester and polypropylene near caustics",
    why: "where a sling works is not recorded; what it does to the sling is judged as chemical damage",
  },
  {
    document: "ASME B30.9",
    clause: "9-2.9.5, older text",
    what: "one broken strand in a braided sling under 8 parts, two in one of 8 or more",
    why: "superseded by the counts of broken wires; a log has no column for it",
  },
  {
    document: "ASME B30.9",
    clause: "9-5.8.1, 9-6.8.1; Alberta guide 2009",
    what: "nylon and polyester from -40 to 194 °F (90 °C)",
    why: "a log records marks of heat, seldom a temperature",
  },
  {
    document: "WAC 296-24-29413",
    clause: "(1)",
    what: "chain stretched by a third of a link in 3 ft",
    why: "a log does not say how long a link is; any stretch is removal under standard",
  },
  {
    document: "WAC 296-24-29401",
    clause: "(2)",
    what: "wire rope with 15 % of its strength lost",
    why: "strength is not measured in an inspection",
  },
  {
    document: "WAC 296-24-29427, Cal. Code Regs. tit. 8 section 5046",
    clause: "(5), (e)",
    what: "mesh slings proof tested to 1.5 times their rating",
    why: "a test record, not a reading of wear",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "11.3.4.2, 11.3.5.2",
    what: "mesh and web slings proof tested to 2 times their rating",
    why: "a test record, not a reading of wear",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "11.3.2.3b",
    what: "eye on a thimble at 3 rope diameters or more in critical lifts",
    why: "a rule for choosing or fitting the gear, not for its wear",
  },
  {
    document: "DOE-STD-1090-96; Cal. Code Regs. tit. 8 section 5044",
    clause: "15.4.7.3; (d)",
    what: "chain slings proof tested to 2 times the rating of a leg",
    why: "a test record, not a reading of wear",
  },
  {
    document: "DOE-STD-1090-96, WAC 296-24-29401, ASTM A391, EN 818-2, AS 1353, AS 4497",
    clause: "",
    what: "design factors: 5 and 4, textile 7 and 8",
    why: "built into the rating on the tag",
  },
  {
    document: "Queensland guide PN10123",
    clause: "chain slings",
    what: "chain at least 5.5 mm; not above 260 °C without a table",
    why: "a rule of choice and a temperature; logs seldom have either",
  },
  {
    document: "Course text OSHA-600 (NOAA)",
    clause: "module 13",
    what: "chain sling longer by 3 %",
    why: "a course, no rule; any stretch is removal under standard",
  },
  {
    document: "NAVEDTRA 14080",
    clause: "wire rope slings",
    what: "inspected every 60 days",
    why: `${NO_SET}; rope slings are monthly under standard`,
  },
  {
    document: "Wire rope handbooks",
    clause: "basket hitches",
    what: "full rating over 25 rope diameters (mechanical splice) or 15 (hand-tucked)",
    why: "the diameter of what is slung is not recorded",
  },
  { document: "EN 818-6", clause: "Annex A", what: "mean diameter below 90 % of nominal", why: "not read in a copy" },
  {
    document: "Alberta OHS Code",
    clause: "s.305",
    what: "damage of web slings in shares of the width",
    why: "figures not seen; any cut is removal under standard",
  },
  {
    document: "OSHA letter",
    clause: "29 March 1982",
    what: "jacketed web slings with parted cover yarns may stay if the maker allows",
    why: "looser; any cut is removal until the maker's word is there",
  },
  // Hooks.
  { document: "ASME B30.10", clause: "10-1.2.1.x", what: "thread wear of hook shanks", why: "no figure was read" },
  {
    document: "ASME B30.10-2005",
    clause: "10-1.2.2(a)",
    what: "throat growth in a proof test: up to 1 % or 0.02 in (0.5 mm)",
    why: "a test record, not a reading of wear",
  },
  {
    document: "German hoist handbook",
    clause: "hooks",
    what: "distance of the punch marks (tram points) more than 1.1 times the recorded one",
    why: "a log has no column for punch marks; the mouth's 10 % says the same",
  },
  {
    document: "TM 5-3810-294-34",
    clause: "9-6 c",
    what: "side bend of 10 percent",
    why: "no known measure: percent of what is not said, and it is not 10 degrees; any visible twist is removal under standard",
  },
  {
    document: "Chinese practice on crane hooks",
    clause: "as restated",
    what: "throat 15 %, twist 10 degrees, section 10 %; plate hooks: bushing worn by 50 %, pin by 5 %; throat growth of 0.25 % in a load test",
    why: "second-hand; the first three stand under law and standard, the others have no column",
  },
  {
    document: "Trade magazine, 2019",
    clause: "p. 13",
    what: "wear of more than 5 % in a hook's neck",
    why: "advice, no rule; the sections a log names seldom include the neck",
  },
  {
    document: "Trade magazine, 2019",
    clause: "p. 13",
    what: "end play of more than 2 mm; pin holes and swivel eye longer by more than 5 %; nut on at least 1 diameter of shank thread",
    why: "advice, no rule; the clearance is judged by practice, the others have no column",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "13.4.1, 13.4.2",
    what: "crack test of hooks from 10 ton: yearly in heavy, half-yearly in severe service",
    why: "a test record of its own",
  },
  {
    document: "NAVEDTRA 14080",
    clause: "p. 3-10",
    what: "magnetic crack test of hook blocks at every fifth certification",
    why: "a test record of its own",
  },
  {
    document: "WAC 296-304-07005",
    clause: "(2)(c)",
    what: "shipyards: bent or sprung hooks",
    why: `${NO_SET}; any visible bend or twist is removal under standard`,
  },
  {
    document: "WAC 296-304-07005",
    clause: "(2)(a)",
    what: "hooks without a rating tested to 2 times the load meant for them",
    why: "a test record, not a reading of wear",
  },
  {
    document: "OSHA letter",
    clause: "28 April 1976",
    what: "weld build-up of large hooks up to 15 % of the section, tested to 2 times the rating",
    why: "a repair by its maker's procedure; a weld in the field is removal",
  },
  {
    document: "UFGS 14636N",
    clause: "2.3.1.1",
    what: "new hooks: magnetic lines longer than 1/8 in and 3 times their width",
    why: "a purchase rule; any crack is removal",
  },
  // Shackles, links, swivels.
  {
    document: "Shackle makers' guidance",
    clause: "Japan",
    what: "wear more than 5 %, deformation more than 8 %, a dressed nick more than 5 % deep, then a crack test (MT or PT)",
    why: "one maker's or one handbook's figure, no rule of a standard; a house limit can hold it",
  },
  {
    document: "New Zealand slinging module",
    clause: "2.4",
    what: "one thread of a screw pin shows",
    why: "contradicts the shoulder that must touch (WAC 296-155-33905), which is judged as pin seating",
  },
  {
    document: "Training summary of ASME B30.26",
    clause: "",
    what: "two legs in a bow up to 120 degrees included",
    why: "a capacity, not a removal limit",
  },
  {
    document: "ASME B30.26",
    clause: "26-1.2, 26-1.4.2",
    what: "design factor 5 (4 above 150 ton); proof load 2.0 to 2.2 times the rating (1.33 to 2 above)",
    why: "settled when the shackle is made",
  },
  {
    document: "WAC 296-54-54730",
    clause: "(5), (6)",
    what: "logging shackles: jaw at most 1 in wider than what it joins, one size over the line",
    why: "a rule for choosing or fitting the gear, not for its wear",
  },
  {
    document: "Queensland, New Zealand and Ontario guides",
    clause: "shackles",
    what: "pin replaced by a bolt",
    why: "no column of its own; write it down as a field change",
  },
  { document: "WAC 296-155-33905", clause: "Fig. 17", what: "side load of shackles", why: "no removal limit; GEAR.SIDESHARE answers" },
  {
    document: "DOE-STD-1090-96",
    clause: "15.4.8 a.1",
    what: "15 % deformation of shackles and rings",
    why: "superseded by any deformation",
  },
  {
    document: "Queensland guide PN10123",
    clause: "p. 38",
    what: "ring stretch more than 5 %",
    why: "needs the ring's inside length, which logs do not have; any stretch is removal under standard",
  },
  {
    document: "Classification society rules 2022",
    clause: "Table 8.5.1",
    what: "dimensions of new dee shackles by rating",
    why: "dimensions of new gear; the log's as-new sizes are held instead",
  },
  {
    document: "NAVEDTRA 14251",
    clause: "shackles",
    what: "rating 3 times the diameter squared, in short tons",
    why: "an estimate for unmarked gear; only a marked rating is used",
  },
  {
    document: "NWCG PMS 448",
    clause: "cargo swivels",
    what: "more than 5 degrees of rocking; 2 lb turning test",
    why: "long-line swivels under helicopters; no other source has it",
  },
  {
    document: "Inspection firm's criteria",
    clause: "swivels",
    what: "5 % on all dimensions, crack test every 2 years",
    why: "one maker's or one handbook's figure, no rule of a standard",
  },
  // Eyebolts, turnbuckles, hoist rings.
  {
    document: "WAC 296-155-56110",
    clause: "(2)(a)-(d)",
    what: "thread 1.5 diameters deep in steel; plate under 1 diameter with a nut; shoulder flush for angular lifts",
    why: "a rule for the fitting in place; a log has no column for it",
  },
  {
    document: "WAC 296-155-56110",
    clause: "(1)(c)",
    what: "turnbuckle threads fully engaged, ends locked",
    why: "judged as threads and fasteners; the engaged length has no column",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "12.4 b, c, h",
    what: "design factor 5; thread 1.5 diameters; spacer no thicker than 1/16",
    why: "settled when it is made or fitted; the wording on spacers is doubtful",
  },
  {
    document: "ASME B30.26-2004",
    clause: "26-1.6.1, 26-2.6.1",
    what: "temperatures at which the maker is asked",
    why: "a log seldom has a temperature; the lift asks for it",
  },
  // Clips and sockets.
  {
    document: "Rigging page",
    clause: "sizes 1/8 to 7/16",
    what: "U-bolt clips: 2 clips, turn-back and torque",
    why: "contradicts 29 CFR 1918 Appendix II, which wants 3 clips on any rope up to 1/2 in",
  },
  {
    document: "NAVEDTRA 14026",
    clause: "p. 1-8",
    what: "clips: 3 times the diameter and 1, rounded up",
    why: "gives fewer clips than the federal table from 1 in up",
  },
  {
    document: "WAC 296-874-30020",
    clause: "",
    what: "scaffold ropes: 3 clips, 6 diameters apart, tightened again every shift",
    why: "another trade's ropes; the federal table wants as many clips and the same spacing",
  },
  {
    document: "WAC 296-155-33915",
    clause: "(1)(c)",
    what: "load the clips, unload, tighten again",
    why: "a step of fitting; the torque is judged where it is recorded",
  },
  {
    document: "WAC 296-155-33915",
    clause: "(2)",
    what: "wedge sockets: tail by the maker's word",
    why: "no figure in the text; makers' tails stand as common practice",
  },
  // Sheaves and blocks.
  {
    document: "ASME B30.5",
    clause: "as restated",
    what: "sheaves of boom hoists 15, of lower blocks 16 rope diameters",
    why: "a log does not say which sheave it is; 18, for load hoists, is held against every sheave",
  },
  {
    document: "Groove gauge text",
    clause: "",
    what: "ladder beyond the worn minimum: tight on +6 %, fits +2.5 %: plan its change",
    why: "the minimum and +10 % are judged; between them a groove stays",
  },
  {
    document: "ISO 16625",
    clause: "as restated",
    what: "groove 5 to 10 % over the rope",
    why: "the least is below the +6 % of new grooves; the worn minimum and +10 % are judged",
  },
  {
    document: "European rope supplier's note",
    clause: "",
    what: "groove 8 to 14 % over the rope",
    why: "contradicts 5 to 10 %; one maker's or one handbook's figure, no rule of a standard",
  },
  {
    document: "Wire rope handbook",
    clause: "",
    what: "rope touches the groove over 120 to 150 degrees",
    why: "a log has no column for it",
  },
  {
    document: "ILO, Safety and health in dock work",
    clause: "12.1",
    what: "fibre-rope blocks: sheave 5.5 diameters, groove a third deep, radius half a diameter and 1 mm",
    why: "a rule for new blocks; a log does not say that the rope is fibre",
  },
  { document: "WAC 296-54-54750", clause: "(2)", what: "logging mainline blocks: sheave 20 diameters", why: "another trade's blocks" },
  { document: "TM 5-3810-294-34", clause: "Table 1-4", what: "sheave bushing 3.011 in new, 3.013 in at most", why: "one crane's part" },
  { document: "TB 43-0142", clause: "Table A-1", what: "sheave diameters by rope construction", why: "columns scrambled in the copy read" },
  // Below the hook.
  {
    document: "29 CFR 1926.251",
    clause: "(a)(4)",
    what: "special accessories proof tested to 125 %",
    why: "a test record, not a reading of wear",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "15.4.8 a.2",
    what: "twist of lifting bars",
    why: "the figure was cut off in the copy read; any deformation is removal under standard",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "14.2.5.3 c",
    what: "lifting devices: cracked or worn gears, sheaves and chains",
    why: "no columns of their own; sheaves and chains that are logged as gear are judged there, the rest stands with friction pads and linkages",
  },
  {
    document: "TB 43-0142; Cal. Code Regs. tit. 8 section 5044",
    clause: "para 3c; (c)",
    what: "lifting devices and chain slings inspected at least once a year",
    why: `${NO_SET}; the same year stands under standard and law`,
  },
  // Ropes.
  {
    document: "ISO 4309:2010",
    clause: "Table 3, more than 300 wires",
    what: "broken wires as 0.02 to 0.16 times the wires",
    why: "from memory and a restated national standard",
  },
  {
    document: "ISO 4309:2010",
    clause: "Tables 4 and 5",
    what: "rotation-resistant ropes, uniform diameter loss",
    why: "not read in a copy",
  },
  {
    document: "Mich. R 408.40834",
    clause: "(1)(d)",
    what: "stepped diameter loss",
    why: "looser than the 5 % of the federal text in nearly every band and silent between the bands",
  },
  {
    document: "Mich. R 408.40834, R 408.15226",
    clause: "(1)(f), (3)",
    what: "more than 10 % of all wires broken over eight diameters",
    why: "needs the number of wires in the rope, which logs do not have",
  },
  {
    document: "Mich. R 408.12013",
    clause: "",
    what: "design factor 8 for hot metal, 5 on other overhead cranes",
    why: "a rule for choosing or fitting the gear, not for its wear",
  },
  {
    document: "ASME B30.2, B30.3, B30.16",
    clause: "as restated",
    what: "hoist ropes: 12 broken wires in a lay, 4 in a strand",
    why: "looser than the 6 and 3 of 29 CFR 1926.1413, and a log does not say which crane",
  },
  {
    document: "Mich. R 408.10582",
    clause: "(1)",
    what: "powered platforms: more than 6 in a lay, more than 3 in a strand; any within 18 in of the end",
    why: "another trade's ropes; 6 and 3 are stricter, the last 18 in have no column",
  },
  {
    document: "WAC 296-874-30016",
    clause: "",
    what: "scaffold ropes: 6 in a lay, 3 in a strand; wear of a third",
    why: "another trade's ropes; the same figures as for running ropes",
  },
  {
    document: "WAC 296-24-24513",
    clause: "",
    what: "derrick ropes: written inspection every month, and before use after a month of rest",
    why: "a log does not tell a derrick from another crane; running ropes of cranes are monthly under standard by WAC 296-24-24013",
  },
  { document: "30 CFR 56.19024, 77.1434", clause: "", what: "mine hoist ropes", why: "another trade's ropes" },
  // Capacity.
  {
    document: "EN 818-4, EN 1677",
    clause: "as restated",
    what: "factors of legs by angle: 1.4 and 1.0, 2.1 and 1.5",
    why: "a capacity, not a removal limit; GEAR.LEGLOAD reckons from the angle and counts fewer legs",
  },
  {
    document: "AS 3775.1, AS 1353, AS 4497",
    clause: "as restated",
    what: "factors of legs and reeved hitches: 1.73, 1.41, 1.0; 0.75, 0.8",
    why: "a capacity, not a removal limit",
  },
  {
    document: "Wire rope handbooks",
    clause: "",
    what: "strength by bend, D/d 40 to 1: 95 to 50 %",
    why: "a capacity, not a removal limit; tables differ, and the bend is not recorded",
  },
  {
    document: "Wire rope handbooks; EN",
    clause: "",
    what: "strength of splices and sockets: 0.80 to 1.00",
    why: "built into the rating on the tag",
  },
  { document: "Australian page", clause: "", what: "rating by rule of thumb: 8 d², d²", why: "an estimate; only a marked rating is used" },
  {
    document: "OSHA guidance",
    clause: "Tables 1 and 2",
    what: "rated loads of alloy chain slings",
    why: "a capacity, not a removal limit; the tag's figure is used",
  },
  {
    document: "Alberta OHS Code",
    clause: "s.292, 292.1",
    what: "load up to 20 % of breaking strength, 10 % with people, 25 % if fatigue-rated; safety factors 2 to 5",
    why: "logs have ratings, not breaking strengths",
  },
  // Schedule and records.
  {
    document:
      "ASME B30.10, B30.26; 29 CFR 1910.179, 1910.184, 1915.111, 1917.42, 1926.251, 1926.1413; Japan, Safety Ordinance for Cranes 220",
    clause: "frequent inspections",
    what: "each day, shift, week or month, mostly without a record",
    why: "the due dates are those of the recorded, periodic inspection",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "8.2.1",
    what: "day counts: 31, 92, 184, 365",
    why: "months of the calendar are used, which differ by days",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "8.2.2",
    what: "classes of hoist service by share of time and load",
    why: "who types the class has judged it",
  },
  { document: "VBG 9a", clause: "39-43", what: "round-link chain crack tested every 3 years", why: "a test record of its own" },
  {
    document: "29 CFR 1918 Appendix I, ILO 152",
    clause: "",
    what: "register of ships' gear kept 5 years",
    why: "a duty of the register's keeper, not of a reading",
  },
  {
    document: "DOE-STD-1090-96",
    clause: "12.1 b",
    what: "gear that is out made unusable before it is thrown away",
    why: "a duty after the verdict",
  },
  {
    document: "LOLER 1998",
    clause: "Schedule 1",
    what: "what a report of thorough examination must hold",
    why: "a duty of the examiner's report, not of a reading",
  },
];
const UNREAD = "not read in a copy; not used for a verdict";
const OTHER_CHAIN = "from memory; no public print was found; not used for a verdict";
/** Rows of the chain tables that are kept for a reader but decide nothing. */
function unreadRows(rows: readonly ChainRow[], document: "CFR 1910.184 T" | "B30.9 T3", why: string): readonly LeftOut[] {
  return rows
    .filter((row) => !row.confirmed)
    .map((row) => ({
      document: cite({ document, clause: "" }),
      clause: "",
      what: `chain sling, link thickness: ${row.in} in${row.mm === undefined ? "" : ` (${row.mm} mm)`}, below ${row.least} in`,
      why,
    }));
}
/** Criteria and table rows that nobody read. */
export function unconfirmed(): readonly LeftOut[] {
  const criteria = listSources().filter((line) => line.status === "unconfirmed");
  return [
    ...criteria.map((line) => ({
      document: line.document,
      clause: line.clause,
      what: `${line.gear}, ${line.check}: ${line.figure}`,
      why: UNREAD,
    })),
    ...unreadRows(CHAIN_OLD, "CFR 1910.184 T", UNREAD),
    ...unreadRows(CHAIN_NEW, "B30.9 T3", OTHER_CHAIN),
  ];
}
