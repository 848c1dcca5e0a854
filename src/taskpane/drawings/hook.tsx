/** An eye hook with its latch. */
import type { Drawing } from "./drawing";
import { Bar, Ring, Thin } from "./lines";

export const hook: Drawing = {
  picture: (
    <>
      <Bar width={28} cap="round" d="M106 69 L106 74 C108 98 150 102 152 142 C153 176 126 193 100 191 C70 188 54 166 58 138" />
      <Ring x={106} y={40} r={21} width={16} />
      <Thin d="M100 98 L60 128" />
      <Thin d="M96 92 L56 122" />
    </>
  ),
  spots: {
    eye: { at: [127, 36], label: [190, 26] },
    shank: { at: [114, 72], label: [190, 74] },
    throat: { at: [78, 112], label: [24, 70] },
    tip: { at: [50, 140], label: [18, 146] },
    body: { at: [156, 136], label: [200, 136] },
    saddle: { at: [104, 196], label: [150, 208] },
  },
};
