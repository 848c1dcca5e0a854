/** A lifting magnet with its bail above, its handle at the side and its face on a plate. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const liftingMagnet: Drawing = {
  picture: (
    <>
      <Bar width={13} d="M84 78 V52 A26 26 0 0 1 136 52 V78" />
      <Plate d="M42 78 H178 V150 H42 Z" />
      <Disc x={110} y={112} r={18} />
      <Bar width={10} cap="round" d="M112 112 L196 84" />
      <Plate d="M42 150 H98 V164 H42 Z" />
      <Plate d="M122 150 H178 V164 H122 Z" />
      <Plate d="M16 168 H204 V182 H16 Z" />
      <Thin d="M52 92 H84 M52 100 H76" />
    </>
  ),
  spots: {
    bail: { at: [132, 38], label: [188, 26] },
    handle: { at: [192, 86], label: [204, 56] },
    case: { at: [64, 128], label: [18, 118] },
    body: { at: [50, 84], label: [18, 66] },
    face: { at: [150, 162], label: [196, 202] },
  },
};
