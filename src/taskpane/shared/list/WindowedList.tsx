/**
 * A list that only draws the lines in sight, so that ten thousand items scroll as lightly as ten. It has no scrollbar of its
 * own: it moves with the place that it stands in. The list itself holds the focus; arrows move, Enter opens.
 */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type KeyboardEvent, type ReactNode, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { ItemResult } from "../../../engine/report/model";
import { showNumber } from "../../../engine/words";
import { scrollerOf } from "../scroll";
import type { Entry } from "./entries";
import { type TypeSize, USUAL } from "./type-size";
import { layOut, linesBetween, nextItem } from "./window";

/** Above and below the line of a heading. */
const AROUND_HEADING = 10;
/** Pixels beside the text of a row. */
const BESIDE = 24;
/** What the small type is measured by: as many wide and narrow letters as the texts of the rows have. */
const SAMPLE = '"02/03/2026": day and month can be read both ways; write 2 Mar 2026';
const useStyles = makeStyles({
  list: {
    position: "relative",
    flexGrow: 1,
    flexShrink: 0,
    outlineStyle: "none",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  // Takes no room itself; what is measured stands in it at its full width.
  unseen: { position: "absolute", top: 0, left: 0, width: 0, height: 0, overflow: "hidden", visibility: "hidden" },
  probe: { whiteSpace: "nowrap", width: "max-content" },
  name: { fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  small: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  space: { position: "relative", width: "100%" },
  line: { position: "absolute", left: 0, right: 0, boxSizing: "border-box", overflow: "hidden" },
  item: {
    cursor: "pointer",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
  },
  active: { backgroundColor: tokens.colorNeutralBackground1Selected },
  focused: { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "-2px" },
  heading: {
    display: "flex",
    alignItems: "center",
    justifyContent: "space-between",
    padding: "0 12px",
    fontSize: tokens.fontSizeBase200,
    backgroundColor: tokens.colorNeutralBackground2,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  first: { fontWeight: tokens.fontWeightSemibold, fontSize: tokens.fontSizeBase300 },
  second: { paddingLeft: "20px", color: tokens.colorNeutralForeground2 },
});
interface Props {
  label: string;
  entries: readonly Entry[];
  heightOf: (item: ItemResult, type: TypeSize) => number;
  activeRow: number | null;
  /** Take the focus when the list appears, with the active row in sight. Else the place opens where it was left, and the list follows rows that are selected later. */
  takeFocus: boolean;
  onStandOn: (row: number) => void;
  onOpen: (row: number) => void;
  children: (item: ItemResult, group: string) => ReactNode;
}
export function WindowedList({ label, entries, heightOf, activeRow, takeFocus, onStandOn, onOpen, children }: Props) {
  const styles = useStyles();
  const list = useRef<HTMLDivElement>(null);
  const [scroll, setScroll] = useState({ top: 0, height: 600 });
  const probe = useRef<HTMLDivElement>(null);
  const [type, setType] = useState(USUAL);
  const [focused, setFocused] = useState(false);
  const followed = useRef(takeFocus ? null : activeRow);
  const layout = useMemo(() => layOut(entries, (item) => heightOf(item, type), type.name + AROUND_HEADING), [entries, heightOf, type]);
  const found = activeRow === null ? undefined : layout.lineOfRow.get(activeRow);
  const active = found ?? layout.items[0] ?? -1;
  const activeEntry = entries[active];

  useLayoutEffect(() => {
    const box = list.current;
    const scroller = scrollerOf(box);
    if (box === null || scroller === null) return;
    const look = (): void => {
      setScroll({ top: scroller.scrollTop - aboveOf(box, scroller), height: scroller.clientHeight || 600 });
    };
    const measure = (): void => {
      look();
      setType((before) => {
        const now = typeSize(probe.current, box.clientWidth);
        return now === null || (now.name === before.name && now.line === before.line && now.letters === before.letters) ? before : now;
      });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    observer.observe(scroller);
    if (probe.current !== null) observer.observe(probe.current);
    // A page that scrolls as a whole tells it on the document.
    const onScroll = ({ target }: Event): void => {
      if (target === scroller || target === document) look();
    };
    document.addEventListener("scroll", onScroll, true);
    return () => {
      observer.disconnect();
      document.removeEventListener("scroll", onScroll, true);
    };
  }, []);

  // After the place has gone back to where it was left.
  useEffect(() => {
    if (followed.current !== null && followed.current === activeRow) return;
    followed.current = null;
    if (found !== undefined && list.current !== null) bringIntoSight(list.current, layout.tops[found] ?? 0, layout.tops[found + 1] ?? 0);
  }, [activeRow, found, layout]);

  useEffect(() => {
    if (takeFocus) list.current?.focus({ preventScroll: true });
  }, [takeFocus]);

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter" && activeEntry?.kind === "item") {
      onOpen(activeEntry.item.row);
      return;
    }
    const page = Math.max(1, Math.floor((scroll.height * entries.length) / layout.height) - 1);
    const to = nextItem(layout.items, active, event.key, page);
    const target = to === null ? undefined : entries[to];
    if (target?.kind !== "item") return;
    event.preventDefault();
    onStandOn(target.item.row);
  };

  return (
    <div
      ref={list}
      className={styles.list}
      role="listbox"
      tabIndex={0}
      aria-label={label}
      aria-activedescendant={activeEntry === undefined ? undefined : `line-${activeEntry.key}`}
      onKeyDown={onKeyDown}
      onFocus={() => {
        setFocused(true);
      }}
      onBlur={() => {
        setFocused(false);
      }}
    >
      <div aria-hidden="true" className={styles.unseen}>
        <div ref={probe} className={styles.probe}>
          <div className={styles.name}>{SAMPLE}</div>
          <div className={styles.small}>
            <span>{SAMPLE}</span>
          </div>
        </div>
      </div>
      <div className={styles.space} role="presentation" style={{ height: layout.height }}>
        {linesBetween(layout, scroll.top, scroll.top + scroll.height, active).map((index) => {
          const entry = entries[index];
          if (entry === undefined) return null;
          const place = { top: layout.tops[index], height: (layout.tops[index + 1] ?? 0) - (layout.tops[index] ?? 0) };
          if (entry.kind === "heading") {
            return (
              <div
                key={entry.key}
                aria-hidden="true"
                className={mergeClasses(styles.line, styles.heading, entry.level === 1 ? styles.first : styles.second)}
                style={place}
              >
                <span>{entry.text}</span>
                <span>{showNumber(entry.count)}</span>
              </div>
            );
          }
          return (
            <div
              key={entry.key}
              id={`line-${entry.key}`}
              role="option"
              aria-selected={index === found}
              aria-setsize={layout.items.length}
              aria-posinset={(layout.position.get(index) ?? 0) + 1}
              className={mergeClasses(
                styles.line,
                styles.item,
                index === found && styles.active,
                focused && index === active && styles.focused,
              )}
              style={place}
              onClick={() => {
                onOpen(entry.item.row);
              }}
            >
              {children(entry.item, entry.group)}
            </div>
          );
        })}
      </div>
    </div>
  );
}
/** Null where nothing is drawn. */
function typeSize(probe: HTMLElement | null, width: number): TypeSize | null {
  const [name, small] = [...(probe?.children ?? [])] as HTMLElement[];
  const sample = small?.firstElementChild?.getBoundingClientRect().width ?? 0;
  if (name === undefined || small === undefined || name.offsetHeight === 0 || sample === 0) return null;
  return {
    name: name.offsetHeight,
    line: small.offsetHeight,
    letters: Math.max(8, Math.floor((((width - BESIDE) * SAMPLE.length) / sample) * 0.97)),
  };
}
/** Pixels of the place that stand above the list's first line. */
function aboveOf(box: HTMLElement, scroller: Element): number {
  let top = 0;
  for (let at: Element | null = box; at instanceof HTMLElement && at !== scroller; at = at.offsetParent) top += at.offsetTop;
  return top;
}
function bringIntoSight(box: HTMLElement, top: number, bottom: number): void {
  const scroller = scrollerOf(box);
  if (scroller === null) return;
  const above = aboveOf(box, scroller);
  const height = scroller.clientHeight || 600;
  if (above + top < scroller.scrollTop) scroller.scrollTop = above + top;
  else if (above + bottom > scroller.scrollTop + height) scroller.scrollTop = above + bottom - height;
}
