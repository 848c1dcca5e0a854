/** A hand chain hoist: hook, case with its wheel, hand chain, load chain and load hook. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, SlingHook, Thin } from "./lines";

export const chainHoist: Drawing = {
  picture: (
    <>
      <Bar width={12} cap="round" d="M110 54 V44 C126 40 128 14 108 14 C96 14 90 22 92 32" />
      <Plate d="M70 54 H150 V112 H70 Z" />
      <Disc x={110} y={83} r={22} />
      <Disc x={110} y={83} r={8} />
      <Thin d="M78 112 V196 C78 204 90 204 90 196 V112" dash="7 4" />
      <Bar width={7} cap="round" d="M126 114 V130" />
      <Bar width={7} cap="round" d="M126 136 V152" />
      <SlingHook x={126} y={160} />
      <Thin d="M98 40 L92 30" />
    </>
  ),
  spots: {
    case: { at: [146, 66], label: [196, 54] },
    body: { at: [74, 100], label: [24, 96] },
    "load chain": { at: [130, 138], label: [196, 130] },
    throat: { at: [120, 182], label: [48, 206] },
    tip: { at: [106, 196], label: [24, 178] },
    saddle: { at: [128, 212], label: [188, 204] },
  },
};
