/** A block with one sheave. */
import type { Drawing } from "./drawing";
import { Disc, Plate, Ring, Thin } from "./lines";

export const block: Drawing = {
  picture: (
    <>
      <Thin d="M66 132 V214 M72 132 V214 M148 132 V214 M154 132 V214" />
      <Ring x={110} y={34} r={18} width={14} />
      <Plate d="M96 54 H124 V74 H96 Z" />
      <Disc x={110} y={130} r={46} />
      <Thin d="M74 130 a36 36 0 1 1 72 0 a36 36 0 1 1 -72 0" />
      <Plate d="M90 66 H130 L140 130 A30 30 0 0 1 80 130 Z" />
      <Disc x={110} y={130} r={12} />
      <Thin d="M104 130 H116 M110 124 V136" />
    </>
  ),
  spots: {
    body: { at: [127, 28], label: [186, 20] },
    shell: { at: [132, 92], label: [196, 78] },
    sheave: { at: [69, 114], label: [22, 92] },
    pin: { at: [112, 134], label: [196, 176] },
  },
};
