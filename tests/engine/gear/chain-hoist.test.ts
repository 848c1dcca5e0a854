import { kindTests } from "../helpers";
import { hoistCases, hoistSights } from "./hoists";

kindTests("chain hoist", hoistCases("chain-hoist"), hoistSights("chain-hoist"));
