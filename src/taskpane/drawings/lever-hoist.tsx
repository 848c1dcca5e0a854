/** A lever hoist: hook, case, lever, load chain and load hook. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, SlingHook, Thin } from "./lines";

export const leverHoist: Drawing = {
  picture: (
    <>
      <Bar width={12} cap="round" d="M92 56 V46 C108 42 110 16 90 16 C78 16 72 24 74 34" />
      <Plate d="M62 56 H122 V114 H62 Z" />
      <Plate d="M104 76 L200 104 L196 118 L100 92 Z" />
      <Disc x={92} y={84} r={18} />
      <Disc x={92} y={84} r={6} />
      <Bar width={7} cap="round" d="M92 116 V132" />
      <Bar width={7} cap="round" d="M92 138 V154" />
      <SlingHook x={92} y={162} />
      <Thin d="M80 42 L74 32 M172 98 L170 110" />
    </>
  ),
  spots: {
    case: { at: [70, 70], label: [22, 58] },
    body: { at: [184, 106], label: [200, 76] },
    "load chain": { at: [96, 140], label: [168, 142] },
    throat: { at: [86, 184], label: [24, 206] },
    tip: { at: [72, 198], label: [20, 166] },
    saddle: { at: [94, 214], label: [166, 206] },
  },
};
