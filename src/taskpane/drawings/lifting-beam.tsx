/** A lifting beam with an eye above and two below. */
import type { Drawing } from "./drawing";
import { Disc, Plate, Ring, Thin } from "./lines";

export const liftingBeam: Drawing = {
  picture: (
    <>
      <Plate d="M94 92 L100 62 H120 L126 92 Z" />
      <Ring x={110} y={50} r={16} width={12} />
      <Plate d="M20 92 H200 V100 H20 Z" />
      <Plate d="M24 100 H196 V124 H24 Z" />
      <Plate d="M20 124 H200 V132 H20 Z" />
      <Plate d="M34 132 H62 L56 156 H40 Z" />
      <Plate d="M158 132 H186 L180 156 H164 Z" />
      <Disc x={48} y={145} r={6} />
      <Disc x={172} y={145} r={6} />
      <Thin d="M24 180 H196 M24 174 V186 M196 174 V186" dash="5 4" />
    </>
  ),
  spots: {
    eye: { at: [124, 42], label: [186, 34] },
    beam: { at: [110, 112], label: [110, 204] },
    body: { at: [32, 116], label: [24, 66] },
  },
};
