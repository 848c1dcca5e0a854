/** The item under each rule set by itself: where the sources disagree, this shows which says what. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { useMemo } from "react";
import { BASES } from "../../engine/bases";
import { compareBases } from "../../engine/compare";
import type { HeadingMatch, ItemResult } from "../../engine/model";
import { DecisionChip } from "../shared/Chip";
import { Folded } from "../shared/Section";
import { kindOf } from "../words";
import { saysNothing } from "./says-nothing";

const useStyles = makeStyles({
  list: { listStyleType: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", gap: "8px" },
  line: { display: "flex", justifyContent: "space-between", alignItems: "center", gap: "6px", fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, fontWeight: tokens.fontWeightSemibold },
  why: { margin: "2px 0 0", fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
});

interface Props {
  item: ItemResult;
  headings: readonly HeadingMatch[];
  asOf: number;
}

export function Comparison({ item, headings, asOf }: Props) {
  const styles = useStyles();
  const compared = useMemo(() => compareBases(item, headings, asOf), [item, headings, asOf]);
  const silent = compared.filter((one) => one.silent).map(({ basis }) => basis);
  return (
    <Folded title="Under each rule set alone">
      <ul className={styles.list}>
        {compared.filter((one) => !one.silent).map(({ basis, verdict, sentence }) => (
          <li key={basis}>
            <div className={styles.line}>
              <span>{BASES[basis].name}</span>
              <DecisionChip decision={verdict.decision} />
            </div>
            {verdict.decision !== "KEEP" && <p className={styles.why}>{sentence}</p>}
          </li>
        ))}
      </ul>
      {silent.length > 0 && <p className={styles.why}>{saysNothing(silent, item.gear ?? kindOf(item))}</p>}
    </Folded>
  );
}
