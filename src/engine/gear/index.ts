/** The gear kinds, one line each. */
import { beamClamp } from "./beam-clamp";
import { block } from "./block";
import { chainHoist } from "./chain-hoist";
import { chainSling } from "./chain-sling";
import { clips } from "./clips";
import { coupling } from "./coupling";
import { endConnection } from "./end-connection";
import { eyeNut } from "./eye-nut";
import { eyebolt } from "./eyebolt";
import { fibreRopeSling } from "./fibre-rope-sling";
import { grommet } from "./grommet";
import { headacheBall } from "./headache-ball";
import { hoistRing } from "./hoist-ring";
import { hook } from "./hook";
import type { GearKind } from "./kind";
import { leverHoist } from "./lever-hoist";
import { liftingBeam } from "./lifting-beam";
import { liftingMagnet } from "./lifting-magnet";
import { liftingPoint } from "./lifting-point";
import { link } from "./link";
import { loadBlock } from "./load-block";
import { loadChain } from "./load-chain";
import { meshSling } from "./mesh-sling";
import { plateClamp } from "./plate-clamp";
import { rotationResistantRope } from "./rotation-resistant-rope";
import { roundsling } from "./roundsling";
import { runningRope } from "./running-rope";
import { shackle } from "./shackle";
import { sheave } from "./sheave";
import { standingRope } from "./standing-rope";
import { swivel } from "./swivel";
import { turnbuckle } from "./turnbuckle";
import { vacuumLifter } from "./vacuum-lifter";
import { webSling } from "./web-sling";
import { wedgeSocket } from "./wedge-socket";
import { wireRopeSling } from "./wire-rope-sling";

export const GEAR: readonly GearKind[] = [
  hook,
  shackle,
  link,
  swivel,
  block,
  chainSling,
  wireRopeSling,
  webSling,
  roundsling,
  eyebolt,
  eyeNut,
  hoistRing,
  turnbuckle,
  wedgeSocket,
  endConnection,
  clips,
  sheave,
  loadBlock,
  runningRope,
  rotationResistantRope,
  standingRope,
  meshSling,
  fibreRopeSling,
  liftingBeam,
  plateClamp,
  headacheBall,
  grommet,
  liftingPoint,
  coupling,
  chainHoist,
  leverHoist,
  loadChain,
  beamClamp,
  vacuumLifter,
  liftingMagnet,
];
