/** A lifting point: a bail in a base that is bolted or welded to the load. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Thin } from "./lines";

export const liftingPoint: Drawing = {
  picture: (
    <>
      <Bar width={18} d="M66 128 V92 A44 44 0 0 1 154 92 V128" />
      <Plate d="M46 122 H174 L182 150 H38 Z" />
      <Plate d="M18 150 H202 V168 H18 Z" />
      <Plate d="M98 168 H122 V206 H98 Z" />
      <Thin d="M98 178 L122 172 M98 188 L122 182 M98 198 L122 192" />
      <Thin d="M34 150 L28 144 M42 150 L36 144 M178 150 L184 144 M186 150 L192 144" />
    </>
  ),
  spots: {
    bail: { at: [146, 62], label: [196, 44] },
    base: { at: [60, 138], label: [20, 116] },
    body: { at: [160, 136], label: [202, 116] },
    bolt: { at: [122, 188], label: [178, 196] },
  },
};
