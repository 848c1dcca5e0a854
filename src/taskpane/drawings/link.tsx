/** An oblong link. */
import type { Drawing } from "./drawing";
import { Bar } from "./lines";

export const link: Drawing = {
  picture: <Bar width={22} d="M66 72 A44 44 0 0 1 154 72 V148 A44 44 0 0 1 66 148 Z" />,
  spots: {
    crown: { at: [110, 28], label: [176, 18] },
    side: { at: [154, 110], label: [200, 110] },
    body: { at: [66, 120], label: [20, 120] },
  },
};
