/** Holds the pane's state beside React and runs it for one workbook port. */
import { useEffect, useMemo, useSyncExternalStore } from "react";
import type { WorkbookPort } from "../../excel/port";
import { serialOfToday } from "../shared/days";
import { onShown } from "../shared/visible";
import { createIntentions, type Intentions } from "./actions";
import { reduce } from "./reduce";
import { firstState, type PaneEvent, type PaneState } from "./state";

export interface PaneStore {
  readonly get: () => PaneState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly intentions: Intentions;
}
export function createPane(port: WorkbookPort, clock: () => Date = () => new Date()): PaneStore {
  const today = (): number => serialOfToday(clock());
  let state = firstState(today());
  const listeners = new Set<() => void>();
  const get = (): PaneState => state;
  const tell = (event: PaneEvent): void => {
    state = reduce(state, event);
    for (const listener of listeners) listener();
  };
  const subscribe = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  return { get, subscribe, intentions: createIntentions(port, { get, tell, today }) };
}
export function usePane(port: WorkbookPort): { state: PaneState; intentions: Intentions } {
  const store = useMemo(() => createPane(port), [port]);
  const state = useSyncExternalStore(store.subscribe, store.get);
  useEffect(() => {
    void store.intentions.start();
    const stop = onShown(store.intentions.setShown);
    return () => {
      stop();
      void store.intentions.end();
    };
  }, [store]);
  return { state, intentions: store.intentions };
}
