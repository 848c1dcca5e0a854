/** The pane: shown and hidden, loaded anew for each workbook, watched while it starts. */
import { hostPane, type Pane } from "../carriers/web";
import type { Host } from "../host/host";
import { element } from "./elements";

const ADDRESS = "/addin/taskpane.html";
const PATIENCE = 20_000;
/** What office.js tells when the Tab key leaves the pane by its end or its beginning, or Ctrl+F6 leaves it. */
const LEAVES_ON: readonly unknown[] = [13, 5];
const LEAVES_BACK: readonly unknown[] = [14, 6];
const CONTROL = ["button", "input", "select", "textarea", "a[href]"].map((tag) => `${tag}:not([disabled]):not([tabindex="-1"])`).join();
export class PaneFrame {
  private pane: Pane | undefined;
  private host: Host | undefined;
  private dark = false;
  /** Takes the focus when the keyboard leaves the pane, as the spreadsheet program does. */
  private readonly leave: (way: { readonly back: boolean; readonly by: "Tab" | "F6" }) => void;

  constructor(leave: PaneFrame["leave"]) {
    this.leave = leave;
    element("hide-pane", HTMLButtonElement).addEventListener("click", () => {
      this.show(false);
      element("show-pane", HTMLButtonElement).focus();
    });
  }

  /** Loads the pane for a workbook; resolves to false when it has not come up in time. */
  async load(host: Host): Promise<boolean> {
    this.pane?.close();
    forgetSettings();
    const frame = document.createElement("iframe");
    frame.title = "Gear Verdicts pane";
    element("pane-frame", HTMLDivElement).replaceChildren(frame);
    this.host = host;
    this.pane = hostPane(frame, host, {
      paneUrl: ADDRESS,
      onNotify: (told) => {
        this.noticeLeaving(told);
      },
    });
    const deadline = Date.now() + PATIENCE;
    while (frame.isConnected && Date.now() < deadline) {
      if ((frame.contentDocument?.getElementById("pane")?.childElementCount ?? 0) > 0) {
        this.shade(this.dark);
        // Keys that are pressed in the pane do not reach the page.
        frame.contentWindow?.addEventListener("keydown", (event) => {
          if (event.key !== "F6" || event.ctrlKey || event.metaKey) return;
          event.preventDefault();
          this.leave({ back: event.shiftKey, by: "F6" });
        });
        return true;
      }
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    return !frame.isConnected;
  }

  /** Presses a ribbon button of the add-in; a command that wants to be seen brings the pane forward. */
  async press(name: string): Promise<void> {
    await this.host?.pressButton(name);
    if (this.host?.runtime.visibility === "Visible") this.show(true);
  }

  /** Tells the pane the page's shade, now and whenever it is loaded anew. */
  shade(dark: boolean): void {
    this.dark = dark;
    const frame = element("pane-frame", HTMLDivElement).querySelector("iframe");
    frame?.contentWindow?.postMessage({ shade: dark ? "dark" : "light" }, window.location.origin);
  }

  /** Puts the focus on the pane's first control, from which Tab goes on. */
  focus(): void {
    const frame = element("pane-frame", HTMLDivElement).querySelector("iframe");
    frame?.focus();
    frame?.contentDocument?.querySelector<HTMLElement>(CONTROL)?.focus();
  }

  private noticeLeaving(told: unknown): void {
    const action: unknown = typeof told === "object" && told !== null ? (told as Record<string, unknown>)["1"] : undefined;
    if (LEAVES_ON.includes(action)) this.leave({ back: false, by: action === 5 ? "F6" : "Tab" });
    else if (LEAVES_BACK.includes(action)) this.leave({ back: true, by: action === 6 ? "F6" : "Tab" });
  }

  show(on: boolean): void {
    document.body.classList.toggle("pane-closed", !on);
    if (this.host) this.host.runtime.visibility = on ? "Visible" : "Background";
  }
}
/** office.js keeps a workbook's settings for the browser tab; the next workbook must not be taken for the one before. */
function forgetSettings(): void {
  for (const key of Object.keys(sessionStorage)) if (key.endsWith("CachedSessionSettings")) sessionStorage.removeItem(key);
}
