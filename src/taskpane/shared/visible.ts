/** Tells when the pane is closed and opened. Its runtime goes on behind it, because the worksheet functions live there too. */
export function onShown(tell: (shown: boolean) => void): () => void {
  let end: (() => unknown) | null = null;
  let ended = false;
  // Older programs have no such event: there the pane goes on as if it were open.
  const addin = typeof Office === "undefined" ? undefined : (Office as { addin?: Office.Addin }).addin;
  const listening = addin?.onVisibilityModeChanged(({ visibilityMode }) => {
    tell(visibilityMode === Office.VisibilityMode.taskpane);
  });
  listening?.then(
    (remove) => {
      if (ended) void remove();
      else end = remove;
    },
    () => undefined,
  );
  return () => {
    ended = true;
    void end?.();
  };
}
