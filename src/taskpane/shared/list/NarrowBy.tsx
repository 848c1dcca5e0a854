/** Two choices that narrow a list: the place and the kind of gear, each with its counts. */
import { makeStyles, Select, tokens } from "@fluentui/react-components";
import { useMemo } from "react";
import type { ItemResult } from "../../../engine/report/model";
import { showNumber } from "../../../engine/words";
import { byGear, byPlace, narrowed, type Narrowing, type Tally } from "./narrowed";

/** Stands for "all" in a choice; the names stand behind a sign of their own, so that none can be taken for it. */
const ALL = "all";
const valueOf = (name: string): string => `=${name}`;
const useStyles = makeStyles({
  row: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(min(100%, 9em), 1fr))",
    gap: "6px",
    fontSize: tokens.fontSizeBase200,
  },
  select: { minWidth: 0, width: "100%" },
});
interface Props {
  items: readonly ItemResult[];
  narrowing: Narrowing;
  onNarrow: (narrowing: Narrowing) => void;
}
export function NarrowBy({ items, narrowing, onNarrow }: Props) {
  const styles = useStyles();
  // Each choice counts what the other leaves.
  const places = useMemo(() => byPlace(narrowed(items, { ...narrowing, place: null })), [items, narrowing]);
  const kinds = useMemo(() => byGear(narrowed(items, { ...narrowing, gear: null })), [items, narrowing]);
  const choice = (
    label: string,
    all: string,
    blank: string,
    tallies: readonly Tally[],
    value: string | null,
    on: (to: string | null) => void,
  ) => (
    <Select
      size="small"
      className={styles.select}
      aria-label={label}
      value={value === null ? ALL : valueOf(value)}
      onChange={(_, data) => {
        on(data.value === ALL ? null : data.value.slice(1));
      }}
    >
      <option value={ALL}>{all}</option>
      {value !== null && !tallies.some(({ name }) => name === value) && (
        <option value={valueOf(value)}>{value === "" ? blank : value} (0)</option>
      )}
      {tallies.map((tally) => (
        <option key={tally.name} value={valueOf(tally.name)}>
          {tally.name === "" ? blank : tally.name} ({counts(tally)})
        </option>
      ))}
    </Select>
  );
  return (
    <div className={styles.row} role="group" aria-label="Show only one place or kind">
      {choice("Place", "All places", "No place given", places, narrowing.place, (place) => {
        onNarrow({ ...narrowing, place });
      })}
      {choice("Kind of gear", "All kinds", "No kind", kinds, narrowing.gear, (gear) => {
        onNarrow({ ...narrowing, gear });
      })}
    </div>
  );
}
/** "12, 3 out, 1 late". */
function counts({ items, out, late }: Tally): string {
  const more = [out > 0 ? `${showNumber(out)} out` : "", late > 0 ? `${showNumber(late)} late` : ""].filter((text) => text !== "");
  return [showNumber(items), ...more].join(", ");
}
