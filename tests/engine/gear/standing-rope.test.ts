import { kindTests } from "../helpers";
import { counted, refusesResistant, seenOnRopes, slimmer } from "./ropes";

kindTests(
  "standing rope",
  [
    ...counted("standing-rope.broken-wires-in-a-lay", "brokenLay", "above", 2),
    ...counted("standing-rope.broken-wires-at-the-end", "brokenEnd", "above", 1),
    ...slimmer("standing-rope"),
  ],
  seenOnRopes("standing-rope"),
);

refusesResistant("standing rope");
