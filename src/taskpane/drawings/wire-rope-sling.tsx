/** A wire rope sling with an eye above and a hook below. */
import type { Drawing } from "./drawing";
import { Bar, Plate, SlingHook, Thin } from "./lines";

const STRANDS = [96, 104, 112, 120, 128].map((y) => `M104 ${String(y + 7)} L116 ${String(y)}`).join(" ");
export const wireRopeSling: Drawing = {
  picture: (
    <>
      <Bar width={13} d="M106 72 C70 50 82 14 110 14 C138 14 150 50 114 72" />
      <Thin d="M110 58 C90 44 94 24 110 24 C126 24 130 44 110 58" />
      <Bar width={14} d="M110 90 V144" />
      <Thin d={STRANDS} />
      <Plate d="M98 68 H122 L120 92 H100 Z" />
      <Plate d="M100 136 H120 L122 156 H98 Z" />
      <SlingHook x={110} y={162} />
    </>
  ),
  spots: {
    eye: { at: [134, 36], label: [190, 26] },
    "end fitting": { at: [118, 80], label: [190, 78] },
    body: { at: [106, 114], label: [28, 104] },
    "outer wire": { at: [112, 138], label: [188, 136] },
    hook: { at: [124, 200], label: [188, 192] },
    "hook pin": { at: [110, 162], label: [30, 170] },
  },
};
