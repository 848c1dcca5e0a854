export const PLACES = ["log", "items", "due", "rounds", "lift", "sources"] as const;
export type PlaceName = (typeof PLACES)[number];
export const PLACE_NAMES: Record<PlaceName, string> = {
  log: "Log",
  items: "Items",
  due: "Due",
  rounds: "Rounds",
  lift: "Lift",
  sources: "Sources",
};
