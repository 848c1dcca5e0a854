/** A metal mesh sling between its two handles. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Thin } from "./lines";

const SPIRALS = Array.from({ length: 6 }, (_, row) =>
  Array.from({ length: 6 }, (_, i) => `M${String(64 + 16 * i)} ${String(66 + 16 * row)} l8 12 l8 -12`).join(" "),
).join(" ");
export const meshSling: Drawing = {
  picture: (
    <>
      <Bar width={10} d="M68 52 L80 22 H140 L152 52" />
      <Plate d="M56 48 H164 V62 H56 Z" />
      <Plate d="M60 62 H160 V160 H60 Z" />
      <Thin d={SPIRALS} />
      <Plate d="M56 160 H164 V174 H56 Z" />
      <Bar width={10} d="M68 170 L80 200 H140 L152 170" />
    </>
  ),
  spots: {
    handle: { at: [112, 22], label: [186, 18] },
    fitting: { at: [160, 54], label: [202, 62] },
    mesh: { at: [84, 104], label: [24, 100] },
    body: { at: [60, 146], label: [24, 150] },
  },
};
