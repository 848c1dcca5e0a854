/** An eye nut on a threaded rod. */
import type { Drawing } from "./drawing";
import { Plate, Ring, Thin } from "./lines";

export const eyeNut: Drawing = {
  picture: (
    <>
      <Plate d="M101 150 H119 V204 H101 Z" />
      <Thin d="M101 170 L119 164 M101 180 L119 174 M101 190 L119 184 M101 200 L119 194" />
      <Ring x={110} y={68} r={32} width={20} />
      <Plate d="M80 106 H140 V152 H80 Z" />
      <Thin d="M98 106 V152 M122 106 V152" />
    </>
  ),
  spots: {
    eye: { at: [138, 54], label: [194, 40] },
    body: { at: [90, 130], label: [28, 130] },
  },
};
