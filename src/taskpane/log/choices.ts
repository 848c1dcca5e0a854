import { FIELD_IDS } from "../../engine/columns";

/** What a heading can be read as. "overload" is worked out by the add-in, so no heading of a log is read as it. */
export const CHOICES = FIELD_IDS.filter((id) => id !== "overload");
