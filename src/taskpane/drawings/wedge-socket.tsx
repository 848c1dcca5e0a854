/** A wedge socket with its rope. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const wedgeSocket: Drawing = {
  picture: (
    <>
      <Bar width={12} d="M96 210 V120 C96 78 140 78 138 116 L130 186" />
      <Plate d="M78 54 L142 54 L152 104 L134 176 H90 L70 104 Z" />
      <Thin d="M90 176 V116 C90 84 134 84 134 114 L126 176" dash="4 3" />
      <Plate d="M102 152 L100 118 C104 104 120 104 122 116 L112 152 Z" />
      <Bar width={13} d="M84 58 V34 M136 58 V34" />
      <Disc x={84} y={30} r={14} />
      <Disc x={136} y={30} r={14} />
      <Plate d="M62 24 H158 V36 H62 Z" />
    </>
  ),
  spots: {
    pin: { at: [110, 30], label: [188, 18] },
    socket: { at: [146, 104], label: [200, 100] },
    wedge: { at: [108, 132], label: [26, 122] },
    body: { at: [88, 160], label: [30, 178] },
  },
};
