/** A turnbuckle with a jaw above and an eye below. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Ring, Thin } from "./lines";

export const turnbuckle: Drawing = {
  picture: (
    <>
      <Bar width={12} d="M92 30 V44 A18 14 0 0 0 128 44 V30" />
      <Disc x={92} y={26} r={10} />
      <Disc x={128} y={26} r={10} />
      <Plate d="M76 21 H144 V31 H76 Z" />
      <Plate d="M104 56 H116 V94 H104 Z" />
      <Plate d="M104 126 H116 V166 H104 Z" />
      <Thin d="M104 70 L116 66 M104 78 L116 74 M104 86 L116 82 M104 140 L116 136 M104 148 L116 144 M104 156 L116 152" />
      <Bar width={9} d="M84 84 H136 V138 H84 Z" />
      <Ring x={110} y={184} r={15} width={12} />
    </>
  ),
  spots: {
    pin: { at: [82, 26], label: [30, 20] },
    "end fitting": { at: [126, 48], label: [194, 42] },
    frame: { at: [136, 112], label: [196, 112] },
    body: { at: [84, 122], label: [26, 122] },
  },
};
