/** A swivel with an eye above and a jaw below. */
import type { Drawing } from "./drawing";
import { Bar, Plate, Ring, Thin } from "./lines";

export const swivel: Drawing = {
  picture: (
    <>
      <Bar width={18} cap="round" d="M80 202 V164 A30 26 0 0 1 140 164 V202" />
      <Plate d="M66 184 H154 V198 H66 Z" />
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
