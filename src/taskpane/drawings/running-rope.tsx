/** A running rope over a sheave, with a socket at its end. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

/** The strands on the falling part of the rope. */
const LAID = Array.from({ length: 9 }, (_, i) => `M122 ${String(80 + 9 * i)} L134 ${String(73 + 9 * i)}`).join(" ");
export const runningRope: Drawing = {
  picture: (
    <>
      <Disc x={84} y={66} r={40} />
      <Disc x={84} y={66} r={8} />
      <Bar width={14} d="M40 206 V66 A44 44 0 0 1 128 66 V168" />
      <Thin d={LAID} />
      <Plate d="M118 164 H138 L144 200 H112 Z" />
    </>
  ),
  spots: {
    body: { at: [128, 112], label: [190, 108] },
    "outer wire": { at: [112, 132], label: [40, 132] },
    "end fitting": { at: [138, 184], label: [194, 184] },
  },
};
