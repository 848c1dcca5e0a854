import { kindTests, onSight, PRACTICE } from "../helpers";

/** The removal list of the sister section on web slings, applied to roundslings; ASME B30.9 9-6.9.4 itself was not read. */
const AS_WEB = "WAC 296-155-55820 Table 25, applied to roundslings";

kindTests("roundsling", [], [
  ...onSight("roundsling", "cuts or tears", "cuts", { standard: AS_WEB, practice: PRACTICE }),
  ...onSight("roundsling", "stitching", "stitching", { standard: AS_WEB, practice: PRACTICE }),
  ...onSight("roundsling", "heat damage", "heat", { standard: AS_WEB, practice: PRACTICE }),
  ...onSight("roundsling", "chemical damage", "chemical", { standard: AS_WEB, practice: PRACTICE }),
  ...onSight("roundsling", "fittings", "endFittings", { standard: AS_WEB, practice: PRACTICE }),
  ...onSight("roundsling", "identification tag", "tag", { standard: AS_WEB, practice: PRACTICE }),
  ...onSight("roundsling", "field change", "fieldChange", { practice: PRACTICE }),
]);
