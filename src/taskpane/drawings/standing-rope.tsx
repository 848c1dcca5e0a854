/** A pendant with a socket at each end. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Ring, Thin } from "./lines";

const LAID = Array.from({ length: 7 }, (_, i) => `M104 ${String(88 + 9 * i)} L116 ${String(81 + 9 * i)}`).join(" ");
export const standingRope: Drawing = {
  picture: (
    <>
      <Ring x={110} y={28} r={13} width={9} />
      <Plate d="M96 42 H124 L120 74 H100 Z" />
      <Bar width={14} d="M110 74 V146" />
      <Thin d={LAID} />
      <Plate d="M100 146 H120 L124 178 H96 Z" />
      <Ring x={110} y={192} r={13} width={9} />
    </>
  ),
  spots: {
    "end fitting": { at: [120, 58], label: [190, 52] },
    body: { at: [106, 112], label: [28, 108] },
  },
};
