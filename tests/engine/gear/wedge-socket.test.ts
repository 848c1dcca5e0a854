import { fivePercentNick, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26";

kindTests(
  "wedge socket",
  [
    tenPercent("wedge-socket.socket-wear.standard", TABLE_19, "from"),
    tenPercent("wedge-socket.socket-wear.practice", PRACTICE, "above"),
    twoWays("wedge-socket.socket-wear.practice-two-ways"),
    fivePercentNick("wedge-socket.nick.practice", "socket"),
    tenPercent("wedge-socket.pin-wear.standard", TABLE_19, "from", "pinNew", "pinNow"),
    tenPercent("wedge-socket.pin-wear.practice", PRACTICE, "above", "pinNew", "pinNow"),
  ],
  [
    ...onSight("wedge-socket", "wedge", "wedge", { standard: "WAC 296-155-33915(2)", practice: PRACTICE }),
    ...onSight("wedge-socket", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("wedge-socket", TABLE_19),
  ],
);
