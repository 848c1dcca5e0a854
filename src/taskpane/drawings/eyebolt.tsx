/** A shoulder eyebolt. */
import type { Drawing } from "./drawing";
import { Plate, Ring, Thin } from "./lines";

export const eyebolt: Drawing = {
  picture: (
    <>
      <Plate d="M100 112 H120 V200 H100 Z" />
      <Thin d="M100 142 L120 136 M100 152 L120 146 M100 162 L120 156 M100 172 L120 166 M100 182 L120 176 M100 192 L120 186" />
      <Ring x={110} y={62} r={30} width={20} />
      <Plate d="M82 98 H138 L132 116 H88 Z" />
    </>
  ),
  spots: {
    eye: { at: [136, 48], label: [192, 34] },
    body: { at: [132, 108], label: [194, 104] },
    shank: { at: [104, 164], label: [34, 158] },
  },
};
