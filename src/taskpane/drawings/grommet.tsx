/** A grommet: rope laid into a ring without ends. */
import type { Drawing } from "./drawing";
import { Bar, Thin } from "./lines";

const LAY = [40, 60, 80, 100, 120, 140, 160]
  .map((y) => `M56 ${String(y + 8)} L70 ${String(y)} M150 ${String(y + 8)} L164 ${String(y)}`)
  .join(" ");
export const grommet: Drawing = {
  picture: (
    <>
      <Bar width={16} d="M63 68 A47 47 0 0 1 157 68 V150 A47 47 0 0 1 63 150 Z" />
      <Thin d={LAY} />
      <Thin d="M100 190 L112 204 M110 190 L122 203" />
    </>
  ),
  spots: {
    body: { at: [63, 96], label: [22, 84] },
    "outer wire": { at: [164, 120], label: [202, 112] },
    tuck: { at: [112, 197], label: [176, 206] },
  },
};
