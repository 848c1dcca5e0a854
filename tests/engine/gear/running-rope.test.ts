import { kindTests } from "../helpers";
import { counted, seenOnRopes, slimmer } from "./ropes";

kindTests("running rope", [
  ...counted("running-rope.broken-wires-in-a-lay", "brokenLay", "from", 6),
  ...counted("running-rope.broken-wires-in-one-strand", "brokenStrand", "from", 3),
  ...counted("running-rope.broken-wires-in-a-valley", "brokenValley", "from", 1, ["standard"], "ASME B30 crane practice, restated"),
  ...counted("running-rope.broken-wires-at-the-end", "brokenEnd", "from", 2, ["standard"], "ASME B30.5-2011, restated: 2 at an end connection"),
  ...slimmer("running-rope"),
  // Outer wire 1.2 mm as new: 1/3 is 0.4 mm, so 0.8 mm is out. 1.1 mm has used a quarter.
  { criterion: "running-rope.outer-wire-wear.standard", source: "Mich. R 408.40834(1)(b): 1/3 of the original diameter", inside: [{ wireNew: "1.2 mm", wireNow: "1.1 mm" }, "KEEP"], edge: [{ wireNew: "1.2 mm", wireNow: "0.8 mm" }, "REMOVE"], past: [{ wireNew: "1.2 mm", wireNow: "0.79 mm" }, "REMOVE"] },
], seenOnRopes("running-rope"));
