/** Load chain: links on edge and flat, with the gauged length beside them. */
import type { Drawing } from "./drawing";
import { Bar, Thin } from "./lines";

const FLAT = (y: number): string => `M98 ${String(y)} a12 12 0 0 1 24 0 v14 a12 12 0 0 1 -24 0 Z`;
export const loadChain: Drawing = {
  picture: (
    <>
      <Bar width={11} d={FLAT(22)} />
      <Bar width={12} cap="round" d="M110 42 V68" />
      <Bar width={11} d={FLAT(78)} />
      <Bar width={12} cap="round" d="M110 98 V124" />
      <Bar width={11} d={FLAT(134)} />
      <Bar width={12} cap="round" d="M110 154 V180" />
      <Bar width={11} d={FLAT(190)} />
      <Thin d="M60 34 V190 M54 34 H66 M54 190 H66" dash="5 4" />
    </>
  ),
  spots: {
    "load chain": { at: [124, 84], label: [190, 76] },
    body: { at: [112, 112], label: [190, 136] },
  },
};
