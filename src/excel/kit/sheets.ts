export const REGISTER_SHEET = "Gear register";
export const NOTES_SHEET = "Gear notes";
/** Not "Gear": a log of that name is likely, and a table's name stands once in a workbook. */
export const REGISTER_TABLE = "GearRegister";
/** The register's table as earlier versions named it. */
export const OLD_REGISTER_TABLE = "Gear";
/** What was copied from the log at the last build; very hidden. */
export const COPIED_SHEET = "Gear copied";
/** What is worked out over many rows at once: assemblies with a sign of overload, rows of the house limits; very hidden. */
export const WORKINGS_SHEET = "Gear workings";
/** The house's own limits; people write in it, the add-in only makes it. */
export const HOUSE_SHEET = "House limits";
/** Rows of the house limits that are read; more of them are refused by name. */
export const HOUSE_ROWS = 2000;
/** As-new sizes by type of gear; people write in it, the add-in only makes it. */
export const TYPES_SHEET = "Gear types";
/** Rows of types that are read; more of them are refused by name. */
export const TYPES_ROWS = 2000;
/** One-based row of the names of column groups, and of the headings; above them stand the title and the rules in force with the day. */
export const GROUP_ROW = 3;
export const HEADING_ROW = 4;
/** Cells that the formulas read: rule sets in force and the day to judge by. */
export const BASIS_CELL = "$B$2";
export const AS_OF_CELL = "$D$2";
export const CAUTION =
  "This supports an inspection by a competent person. It does not replace the maker's instructions, local codes or licensed practice.";
export const LIFT_SHEET = "Gear lift";
/** Every reading that was posted, sealed; rows are added and never changed. */
export const HISTORY_SHEET = "Gear history";
export const HISTORY_TABLE = "GearHistory";
/** Report of thorough examination of a round; written anew each time. */
export const REPORT_SHEET = "Gear report";
