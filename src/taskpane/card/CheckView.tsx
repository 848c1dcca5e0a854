/** One check of the item card: decision, bar, sentence, source, and the other limits it was held against. */
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Finding } from "../../engine/check/finding";
import { sentenceOf } from "../../engine/check/sentences";
import { BASES } from "../../engine/rules/rule-sets";
import { capital } from "../../engine/words";
import { DecisionChip } from "../shared/Chip";
import { useDecisionTints } from "../shared/shade";
import { unbroken } from "../shared/unbroken";
import { CheckBar } from "./CheckBar";
import { limitWords } from "./direction";
import type { CheckGroup } from "./group-checks";
import { percentUsed } from "./percent";

const useStyles = makeStyles({
  check: { display: "flex", flexDirection: "column", gap: "6px", padding: "10px 0 10px 10px", borderLeft: "3px solid transparent" },
  head: { display: "flex", alignItems: "center", justifyContent: "space-between", gap: "8px" },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold },
  part: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, overflowWrap: "anywhere" },
  others: {
    margin: 0,
    paddingLeft: "16px",
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
});
interface Props {
  group: CheckGroup;
  number: number | undefined;
  gear: string | null;
  /** Findings on the section at right angles. */
  across: ReadonlySet<Finding>;
  /** True where the card has said the sentence already. */
  saidAbove: boolean;
}
export function CheckView({ group, number, gear, across, saidAbove }: Props) {
  const styles = useStyles();
  const { first, others } = group;
  const { mark } = useDecisionTints()[first.decision];
  const place = across.has(first) ? `${group.part}, across` : group.part;
  const part = group.part === "" ? "" : number === undefined ? ` (${place})` : ` (${String(number)} ${place})`;
  const lines = new Set(others.map((finding) => otherLine(finding, gear, across.has(finding))));
  return (
    <li className={styles.check} style={{ borderLeftColor: mark }}>
      <div className={styles.head}>
        <h3 className={styles.title}>
          {capital(group.check)}
          <span className={styles.part}>{part}</span>
        </h3>
        <DecisionChip decision={first.decision} />
      </div>
      <CheckBar finding={first} />
      {!saidAbove && <p className={styles.text}>{unbroken(sentenceOf(first))}</p>}
      {lines.size > 0 && (
        <ul className={styles.others} aria-label={`Other limits for ${group.check}`}>
          {[...lines].map((line) => (
            <li key={line}>{unbroken(line)}</li>
          ))}
        </ul>
      )}
    </li>
  );
}
/** A further limit in one line; a finding without a limit keeps its sentence. */
function otherLine(finding: Finding, gear: string | null, across: boolean): string {
  if (finding.share === null || finding.comesOut === null) return sentenceOf(finding);
  const basis = finding.basis === null ? "" : `${BASES[finding.basis].name}: `;
  const source = finding.source === null ? "" : `, ${finding.source}`;
  const words = limitWords(finding, gear);
  const limit = words === "" ? "" : ` (${words})`;
  return `${basis}${across ? "across " : ""}${finding.measured ?? "no reading"}, out ${finding.comesOut}${limit}, ${percentUsed(finding.share)}, ${finding.decision}${source}`;
}
