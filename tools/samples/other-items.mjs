/** The other yard's pieces, as its storeman wrote them. Bodies and chain are bare figures in mm, mouths stand in mm, pins in inches. */
import { daysAgo } from "./book.mjs";

const PLACES = ["Store, wall", "Store, rack 2", "Dry dock", "Plate shop", "Quay crane"];
let made = 0;
function piece(gear, id, own) {
  made += 1;
  return {
    inspected: daysAgo(5 + ((made * 37) % 200)),
    place: PLACES[made % PLACES.length],
    gear,
    id,
    service: "normal",
    examiner: made % 3 === 0 ? "store, second man" : "storeman",
    rings: ["clear", "clear", "dull", "not tried"][made % 4],
    bag: `B-${String(100 + made)}`,
    ...own,
  };
}
const metal = { cracks: "none", deformed: "no", tag: "yes", heat: "no", corrosion: "no" };
const hook = (id, gearType, mouth, body, own = {}) =>
  piece("Eye hook", id, { gearType, throatNow: mouth, sectionNow: body, twist: 0, latch: "works", ...metal, ...own });
const shackle = (id, size, body, pin, own = {}) =>
  piece("Bow shackle", id, { gearType: "Bow T", size, sectionNow: body, pinNow: pin, pinSeated: "yes", ...metal, ...own });
const ring = (id, body, own = {}) => piece("Ring", id, { gearType: "Ring 25", sectionNow: body, ...metal, ...own });
const chain = (id, size, thinnest, own = {}) => piece("Chain sling", id, { size, sectionNow: thinnest, ...metal, ...own });
const rope = (id, lay, strand, own = {}) =>
  piece("Wire rope sling", id, {
    brokenLay: lay,
    brokenStrand: strand,
    kinks: "none",
    endFittings: "ok",
    heat: "no",
    corrosion: "no",
    tag: "yes",
    ...own,
  });
const web = (id, own = {}) =>
  piece("Web sling", id, { cuts: "none", stitching: "ok", heat: "no", chemical: "no", endFittings: "ok", tag: "yes", ...own });

export const otherItems = [
  hook("K1", "Hook 20", 48.5, 39.6),
  hook("K2", "Hook 20", 49, 39.5),
  hook("K3", "Hook 20", 50.5, 39.5, { remarks: "opened up under the pontoon" }),
  hook("K4", "Hook 20", 48.2, 37.8),
  hook("K5", "Hook 20", 48.4, 39.7, { latch: "missing" }),
  hook("K6", "Hook 20", 48.8, 39.4),
  hook("K7", "Hook 30", 62.5, 51.2),
  hook("K8", "Hook 30", 64.6, 51.5),
  hook("K9", "Hook 30", 62.4, 51.7, { twist: 4 }),
  hook("K10", "Hook 30", 63, 51.4),
  hook("K11", "Hook 30", 62.2, 51.8, { cracks: "hairline at the neck" }),
  hook("K12", "Hook 40", 75, 63, { remarks: "type not in our list yet" }),
  hook("K13", "Hook 30", 62.8, null),
  hook("K14", "Hook 20", 48.6, 39.6),
  shackle("S1", "3/4 in", 18.6, "0.86"),
  shackle("S2", "3/4 in", 18.8, "0.87"),
  shackle("S3", "3/4 in", 17, "0.86"),
  shackle("S4", "3/4 in", 18.7, "0.78"),
  shackle("S5", "3/4 in", 18.5, "0.865", { pinSeated: "no" }),
  shackle("S6", "3/4 in", 18.9, "7/8"),
  shackle("S7", "1 in", 25, "1.11"),
  shackle("S8", "1 in", 24.6, "1.1"),
  shackle("S9", "1 in", 22.4, "1.11"),
  shackle("S10", "1 in", 25.1, "1 1/8"),
  shackle("S11", "1 in", 24.9, "1.12", { deformed: "yes" }),
  shackle("S12", "7/8 in", 21.8, "0.99", { remarks: "odd size, bought for one job" }),
  shackle("S13", "1 in", 24.8, "1.115"),
  shackle("S14", "3/4 in", 18.6, "0.86"),
  shackle("S15", "1 in", 25.2, "1.12"),
  ring("R1", 24.6),
  ring("R2", 24.2),
  ring("R3", 22.3),
  ring("R4", 24.8),
  ring("R5", 24.7, { deformed: "yes", remarks: "drawn oval" }),
  ring("R6", 24.5),
  chain("C1", 10, 9.7),
  chain("C2", 10, 9.6),
  chain("C3", 10, 8.7),
  chain("C4", 13, 12.6),
  chain("C5", 13, 12.7, { deformed: "yes" }),
  chain("C6", 13, 12.5),
  chain("C7", 10, 9.8, { tag: "no" }),
  rope("W1", 2, 1),
  rope("W2", 0, 0),
  rope("W3", 11, 3),
  rope("W4", 3, 1, { kinks: "kinked" }),
  rope("W5", 1, 1),
  rope("W6", null, 1),
  rope("W7", 2, 2),
  rope("W8", 0, 0, { corrosion: "yes" }),
  rope("W9", 3, 1),
  web("B1"),
  web("B2"),
  web("B3", { cuts: "cut at the edge" }),
  web("B4"),
  web("B5", { stitching: "broken" }),
  web("B6"),
  web("B7", { chemical: "yes" }),
  web("B8"),
  web("B9", { tag: "no" }),
];
