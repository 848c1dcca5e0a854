/** Which place stands in the middle of the pane. */
import { DueView } from "../due/DueView";
import { ItemsView } from "../items/ItemsView";
import { LogView } from "../log/LogView";
import { Start } from "../log/NoLog";
import { later } from "../shared/later";
import type { Intentions } from "../state/actions";
import { type PaneState, shownLog } from "../state/state";

const card = later(async () => (await import(/* webpackChunkName: "card" */ "../card/ItemCard")).ItemCard);
const lift = later(async () => (await import(/* webpackChunkName: "lift" */ "../lift/LiftView")).LiftView);
const rounds = later(async () => (await import(/* webpackChunkName: "rounds" */ "../rounds/RoundsView")).RoundsView);
const history = later(async () => (await import(/* webpackChunkName: "rounds" */ "../rounds/ItemHistoryPart")).ItemHistoryPart);
const sources = later(async () => (await import(/* webpackChunkName: "sources" */ "../sources/SourcesView")).SourcesView);
/** Fetches what the first load leaves out, so that every place opens at once. */
export async function fetchPlaces(): Promise<void> {
  await Promise.all([card.fetch(), lift.fetch(), rounds.fetch(), history.fetch(), sources.fetch()]);
}
export function OpenPlace({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const shown = shownLog(state);
  if (state.place === "sources") return <sources.View basis={state.basis} />;
  if (state.place === "log") return <LogView state={state} intentions={intentions} />;
  if (shown === null) return <Start state={state} intentions={intentions} />;
  if (state.place === "rounds") return <rounds.View state={state} intentions={intentions} />;
  if (state.place === "lift") return <lift.View state={state} shown={shown} intentions={intentions} />;
  const opened = state.card;
  const item = opened === null ? undefined : shown.report.items.find((one) => one.row === opened.row);
  if (opened !== null && item !== undefined) {
    return (
      <>
        <card.View
          item={item}
          report={shown.report}
          onBack={() => {
            intentions.tell({ kind: "back" });
          }}
          onShow={(column) => void intentions.show(item.row, column)}
        />
        {state.register !== null && item.id !== "" && (
          <history.View key={item.id} item={item} asOf={shown.report.asOf} free={state.work.kind === "idle"} intentions={intentions} />
        )}
      </>
    );
  }
  return state.place === "items" ? (
    <ItemsView state={state} shown={shown} intentions={intentions} />
  ) : (
    <DueView state={state} shown={shown} intentions={intentions} />
  );
}
