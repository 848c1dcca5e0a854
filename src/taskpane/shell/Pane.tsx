/** The task pane: a line on top, the places, messages, the place that is open, and the caution in the foot. */
import { FluentProvider, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect } from "react";
import { lateAndOut } from "../../engine/report/fit-for-use";
import { showNumber } from "../../engine/words";
import type { WorkbookPort } from "../../excel/port";
import type { PlaceName } from "../places";
import type { Bell } from "../ribbon/bell";
import { Heard } from "../shared/Heard";
import { useScrollOf } from "../shared/scroll";
import { ShadeContext } from "../shared/shade";
import { keepTabInside } from "../shared/tab-order";
import { themeOf, useShade } from "../shared/theme";
import { CAUTION } from "../shared/words";
import { type PaneState, shownLog } from "../state/state";
import { usePane } from "../state/use-pane";
import { TopLine } from "../top/TopLine";
import { Messages } from "./Messages";
import { OpenPlace } from "./OpenPlace";
import { Places } from "./Places";
import { RegisterNotices } from "./RegisterNotices";
import { Working } from "./Working";

/** Set on the element itself: a class would also reach the layers that open over the pane. */
const FULL = { height: "100%" };
const useStyles = makeStyles({
  pane: {
    boxSizing: "border-box",
    height: "100%",
    minHeight: "100%",
    display: "flex",
    flexDirection: "column",
    "@media (max-height: 420px)": { height: "auto" },
  },
  main: { flexGrow: 1, minHeight: 0, display: "flex", flexDirection: "column" },
  messages: { display: "flex", flexDirection: "column", flexShrink: 0, maxHeight: "60%", overflowY: "auto" },
  place: {
    // What stands in it is measured from its top.
    position: "relative",
    flexGrow: 1,
    minHeight: 0,
    overflowY: "auto",
    display: "flex",
    flexDirection: "column",
    "@media (max-height: 420px)": { overflowY: "visible" },
  },
  foot: {
    flexShrink: 0,
    padding: "5px 10px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground2,
    color: tokens.colorNeutralForeground2,
    fontSize: "11px",
    lineHeight: "14px",
  },
  help: { color: tokens.colorBrandForegroundLink },
  title: { margin: 0 },
});
interface Props {
  port: WorkbookPort;
  bell?: Bell;
}
export function Pane({ port, bell }: Props) {
  const { state, intentions } = usePane(port);
  const shade = useShade();
  const styles = useStyles();
  const place = useScrollOf(state.card === null ? state.place : null);
  useEffect(() => bell?.answer(intentions.rebuild), [bell, intentions]);
  useEffect(() => keepTabInside(document), []);
  return (
    <FluentProvider theme={themeOf(shade)} style={FULL}>
      <ShadeContext.Provider value={shade}>
        <div className={styles.pane}>
          <header>
            <h1 className={styles.title}>
              <Heard>Gear Verdicts</Heard>
            </h1>
            <TopLine state={state} intentions={intentions} />
          </header>
          <Places
            place={state.place}
            counts={placeCounts(state)}
            onGo={(place) => {
              intentions.tell({ kind: "go", place });
            }}
          />
          <main className={styles.main}>
            <Working work={state.work} waiting={state.waiting} onStop={intentions.stop} />
            <div className={styles.messages}>
              <Messages state={state} intentions={intentions} />
            </div>
            <div id="place" ref={place} className={styles.place}>
              {state.register !== null && state.card === null && <RegisterNotices state={state} intentions={intentions} />}
              <OpenPlace state={state} intentions={intentions} />
            </div>
          </main>
          <footer className={styles.foot}>
            {CAUTION}{" "}
            <a className={styles.help} href="assets/help.html" target="_blank" rel="noopener noreferrer">
              Help
            </a>
          </footer>
          <div role="status" aria-live="polite">
            <Heard>{state.announcement}</Heard>
          </div>
        </div>
      </ShadeContext.Provider>
    </FluentProvider>
  );
}
function placeCounts(state: PaneState): Partial<Record<PlaceName, string>> {
  const report = shownLog(state)?.report;
  if (report === undefined) return {};
  const late = report.due.OVERDUE - lateAndOut(report.items);
  return { items: showNumber(report.items.length), ...(late > 0 ? { due: `${showNumber(late)} late` } : {}) };
}
