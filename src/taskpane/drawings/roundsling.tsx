/** An endless roundsling, its cover opened at one place to show the core, in a fitting. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Thin } from "./lines";

export const roundsling: Drawing = {
  picture: (
    <>
      <Bar width={24} d="M70 92 A40 40 0 0 1 150 92 V158 A40 40 0 0 1 70 158 Z" />
      <Bar width={10} d="M96 22 A14 14 0 0 1 124 22 V56 A14 14 0 0 1 96 56 Z" />
      <Plate d="M59 106 H81 V138 H59 Z" />
      <Thin d="M64 108 V136 M70 108 V136 M76 108 V136" />
      <Plate d="M161 118 H184 V144 H161 Z" />
      <Thin d="M165 125 H180 M165 131 H180 M165 137 H175" />
      <Thin d="M144 96 V160" dash="3 3" />
    </>
  ),
  spots: {
    fitting: { at: [122, 26], label: [182, 18] },
    core: { at: [66, 122], label: [20, 122] },
    cover: { at: [150, 92], label: [202, 84] },
    body: { at: [110, 198], label: [178, 204] },
  },
};
