/** The drawings, one line for each gear kind. */
import { GEAR } from "../../engine/gear/index";
import { beamClamp } from "./beam-clamp";
import { block } from "./block";
import { chainHoist } from "./chain-hoist";
import { chainSling } from "./chain-sling";
import { clips } from "./clips";
import { coupling } from "./coupling";
import type { Drawing } from "./drawing";
import { endConnection } from "./end-connection";
import { eyeNut } from "./eye-nut";
import { eyebolt } from "./eyebolt";
import { fibreRopeSling } from "./fibre-rope-sling";
import { grommet } from "./grommet";
import { headacheBall } from "./headache-ball";
import { hoistRing } from "./hoist-ring";
import { hook } from "./hook";
import { leverHoist } from "./lever-hoist";
import { liftingBeam } from "./lifting-beam";
import { liftingMagnet } from "./lifting-magnet";
import { liftingPoint } from "./lifting-point";
import { link } from "./link";
import { loadBlock } from "./load-block";
import { loadChain } from "./load-chain";
import { meshSling } from "./mesh-sling";
import { plainDrawing } from "./plain";
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

const DRAWINGS: Readonly<Record<string, Drawing>> = {
  hook,
  shackle,
  link,
  swivel,
  block,
  "chain sling": chainSling,
  "wire rope sling": wireRopeSling,
  "web sling": webSling,
  roundsling,
  eyebolt,
  "eye nut": eyeNut,
  "hoist ring": hoistRing,
  turnbuckle,
  "wedge socket": wedgeSocket,
  "end connection": endConnection,
  clips,
  sheave,
  "load block": loadBlock,
  "running rope": runningRope,
  "rotation resistant rope": rotationResistantRope,
  "standing rope": standingRope,
  "mesh sling": meshSling,
  "fibre rope sling": fibreRopeSling,
  "lifting beam": liftingBeam,
  "plate clamp": plateClamp,
  "beam clamp": beamClamp,
  "chain hoist": chainHoist,
  coupling,
  grommet,
  "headache ball": headacheBall,
  "lever hoist": leverHoist,
  "lifting magnet": liftingMagnet,
  "lifting point": liftingPoint,
  "load chain": loadChain,
  "vacuum lifter": vacuumLifter,
};
/** The drawing of a kind: its own, or a plain one with its parts. */
export function drawingOf(gear: string): Drawing | undefined {
  const own = DRAWINGS[gear];
  const kind = own === undefined ? GEAR.find(({ id }) => id === gear) : undefined;
  return own ?? (kind && plainDrawing([...new Set([...Object.keys(kind.parts), ...kind.checks.map((check) => check.part)])]));
}
