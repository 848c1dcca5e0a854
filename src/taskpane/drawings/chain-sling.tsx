/** A chain sling with one leg. */
import type { Drawing } from "./drawing";
import { Bar, SlingHook } from "./lines";

const FACE = (y: number): string => `M101 ${String(y)} a9 9 0 0 1 18 0 v10 a9 9 0 0 1 -18 0 Z`;
export const chainSling: Drawing = {
  picture: (
    <>
      <Bar width={13} d="M90 34 A20 20 0 0 1 130 34 V48 A20 20 0 0 1 90 48 Z" />
      <Bar width={9} cap="round" d="M110 66 V86" />
      <Bar width={8} d={FACE(88)} />
      <Bar width={9} cap="round" d="M110 100 V120" />
      <Bar width={8} d={FACE(122)} />
      <Bar width={9} cap="round" d="M110 134 V150" />
      <SlingHook x={110} y={158} />
    </>
  ),
  spots: {
    "master link": { at: [132, 40], label: [192, 28] },
    link: { at: [120, 94], label: [192, 84] },
    body: { at: [102, 128], label: [28, 116] },
    hook: { at: [124, 196], label: [188, 188] },
    "hook pin": { at: [110, 158], label: [30, 166] },
  },
};
