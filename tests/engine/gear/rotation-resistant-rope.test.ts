import { kindTests } from "../helpers";
import { counted, seenOnRopes, slimmer } from "./ropes";

kindTests(
  "rotation resistant rope",
  [
    ...counted("rotation-resistant-rope.broken-wires-in-6-diameters", "broken6d", "from", 2),
    ...counted("rotation-resistant-rope.broken-wires-in-30-diameters", "broken30d", "from", 4),
    ...counted(
      "rotation-resistant-rope.broken-wires-at-the-end",
      "brokenEnd",
      "from",
      2,
      ["standard"],
      "ASME B30.5-2011, restated: 2 at an end connection",
    ),
    ...slimmer("rotation-resistant-rope"),
  ],
  seenOnRopes("rotation-resistant-rope"),
);
