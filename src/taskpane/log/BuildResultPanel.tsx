/** What was written where, and where register and log do not say the same. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import { count, showNumber } from "../../engine/words";
import type { BuildResult } from "../../excel/port";
import { CappedList } from "../shared/CappedList";
import { Folded } from "../shared/Section";
import type { Intentions } from "../state/actions";

const useStyles = makeStyles({
  panel: {
    display: "flex",
    flexDirection: "column",
    gap: "8px",
    padding: "12px",
    borderRadius: tokens.borderRadiusMedium,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderLeft: `4px solid ${tokens.colorStatusSuccessBorder2}`,
    overflowWrap: "anywhere",
  },
  title: { margin: 0, outlineStyle: "none", fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase400 },
  text: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  quiet: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  buttons: { display: "flex", flexWrap: "wrap", gap: "6px" },
});
const seen = new WeakSet<BuildResult>();
interface Props {
  result: BuildResult;
  intentions: Intentions;
  onClose: () => void;
}
export function BuildResultPanel({ result, intentions, onClose }: Props) {
  const styles = useStyles();
  const panel = useRef<HTMLElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  // Once for each result: whoever comes back to the place finds it where it was left.
  useEffect(() => {
    if (seen.has(result)) return;
    seen.add(result);
    panel.current?.scrollIntoView({ block: "nearest" });
    // Who pressed the button goes on from here by Tab; nobody else's focus is taken.
    if (document.activeElement?.closest("[data-build]")) title.current?.focus({ preventScroll: true });
  }, [result]);
  return (
    <section ref={panel} className={styles.panel} aria-labelledby="result-title">
      <h2 ref={title} tabIndex={-1} id="result-title" className={styles.title}>
        Register written
      </h2>
      <p className={styles.text}>
        Sheet {result.sheet}: {count(result.items, "item")}, {showNumber(result.added)} new, {showNumber(result.kept)} kept.
      </p>
      {result.sentences.map((sentence) => (
        <p key={sentence} className={styles.text}>
          {sentence}
        </p>
      ))}
      {result.differing.length > 0 && (
        <Folded title="Register and log differ" aside={count(result.differing.length, "cell")} open={result.differing.length <= 5}>
          <p className={styles.text}>The register's value was kept. Where the log is right, type its value into the register.</p>
          <CappedList
            label="Cells that differ"
            entries={result.differing}
            render={(cell) => (
              <>
                <b>
                  {cell.id}, {cell.heading}
                </b>
                : register {shown(cell.register)}, log {shown(cell.log)}
              </>
            )}
          />
        </Folded>
      )}
      {result.onlyInRegister.length > 0 && (
        <Folded title="Only in the register" aside={count(result.onlyInRegister.length, "id")}>
          <p className={styles.text}>
            This log does not hold these. Their rows were kept. Leave them if they came from another log; delete them on the sheet if the
            gear is gone.
          </p>
          <CappedList label="Ids only in the register" entries={result.onlyInRegister} render={(id) => id} />
        </Folded>
      )}
      <p className={`${styles.text} ${styles.quiet}`}>
        To take it back, close the workbook without saving. With AutoSave on, open File, Info, Version history and restore the version
        before.
      </p>
      <div className={styles.buttons}>
        <Button
          onClick={() => {
            intentions.tell({ kind: "go", place: "items", toList: true });
          }}
        >
          See the items
        </Button>
        <Button appearance="subtle" onClick={onClose}>
          Close
        </Button>
      </div>
    </section>
  );
}
function shown(value: string): string {
  return value === "" ? "blank" : value;
}
