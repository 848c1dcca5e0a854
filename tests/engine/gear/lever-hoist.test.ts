import { kindTests } from "../helpers";
import { hoistCases, hoistSights } from "./hoists";

kindTests("lever hoist", hoistCases("lever-hoist"), hoistSights("lever-hoist"));
