/** A swivel hoist ring on its bolt. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const hoistRing: Drawing = {
  picture: (
    <>
      <Bar width={15} d="M66 140 V84 A44 44 0 0 1 154 84 V140" />
      <Plate d="M101 158 H119 V206 H101 Z" />
      <Thin d="M101 176 L119 170 M101 186 L119 180 M101 196 L119 190" />
      <Plate d="M58 126 H162 V150 H58 Z" />
      <Disc x={66} y={138} r={9} />
      <Disc x={154} y={138} r={9} />
      <Plate d="M90 112 H130 V160 H90 Z" />
      <Thin d="M94 120 H126 M94 152 H126" />
    </>
  ),
  spots: {
    bail: { at: [110, 40], label: [178, 26] },
    bushing: { at: [124, 128], label: [196, 108] },
    body: { at: [70, 144], label: [24, 170] },
  },
};
