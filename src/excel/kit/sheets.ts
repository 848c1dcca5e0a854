export const REGISTER_SHEET = "Gear register";
export const NOTES_SHEET = "Gear notes";
export const REGISTER_TABLE = "Gear";
/** What was copied from the log at the last build; very hidden. */
export const COPIED_SHEET = "Gear copied";
/** The house's own limits; people write in it, the add-in only makes it. */
export const HOUSE_SHEET = "House limits";
/** One-based row of the headings; above it stand the title, the rules in force with the day, and the caution. */
export const HEADING_ROW = 4;
/** Cells that the formulas read: rule sets in force and the day to judge by. */
export const BASIS_CELL = "$B$2";
export const AS_OF_CELL = "$D$2";
export const CAUTION =
  "This supports an inspection by a competent person. It does not replace the maker's instructions, local codes or licensed practice.";
export const LIFT_SHEET = "Gear lift";
