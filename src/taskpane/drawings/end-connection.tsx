/** A poured socket on the end of a rope. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Thin } from "./lines";

export const endConnection: Drawing = {
  picture: (
    <>
      <Bar width={13} d="M110 214 V168" />
      <Thin d="M105 208 L115 198 M105 194 L115 184 M105 180 L115 170" />
      <Plate d="M98 168 L84 104 H136 L122 168 Z" />
      <Bar width={13} d="M90 104 V48 M130 104 V48" />
      <Disc x={90} y={40} r={14} />
      <Disc x={130} y={40} r={14} />
      <Plate d="M66 34 H154 V46 H66 Z" />
    </>
  ),
  spots: {
    pin: { at: [110, 40], label: [190, 24] },
    socket: { at: [122, 130], label: [196, 130] },
    body: { at: [110, 178], label: [40, 190] },
  },
};
