/** A coupling link between two chain links, its halves held by a pin. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const coupling: Drawing = {
  picture: (
    <>
      <Bar width={10} d="M98 8 V34 A12 12 0 0 0 122 34 V8" />
      <Bar width={18} d="M72 104 V78 A38 38 0 0 1 148 78 V104" />
      <Bar width={18} d="M72 118 V144 A38 38 0 0 0 148 144 V118" />
      <Plate d="M56 100 H88 V122 H56 Z" />
      <Plate d="M132 100 H164 V122 H132 Z" />
      <Bar width={9} cap="round" d="M50 111 H170" />
      <Disc x={110} y={111} r={13} />
      <Bar width={10} d="M98 214 V188 A12 12 0 0 1 122 188 V214" />
      <Thin d="M104 104 L116 118" />
    </>
  ),
  spots: {
    body: { at: [146, 66], label: [196, 48] },
    pin: { at: [120, 111], label: [202, 84] },
    pocket: { at: [110, 178], label: [180, 184] },
  },
};
