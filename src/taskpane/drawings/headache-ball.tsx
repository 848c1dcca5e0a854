/** A headache ball: a weight under the rope's socket, its hook on a swivel. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const headacheBall: Drawing = {
  picture: (
    <>
      <Thin d="M107 4 V26 M113 4 V26" />
      <Plate d="M100 24 H120 L124 46 H96 Z" />
      <Disc x={110} y={74} r={34} />
      <Thin d="M76 74 A34 12 0 0 0 144 74" />
      <Plate d="M100 108 H120 V122 H100 Z" />
      <Bar width={16} cap="round" d="M110 126 C112 140 138 144 138 166 C138 186 122 196 106 194 C90 192 80 182 82 166" />
      <Thin d="M106 140 L82 160" />
    </>
  ),
  spots: {
    pin: { at: [110, 36], label: [186, 26] },
    ball: { at: [140, 66], label: [200, 62] },
    body: { at: [118, 116], label: [194, 108] },
    throat: { at: [93, 151], label: [30, 122] },
    tip: { at: [80, 168], label: [24, 178] },
    saddle: { at: [108, 200], label: [170, 204] },
  },
};
