/**
 * Temperatures between which rigging hardware keeps its full rating, ends included; outside them the maker is asked. As printed on both scales
 * in ASME B30.26-2004, 26-1.6.1 (shackle), 26-2.6.1(b) (swivel hoist ring), 26-2.6.1(c) (carbon steel eyebolt).
 */
export interface ServiceRange {
  readonly F: readonly [least: string, most: string];
  readonly C: readonly [least: string, most: string];
  readonly source: string;
}
export const SERVICE_TEMPERATURE: Readonly<Record<string, ServiceRange>> = {
  shackle: { F: ["-40", "400"], C: ["-40", "204"], source: "ASME B30.26-2004 26-1.6.1" },
  "hoist ring": { F: ["-20", "400"], C: ["-29", "204"], source: "ASME B30.26-2004 26-2.6.1(b)" },
  eyebolt: { F: ["30", "275"], C: ["-1", "135"], source: "ASME B30.26-2004 26-2.6.1(c)" },
};
