/** A rotation-resistant rope, opened to show that its inner strands are laid the other way. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Thin } from "./lines";

const OUTER = Array.from({ length: 7 }, (_, i) => `M98 ${String(36 + 9 * i)} L122 ${String(26 + 9 * i)}`).join(" ");
const INNER = Array.from({ length: 4 }, (_, i) => `M103 ${String(100 + 8 * i)} L117 ${String(106 + 8 * i)}`).join(" ");
export const rotationResistantRope: Drawing = {
  picture: (
    <>
      <Bar width={26} d="M110 20 V96" />
      <Bar width={16} d="M110 96 V130" />
      <Thin d={OUTER} />
      <Thin d={INNER} />
      <Bar width={26} d="M110 130 V162" />
      <Plate d="M92 158 H128 L136 204 H84 Z" />
    </>
  ),
  spots: {
    body: { at: [122, 60], label: [190, 56] },
    "end fitting": { at: [132, 186], label: [194, 184] },
  },
};
