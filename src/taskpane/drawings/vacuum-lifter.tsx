/** A vacuum lifter: a frame with its gauge, lines and pads. */
import type { Drawing } from "./drawing";
import { Disc, Plate, Ring, Thin } from "./lines";

export const vacuumLifter: Drawing = {
  picture: (
    <>
      <Ring x={110} y={28} r={15} width={11} />
      <Plate d="M96 40 H124 V70 H96 Z" />
      <Plate d="M24 70 H196 V88 H24 Z" />
      <Disc x={158} y={48} r={16} />
      <Thin d="M158 48 L168 40 M150 62 L154 70" />
      <Plate d="M54 88 H66 V128 H54 Z" />
      <Plate d="M154 88 H166 V128 H154 Z" />
      <Plate d="M34 128 H86 L96 154 H24 Z" />
      <Plate d="M134 128 H186 L196 154 H124 Z" />
      <Thin d="M72 88 C84 112 96 104 84 128 M148 88 C136 112 124 104 136 128" />
      <Plate d="M10 162 H210 V176 H10 Z" />
    </>
  ),
  spots: {
    body: { at: [104, 56], label: [44, 40] },
    gauge: { at: [170, 40], label: [204, 22] },
    frame: { at: [32, 80], label: [14, 56] },
    line: { at: [88, 108], label: [110, 140] },
    pad: { at: [190, 150], label: [204, 122] },
  },
};
