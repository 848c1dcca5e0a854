/** Your heading on the left, what it is read as on the right; each can be changed. Folded while no heading needs attention. */
import { makeStyles, mergeClasses, Select, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { field, FIELD_IDS, type FieldId } from "../../engine/columns";
import type { HeadingMatch } from "../../engine/log/match-headings";
import { WHAT_IT_TAKES } from "../../engine/pages/about-columns";
import type { Report } from "../../engine/report/model";
import type { HeadingChoices } from "../../excel/port";
import { Folded } from "../shared/Section";
import { CHOICES } from "./choices";
import { doubled } from "./doubled";

/** Without these nothing can be told apart, judged or given a date. */
const NEEDED: readonly FieldId[] = ["id", "gear", "inspected"];
const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    tableLayout: "fixed",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  head: { textAlign: "left", fontWeight: tokens.fontWeightSemibold, padding: "2px 4px", color: tokens.colorNeutralForeground2 },
  cell: {
    padding: "2px 4px",
    borderTop: `1px solid ${tokens.colorNeutralStroke3}`,
    overflowWrap: "anywhere",
    verticalAlign: "middle",
    textAlign: "left",
    fontWeight: tokens.fontWeightRegular,
  },
  unused: { color: tokens.colorNeutralForeground3 },
  select: { width: "100%", minWidth: 0 },
  warning: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorStatusWarningForeground3,
  },
});
interface Props {
  report: Report;
  choices: HeadingChoices;
  used: number;
  disabled: boolean;
  onChoose: (heading: string, field: FieldId | null | "as found") => void;
}
export function HeadingList({ report, choices, used, disabled, onChoose }: Props) {
  const styles = useStyles();
  // Those that are not read are the ones to look at. A choice moves none of them.
  const [unread] = useState(() => new Set(report.headings.filter((heading) => readAs(heading) === null).map(({ column }) => column)));
  const named = report.headings
    .filter((heading) => heading.heading !== "" || heading.field !== null)
    .sort((a, b) => Number(unread.has(b.column)) - Number(unread.has(a.column)));
  const twice = doubled(report).map((id) => field(id).heading);
  const attention = twice.length > 0 || NEEDED.some((id) => !named.some((heading) => heading.field === id));
  // Once open it stays: the choice that puts a heading right must not fold away under the hand that makes it.
  const [open, setOpen] = useState(attention);
  if (attention && !open) setOpen(true);
  return (
    <Folded title="Headings" aside={`${String(used)} of ${String(named.length)} read`} open={open}>
      {twice.length > 0 && (
        <p className={styles.warning}>
          More than one heading is read as {twice.join(", as ")}: the worst of what they say counts. Set to Not used what should not.
        </p>
      )}
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col" className={styles.head}>
              Your heading
            </th>
            <th scope="col" className={styles.head}>
              Read as
            </th>
          </tr>
        </thead>
        <tbody>
          {named.map((heading) => (
            <tr key={heading.column}>
              <th scope="row" className={mergeClasses(styles.cell, readAs(heading) === null && styles.unused)}>
                {heading.heading === "" ? "(blank)" : heading.heading}
              </th>
              <td className={styles.cell}>
                <Select
                  size="small"
                  className={styles.select}
                  aria-label={`${heading.heading} is read as`}
                  disabled={disabled}
                  value={readAs(heading) ?? "not used"}
                  title={whatItTakes(readAs(heading))}
                  onChange={(_, data) => {
                    onChoose(heading.heading, chosen(data.value));
                  }}
                >
                  <Choices heading={heading} changed={heading.chosen || heading.heading.toLowerCase() in choices} />
                </Select>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Folded>
  );
}
/** What a heading is read as, alone or together with another. */
const readAs = (heading: HeadingMatch): FieldId | null => heading.field ?? heading.also;
const whatItTakes = (id: FieldId | null): string => (id === null ? "Not used" : WHAT_IT_TAKES[id]);
function Choices({ heading, changed }: { heading: HeadingMatch; changed: boolean }) {
  return (
    <>
      {changed && <option value="as found">Back to how it was found</option>}
      <option value="not used">Not used</option>
      {CHOICES.map((id) => (
        <option key={id} value={id}>
          {field(id).heading}
          {readAs(heading) === id && heading.unit !== null ? ` (${heading.unit})` : ""}
        </option>
      ))}
      {heading.field === "overload" && <option value="overload">{field("overload").heading}</option>}
    </>
  );
}
function chosen(value: string): FieldId | null | "as found" {
  if (value === "as found") return value;
  return FIELD_IDS.find((id) => id === value) ?? null;
}
