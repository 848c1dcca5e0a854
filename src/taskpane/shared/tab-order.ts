/**
 * Tab from where the Tab key itself does not stop: a heading that was given the focus, or nothing, because what held the
 * focus is gone. office.js takes that for the end of the pane and hands the focus to the sheet; here Tab goes on inside.
 */
const STOPS = [
  "button:not([disabled])",
  "input:not([disabled])",
  "select:not([disabled])",
  "textarea:not([disabled])",
  "a[href]",
  "summary",
  "[tabindex]",
  "[contenteditable]",
]
  .map((stop) => `${stop}:not([tabindex="-1"]):not([data-tabster-dummy])`)
  .join();
/** Starts to watch the keyboard; the returned function ends it. */
export function keepTabInside(page: Document): () => void {
  let last: Element | null = null;
  const onFocus = (event: FocusEvent): void => {
    if (event.target instanceof Element) last = event.target;
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== "Tab" || event.ctrlKey || event.altKey || event.metaKey) return;
    const from = event.target;
    if (!(from instanceof Element) || from.matches(`${STOPS}, [data-tabster-dummy]`)) return;
    const gone = from === page.body && last?.isConnected === false;
    const start = (gone ? page.getElementById("place") : null) ?? from;
    const side = event.shiftKey ? Node.DOCUMENT_POSITION_PRECEDING : Node.DOCUMENT_POSITION_FOLLOWING;
    const stops = [...page.querySelectorAll<HTMLElement>(STOPS)].filter((stop) => (start.compareDocumentPosition(stop) & side) !== 0);
    const next = event.shiftKey ? stops.at(-1) : stops[0];
    if (next === undefined) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    next.focus();
  };
  // office.js answers Escape too and moves the focus to the top; an Escape that was answered here stays here.
  const onEscape = (event: KeyboardEvent): void => {
    if (event.key === "Escape" && event.defaultPrevented) event.stopPropagation();
  };
  page.body.addEventListener("keydown", onEscape);
  page.addEventListener("focusin", onFocus);
  page.defaultView?.addEventListener("keydown", onKeyDown, true);
  return () => {
    page.body.removeEventListener("keydown", onEscape);
    page.removeEventListener("focusin", onFocus);
    page.defaultView?.removeEventListener("keydown", onKeyDown, true);
  };
}
