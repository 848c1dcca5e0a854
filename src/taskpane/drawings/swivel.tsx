/** A swivel with an eye above and a jaw below. */
import type { Drawing } from "./drawing";
import { Bar, Disc, Plate, Ring, Thin } from "./lines";

export const swivel: Drawing = {
  picture: (
    <>
      <Bar width={18} d="M80 190 V166 A30 26 0 0 1 140 166 V190" />
      <Disc x={80} y={190} r={15} />
      <Disc x={140} y={190} r={15} />
      <Plate d="M54 184 H166 V196 H54 Z" />
      <Bar width={20} d="M110 112 V142" />
      <Ring x={110} y={44} r={26} width={17} />
      <Plate d="M80 78 H140 L134 122 H86 Z" />
      <Thin d="M82 90 H138" />
      <Thin d="M84 108 H136" dash="4 3" />
    </>
  ),
  spots: {
    eye: { at: [132, 32], label: [186, 20] },
    case: { at: [134, 100], label: [196, 92] },
    body: { at: [104, 130], label: [34, 122] },
    jaw: { at: [139, 166], label: [196, 160] },
  },
};
