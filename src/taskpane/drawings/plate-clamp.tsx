/** A plate clamp on the edge of a plate. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const plateClamp: Drawing = {
  picture: (
    <>
      <Bar width={13} d="M96 54 A16 16 0 0 1 128 54 V70 A16 16 0 0 1 96 70 Z" />
      <Plate d="M103 124 H117 V208 H103 Z" />
      <Plate d="M72 84 H148 L158 108 V182 H120 V126 H100 V182 H62 V108 Z" />
      <Disc x={140} y={140} r={17} />
      <Thin d="M124 132 l-5 4 l5 3 l-5 4 l5 3 l-5 4" />
      <Disc x={140} y={140} r={6} />
      <Plate d="M92 132 H100 V154 H92 Z" />
      <Thin d="M112 80 V112 M104 108 H120" />
    </>
  ),
  spots: {
    body: { at: [112, 40], label: [180, 28] },
    frame: { at: [154, 116], label: [200, 100] },
    pin: { at: [142, 142], label: [200, 158] },
    tooth: { at: [98, 146], label: [26, 152] },
  },
};
