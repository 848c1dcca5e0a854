/** The gear kinds, one line each. */
import { block } from "./block";
import { chainSling } from "./chain-sling";
import { hook } from "./hook";
import type { GearKind } from "./kind";
import { link } from "./link";
import { roundsling } from "./roundsling";
import { shackle } from "./shackle";
import { swivel } from "./swivel";
import { webSling } from "./web-sling";
import { wireRopeSling } from "./wire-rope-sling";

export const GEAR: readonly GearKind[] = [hook, shackle, link, swivel, block, chainSling, wireRopeSling, webSling, roundsling];
