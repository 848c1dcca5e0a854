/** A fibre rope sling with a spliced eye above and below. */
import type { Drawing } from "./drawing";
import { Bar, Thin } from "./lines";

const LAID = Array.from(
  { length: 7 },
  (_, i) => `M102 ${String(88 + 9 * i)} C108 ${String(88 + 9 * i)} 112 ${String(80 + 9 * i)} 118 ${String(80 + 9 * i)}`,
).join(" ");
export const fibreRopeSling: Drawing = {
  picture: (
    <>
      <Bar width={15} d="M110 80 C82 56 88 20 110 20 C132 20 138 56 110 80 V140 C82 164 88 200 110 200 C132 200 138 164 110 140" />
      <Bar width={19} d="M110 76 V104 M110 116 V144" />
      <Thin d={LAID} />
    </>
  ),
  spots: {
    eye: { at: [128, 44], label: [190, 34] },
    splice: { at: [118, 90], label: [192, 90] },
    body: { at: [106, 110], label: [28, 110] },
  },
};
