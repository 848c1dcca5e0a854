/** Wedge sockets. The rope in them tells the tail: six or eight strands, or resisting rotation; where it is not known, a tail stands or falls only where both agree. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { held, heldOnSight } from "./shared/held-rope";
import {
  CHECKED,
  dressing,
  from,
  hardwareChecks,
  hardwareOnSight,
  hardwareWear,
  practiceWear,
  removedOnSight,
  seen,
} from "./shared/records";
import { ROTATION_RESISTANT, STRANDS } from "./shared/ropes";

const STRANDED = "six or eight strands";
const RESISTANT = "rotation resistant";
/** Makers ask for a tail of 6 diameters, 20 where the rope resists rotation, and 6 in at least. */
const tail = (rope: string, times: string): Criterion => ({
  id: `wedge-socket.tail-length.${rope.replaceAll(" ", "-")}.practice`,
  check: "tail length",
  basis: "practice",
  limit: { word: "fewer", times, least: { in: "6" } },
  beyond: "REMOVE",
  source: from("practice", `(makers: ${times} rope diameters, at least 6 in)`),
  status: "practice",
  checked: CHECKED,
  onlyFor: [rope],
});

export const wedgeSocket: GearKind = {
  id: "wedge socket",
  plural: "wedge sockets",
  names: ["wedge socket", "wedge rope socket"],
  parts: { socket: "moderate", pin: "moderate", wedge: "moderate", body: "moderate" },
  partNames: { basket: "socket", ear: "socket" },
  variants: {
    field: "construction",
    names: { [STRANDED]: ["6 strand", "8 strand", "six strand", "eight strand", STRANDS], [RESISTANT]: [ROTATION_RESISTANT] },
    inGear: [{ words: ROTATION_RESISTANT, variant: RESISTANT }],
  },
  checks: [
    {
      kind: "loss",
      name: "socket wear",
      part: "socket",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: true },
    seen("wedge", "wedge", "wedge", true),
    ...held("wedge"),
    { kind: "enough", name: "tail length", part: "wedge", size: "size", measured: "tail", reads: "length", required: false },
    seen("fasteners", "pin", "fasteners", true),
    ...hardwareChecks("socket", true),
  ],
  criteria: [
    ...hardwareWear("wedge-socket", ["socket wear", "pin wear"]),
    ...practiceWear("wedge-socket", ["socket wear"], ["most", "two ways"]),
    ...practiceWear("wedge-socket", ["pin wear"], ["most"]),
    ...heldOnSight("wedge-socket"),
    tail(STRANDED, "6"),
    tail(RESISTANT, "20"),
    ...removedOnSight("wedge-socket", "wedge", { standard: ["WAC 33915", "(2)"], practice: ["practice", ""] }),
    ...removedOnSight("wedge-socket", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("wedge-socket"),
    dressing("wedge-socket", "practice", "0.05", ["practice", ""]),
  ],
};
