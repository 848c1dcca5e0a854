/** Wedge sockets. The length of the tail has no published figure that was read, so it is not judged. */
import type { GearKind } from "./kind";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

export const wedgeSocket: GearKind = {
  id: "wedge socket",
  plural: "wedge sockets",
  names: ["wedge socket", "wedge rope socket"],
  parts: { socket: "moderate", pin: "moderate", wedge: "moderate", body: "moderate" },
  partNames: { basket: "socket", ear: "socket" },
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
    seen("fasteners", "pin", "fasteners", true),
    ...hardwareChecks("socket", true),
  ],
  criteria: [
    ...hardwareWear("wedge-socket", ["socket wear", "pin wear"]),
    ...practiceWear("wedge-socket", ["socket wear"], ["most", "two ways"]),
    ...practiceWear("wedge-socket", ["pin wear"], ["most"]),
    ...removedOnSight("wedge-socket", "wedge", { standard: ["WAC 33915", "(2)"], practice: ["practice", ""] }),
    ...removedOnSight("wedge-socket", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("wedge-socket"),
    dressing("wedge-socket", "practice", "0.05", ["practice", ""]),
  ],
};
