/** A load block: sheaves in their plates above the hook. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Ring, Thin } from "./lines";

export const loadBlock: Drawing = {
  picture: (
    <>
      <Thin d="M64 10 V62 M70 10 V62 M150 10 V62 M156 10 V62" />
      <Disc x={110} y={62} r={44} />
      <Disc x={110} y={62} r={34} />
      <Plate d="M94 30 H126 L138 70 L126 112 H94 L82 70 Z" />
      <Disc x={110} y={62} r={11} />
      <Plate d="M98 112 H122 V126 H98 Z" />
      <Bar width={17} cap="round" d="M110 130 C112 142 138 146 138 168 C138 188 122 198 106 196 C90 194 80 184 82 168" />
      <Ring x={110} y={126} r={7} width={6} />
      <Thin d="M106 144 L82 162" />
    </>
  ),
  spots: {
    sheave: { at: [72, 70], label: [24, 64] },
    shell: { at: [130, 92], label: [194, 92] },
    pin: { at: [112, 58], label: [194, 44] },
    body: { at: [138, 168], label: [198, 150] },
    saddle: { at: [108, 202], label: [170, 204] },
    throat: { at: [92, 154], label: [30, 126] },
    tip: { at: [80, 168], label: [24, 178] },
  },
};
