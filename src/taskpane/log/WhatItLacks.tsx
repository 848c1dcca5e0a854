/** What the log lacks before its items can be kept, in plain words and kind by kind, and what to do about it. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { lackAsNew } from "../../engine/report/lacking";
import { count, showNumber } from "../../engine/words";
import type { ReadLog } from "../../excel/port";
import { CappedList } from "../shared/CappedList";
import { Section } from "../shared/Section";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";
import { lacksOf } from "./lacks";

const useStyles = makeStyles({
  text: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, overflowWrap: "anywhere" },
  button: { alignSelf: "flex-start" },
});
export function WhatItLacks({ state, log, intentions }: { state: PaneState; log: ReadLog; intentions: Intentions }) {
  const styles = useStyles();
  const { report } = log;
  const lacks = [...(report.types?.unmet ?? []), ...lacksOf(report)];
  if (lacks.length === 0) return null;
  const all = report.items.length;
  const open = report.counts["NO VERDICT"];
  const asNew = lackAsNew(report.items);
  const typed = report.headings.some(({ field }) => field === "gearType");
  const asked = (report.questions?.columns.length ?? 0) > 0 || (report.questions?.unit ?? null) !== null;
  return (
    <Section title="What this log lacks for KEEP">
      {open > 0 && (
        <p className={styles.text}>{openStep(open, all)} An item can be kept once everything that its kind needs is recorded.</p>
      )}
      {asked ? (
        <p className={styles.text}>First answer the questions above; what is still missing then stands here.</p>
      ) : (
        <>
          <CappedList label="What this log lacks" entries={lacks} render={(sentence) => sentence} />
          <p className={styles.text}>{nextStep(state.register !== null)}</p>
        </>
      )}
      {asNew > 0 && !asked && (
        <>
          <p className={styles.text}>{asNewStep(asNew, typed, report.types !== undefined)}</p>
          {report.types === undefined && (
            <Button
              size="small"
              className={styles.button}
              disabledFocusable={state.work.kind !== "idle"}
              onClick={() => void intentions.makeTypesSheet()}
            >
              Make a sheet of gear types
            </Button>
          )}
        </>
      )}
    </Section>
  );
}
function openStep(open: number, all: number): string {
  if (open < all) return `${showNumber(open)} of ${count(all, "item")} have no verdict yet.`;
  return all === 1 ? "The one item has no verdict yet." : `None of the ${showNumber(all)} items has a verdict yet.`;
}
function nextStep(built: boolean): string {
  return built
    ? "Next: fill the marked cells in the register; the verdict follows as you type."
    : "Next: press Build register. It has a column for each of these and marks the cells to fill; the verdict follows as you type.";
}
/** One size of a type serves all its items. */
function asNewStep(items: number, typed: boolean, sheet: boolean): string {
  const lead = `${count(items, "item lacks its", "items lack their")} size when new.`;
  const column = typed ? "" : " Give the log a column Type, so that each item names its type.";
  return sheet
    ? `${lead} Write the sizes of each type once on the sheet Gear types, and every item of that type takes them.${column}`
    : `${lead} Items of one type share it: write it once, on a sheet of gear types, and every item of that type takes it.${column}`;
}
