import { kindTests, onSight, PRACTICE } from "../helpers";

const H5 = "29 CFR 1910.184(h)(5)";
const BULLETIN = "TB 43-0142 App. C";

kindTests("fibre rope sling", [], [
  ...onSight("fibre-rope-sling", "abnormal wear", "powder", { law: H5, standard: BULLETIN }),
  ...onSight("fibre-rope-sling", "cuts or tears", "cuts", { law: H5, standard: BULLETIN, practice: PRACTICE }),
  ...onSight("fibre-rope-sling", "heat damage", "heat", { law: H5, standard: BULLETIN }),
  ...onSight("fibre-rope-sling", "chemical damage", "chemical", { law: H5, standard: BULLETIN }),
  ...onSight("fibre-rope-sling", "end fittings", "endFittings", { law: H5, standard: BULLETIN }),
  ...onSight("fibre-rope-sling", "identification tag", "tag", { law: "29 CFR 1910.184(c)(13)", standard: "ASME B30.9, restated" }),
]);
