/** The item under each rule set by itself: where the sources disagree, this shows which says what. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { useMemo } from "react";
import { sentenceOf } from "../../engine/check/sentences";
import type { HeadingMatch } from "../../engine/log/match-headings";
import { compareBases } from "../../engine/report/compare-rules";
import type { ItemResult } from "../../engine/report/model";
import { DecisionChip } from "../shared/Chip";
import { Folded } from "../shared/Section";
import { unbroken } from "../shared/unbroken";
import { kindOf } from "../shared/words";
import { answers, silences } from "./rule-set-answers";

const useStyles = makeStyles({
  list: { listStyleType: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", gap: "8px" },
  line: {
    display: "flex",
    justifyContent: "space-between",
    alignItems: "center",
    gap: "6px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
  },
  why: {
    margin: "2px 0 0",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
    overflowWrap: "anywhere",
  },
});
interface Props {
  item: ItemResult;
  headings: readonly HeadingMatch[];
  asOf: number;
}
export function Comparison({ item, headings, asOf }: Props) {
  const styles = useStyles();
  const { always, sets } = useMemo(() => compareBases(item, headings, asOf), [item, headings, asOf]);
  return (
    <Folded title="Under each rule set alone">
      {always.map((finding) => (
        <div key={sentenceOf(finding)}>
          <div className={styles.line}>
            <span>Under any rules</span>
            <DecisionChip decision={finding.decision} />
          </div>
          <p className={styles.why}>{unbroken(sentenceOf(finding))}</p>
        </div>
      ))}
      <ul className={styles.list} aria-label="What each rule set says">
        {answers(sets).map(({ names, decision, sentence }) => (
          <li key={names}>
            <div className={styles.line}>
              <span>{names}</span>
              <DecisionChip decision={decision} />
            </div>
            {sentence !== "" && <p className={styles.why}>{unbroken(sentence)}</p>}
          </li>
        ))}
      </ul>
      {silences(sets, item.gear ?? kindOf(item)).map((line) => (
        <p key={line} className={styles.why}>
          {line}
        </p>
      ))}
    </Folded>
  );
}
