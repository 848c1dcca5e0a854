/** Three clips on a turned-back rope with its thimble. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Thin } from "./lines";

export const clips: Drawing = {
  picture: (
    <>
      <Bar width={11} d="M124 206 V74 C128 40 122 20 110 20 C98 20 92 40 96 74 V188" />
      <Thin d="M116 68 C119 46 117 31 110 31 C103 31 101 46 104 68" />
      <Plate d="M116 92 H138 V104 H116 Z" />
      <Plate d="M116 130 H138 V142 H116 Z" />
      <Plate d="M116 168 H138 V180 H116 Z" />
      <Bar width={6} d="M138 94 H90 A5 5 0 0 0 90 103 H138" />
      <Bar width={6} d="M138 132 H90 A5 5 0 0 0 90 141 H138" />
      <Bar width={6} d="M138 170 H90 A5 5 0 0 0 90 179 H138" />
    </>
  ),
  spots: {
    saddle: { at: [134, 98], label: [194, 92] },
    "u bolt": { at: [88, 136], label: [28, 136] },
    body: { at: [124, 194], label: [188, 198] },
  },
};
