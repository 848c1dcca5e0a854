/** Which place stands in the middle of the pane. */
import { ItemCard } from "./card/ItemCard";
import { DueView } from "./due/DueView";
import type { Intentions } from "./intentions";
import { ItemsView } from "./items/ItemsView";
import { LiftView } from "./lift/LiftView";
import { LogView } from "./log/LogView";
import { SourcesView } from "./sources/SourcesView";
import { Start } from "./Start";
import { shownLog, type PaneState } from "./state";

export function OpenPlace({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const shown = shownLog(state);
  if (state.place === "sources") return <SourcesView basis={state.basis} />;
  if (state.place === "log") return <LogView state={state} intentions={intentions} />;
  if (shown === null) return <Start state={state} intentions={intentions} />;
  if (state.place === "lift") return <LiftView state={state} shown={shown} intentions={intentions} />;
  const card = state.card;
  const item = card === null ? undefined : shown.report.items.find((one) => one.row === card.row);
  if (card !== null && item !== undefined) {
    return <ItemCard item={item} report={shown.report} onBack={() => { intentions.tell({ kind: "back" }); }} onShow={() => void intentions.show(item.row)} />;
  }
  return state.place === "items" ? <ItemsView state={state} shown={shown} intentions={intentions} /> : <DueView state={state} shown={shown} intentions={intentions} />;
}
