/** How each event changes what the pane knows. Pure. */
import type { FieldId } from "../../engine/columns";
import { count } from "../../engine/words";
import type { HeadingChoices, ReadLog } from "../../excel/port";
import type { ListName } from "../shared/list/entries";
import { ALL } from "../shared/list/narrowed";
import { showCounts, showListed, showMade } from "../shared/words";
import { changed } from "./lift-form";
import { newRows, tellNewRows } from "./new-rows";
import { announced } from "./rounds";
import { rowInside } from "./row-inside";
import { type Judged, type PaneEvent, type PaneState, shownLog } from "./state";

export function reduce(state: PaneState, event: PaneEvent): PaneState {
  switch (event.kind) {
    case "started":
      return {
        ...state,
        started: true,
        basis: event.saved.basis.length > 0 ? event.saved.basis : state.basis,
        choices: event.saved.choices,
        units: event.saved.units ?? {},
        savedPlace: event.saved.place,
        stamp: { ...state.stamp, name: event.saved.inspector ?? "" },
      };
    case "reading":
      return { ...state, work: { kind: "reading" }, failure: null, waiting: false };
    case "read":
      return afterRead(state, event.log, event.quiet);
    case "no log":
      return { ...state, log: null, noLog: event.why, savedPlace: null, announcement: "No log." };
    case "register read":
      return afterRegister({ ...state, cellsWrong: event.sure }, event.found, event.quiet);
    case "rest":
      return { ...state, work: { kind: "idle" } };
    case "failed":
      return { ...state, work: { kind: "idle" }, failure: event.failure, waiting: false };
    case "waiting":
      return { ...state, waiting: event.on };
    case "building":
      return { ...state, work: { kind: "building", progress: null, stopping: false }, failure: null, result: null };
    case "progress":
      return state.work.kind === "building" ? { ...state, work: { ...state.work, progress: event.progress } } : state;
    case "stopping":
      return state.work.kind === "building" ? { ...state, work: { ...state.work, stopping: true } } : state;
    case "built":
      return {
        ...state,
        result: event.result,
        made: null,
        judged: "register",
        filtered: [],
        announcement: `Register written on sheet ${event.result.sheet}: ${count(event.result.items, "item")}.`,
      };
    case "made":
      return { ...state, made: showMade(event.sheet), announcement: showMade(event.sheet) };
    case "listed": {
      const said = showListed(event.sheet, event.items);
      return { ...state, made: said, announcement: said };
    }
    case "stamp name":
      return { ...state, stamp: { ...state.stamp, name: event.name } };
    case "stamp plan":
      return { ...state, stamp: { ...state.stamp, plan: event.plan, day: event.day } };
    case "stamped": {
      const said = `${count(event.rows, "row was", "rows were")} stamped as inspected by ${state.stamp.name.trim()}.`;
      return { ...state, stamp: { ...state.stamp, plan: null }, made: said, announcement: said };
    }
    case "basis":
      return { ...state, basis: event.basis };
    case "heading":
      return { ...state, choices: withChoice(state.choices, event.heading, event.field) };
    case "headings":
      return {
        ...state,
        choices: event.answers.reduce<HeadingChoices>((choices, { heading, field }) => withChoice(choices, heading, field), state.choices),
      };
    case "unit": {
      const rest = Object.fromEntries(Object.entries(state.units).filter(([sheet]) => sheet !== event.sheet.toLowerCase()));
      return { ...state, units: event.unit === null ? rest : { ...rest, [event.sheet.toLowerCase()]: event.unit } };
    }
    case "narrow":
      return { ...state, narrowing: event.narrowing, returning: false };
    case "as of":
      return { ...state, asOf: event.asOf, asOfChosen: event.chosen };
    case "judge":
      return { ...state, judged: event.judged, card: null, activeRows: { items: null, due: null } };
    case "go":
      return { ...state, place: event.place, card: null, made: null, returning: event.toList === true };
    case "open":
      return { ...state, card: event.card, activeRows: { ...state.activeRows, [event.card.from]: event.card.row }, returning: false };
    case "back":
      return { ...state, card: null, returning: true };
    case "stand on":
      return { ...state, activeRows: { ...state.activeRows, [event.list]: event.row } };
    case "decision":
      return { ...state, decisions: toggled(state.decisions, event.decision), returning: false };
    case "all decisions":
      return { ...state, decisions: [], search: "", narrowing: ALL, returning: true };
    case "search":
      return { ...state, search: event.text, returning: false };
    case "due state":
      return { ...state, dueStates: toggled(state.dueStates, event.state), returning: false };
    case "all due states":
      return { ...state, dueStates: [], narrowing: ALL, returning: true };
    case "grouping":
      return { ...state, grouping: event.grouping, returning: false };
    case "filtered":
      return {
        ...state,
        filtered: event.decisions,
        announcement:
          event.decisions.length > 0 ? `The register shows only ${event.decisions.join(", ")}.` : "The register shows all rows.",
      };
    case "lift": {
      const lift = changed(state.lift, event.change);
      return event.change.kind === "written"
        ? { ...state, lift, announcement: `The lift is written on sheet ${event.change.sheet}.` }
        : { ...state, lift };
    }
    case "rounds": {
      const { said } = event.change;
      return { ...state, rounds: { ...state.rounds, ...event.change }, ...(said && { announcement: announced(said) }) };
    }
    case "changed elsewhere":
      return { ...state, remote: event.sheet };
    case "selected":
      return afterSelection(state, event.sheet, event.row);
    case "dismiss":
      return { ...state, [event.what]: null };
  }
}
function afterRead(state: PaneState, log: ReadLog, quiet: boolean): PaneState {
  const next = { ...state, log, noLog: "", remote: null, waiting: false, savedPlace: log.place };
  return withNews(state, next, quiet);
}
function afterRegister(state: PaneState, found: PaneState["register"], quiet: boolean): PaneState {
  const judged: Judged = found === null ? "log" : state.register === null ? "register" : state.judged;
  const next = { ...state, register: found, judged, filtered: found === null ? [] : state.filtered, waiting: false };
  return withNews(state, next, quiet);
}
/** Says new counts once, and lets go of an item card whose row is gone. */
function withNews(before: PaneState, after: PaneState, quiet: boolean): PaneState {
  const shown = shownLog(after);
  const moved = before.card !== null && shownLog(before)?.place.sheet !== shown?.place.sheet;
  const gone = after.card !== null && (moved || !shown?.report.items.some((item) => item.row === after.card?.row));
  const kept = gone ? { ...after, card: null } : after;
  if (shown === null) return kept;
  const rows = newRows(after);
  const news = rows.length > newRows(before).length ? `${tellNewRows(rows)}. ` : "";
  const was = shownLog(before);
  const said = showCounts(shown.report);
  if (was !== null && showCounts(was.report) === said) return news === "" ? kept : { ...kept, announcement: news.trim() };
  return { ...kept, announcement: `${news}${quiet ? "The counts changed" : count(shown.report.items.length, "item")}: ${said}.` };
}
/** The list that is open, and an open card, follow the row that is selected in the sheet; where no list is open, both stand on it. */
function afterSelection(state: PaneState, sheet: string, row: number): PaneState {
  const shown = shownLog(state);
  if (shown?.place.sheet !== sheet) return state;
  const inside = rowInside(shown.place, row);
  const { place, activeRows } = state;
  const open: readonly ListName[] = place === "items" || place === "due" ? [place] : ["items", "due"];
  if (inside === null || open.every((list) => activeRows[list] === inside) || !shown.report.items.some((item) => item.row === inside))
    return state;
  return {
    ...state,
    activeRows: { ...activeRows, ...Object.fromEntries(open.map((list) => [list, inside])) },
    card: state.card === null ? null : { ...state.card, row: inside },
  };
}
function withChoice(choices: HeadingChoices, heading: string, field: FieldId | null | "as found"): HeadingChoices {
  const key = heading.toLowerCase();
  if (field !== "as found") return { ...choices, [key]: field };
  return Object.fromEntries(Object.entries(choices).filter(([name]) => name !== key));
}
function toggled<T>(list: readonly T[], entry: T): readonly T[] {
  return list.includes(entry) ? list.filter((one) => one !== entry) : [...list, entry];
}
