/** A sheave from the front, and the section of its rim. */
import type { Drawing } from "./drawing";
import { Disc, Plate, Thin } from "./lines";

export const sheave: Drawing = {
  picture: (
    <>
      <Disc x={88} y={112} r={68} />
      <Disc x={88} y={112} r={56} />
      <Thin d="M88 56 V168 M32 112 H144 M48 72 L128 152 M128 72 L48 152" />
      <Disc x={88} y={112} r={20} />
      <Disc x={88} y={112} r={9} />
      <Plate d="M170 92 H178 V104 A9 9 0 0 0 196 104 V92 H204 V150 H170 Z" />
    </>
  ),
  spots: {
    hub: { at: [74, 100], label: [24, 30] },
    body: { at: [44, 152], label: [24, 196] },
    groove: { at: [187, 112], label: [187, 64] },
    flange: { at: [174, 140], label: [150, 196] },
  },
};
