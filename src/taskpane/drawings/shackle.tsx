/** A bow shackle with a screw pin. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const shackle: Drawing = {
  picture: (
    <>
      <Bar width={22} d="M78 60 L78 84 C78 104 54 112 54 144 A56 52 0 0 0 166 144 C166 112 142 104 142 84 L142 60" />
      <Disc x={78} y={50} r={18} />
      <Disc x={142} y={50} r={18} />
      <Plate d="M48 42 H172 V58 H48 Z" />
      <Plate d="M36 34 H50 V66 H36 Z" />
      <Thin d="M161 43 L165 57 M166 43 L170 57" />
    </>
  ),
  spots: {
    pin: { at: [110, 50], label: [110, 14] },
    ear: { at: [150, 38], label: [196, 20] },
    body: { at: [163, 124], label: [204, 108] },
    bow: { at: [110, 200], label: [34, 206] },
  },
};
