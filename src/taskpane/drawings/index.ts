/** The drawings, one line for each gear kind. */
import { block } from "./block";
import { chainSling } from "./chain-sling";
import type { Drawing } from "./drawing";
import { hook } from "./hook";
import { link } from "./link";
import { roundsling } from "./roundsling";
import { shackle } from "./shackle";
import { swivel } from "./swivel";
import { webSling } from "./web-sling";
import { wireRopeSling } from "./wire-rope-sling";

export const DRAWINGS: Readonly<Record<string, Drawing>> = {
  hook,
  shackle,
  link,
  swivel,
  block,
  "chain sling": chainSling,
  "wire rope sling": wireRopeSling,
  "web sling": webSling,
  roundsling,
};
