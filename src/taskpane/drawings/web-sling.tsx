/** A web sling with a sewn eye above and a fitting below. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Thin } from "./lines";

export const webSling: Drawing = {
  picture: (
    <>
      <Bar width={10} d="M84 168 H136 L128 200 A20 12 0 0 1 92 200 Z" />
      <Plate d="M92 76 C84 52 90 18 110 14 C130 18 136 52 128 76 Z" />
      <path d="M103 68 C98 48 102 32 110 28 C118 32 122 48 117 68 Z" fill="none" stroke="currentColor" strokeWidth={1.5} />
      <Plate d="M88 72 H132 V172 H88 Z" />
      <Thin d="M94 78 L126 94 M126 78 L94 94 M92 76 H128 M92 96 H128" dash="3 3" />
      <Thin d="M92 150 H128 M92 166 H128 M94 152 L126 164 M126 152 L94 164" dash="3 3" />
      <Plate d="M132 108 H152 V134 H132 Z" />
      <Thin d="M136 115 H148 M136 121 H148 M136 127 H144" />
    </>
  ),
  spots: {
    eye: { at: [126, 40], label: [186, 30] },
    body: { at: [96, 122], label: [28, 112] },
    fitting: { at: [128, 198], label: [188, 196] },
  },
};
