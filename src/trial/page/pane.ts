/** The pane: shown and hidden, loaded anew for each workbook, watched while it starts. */
import type { Host } from "../host/index";
import { hostPane } from "../host/web";
import type { Pane } from "../host/web";
import { element } from "./elements";

const ADDRESS = "/addin/taskpane.html";
const PATIENCE = 20_000;

export class PaneFrame {
  private pane: Pane | undefined;
  private host: Host | undefined;

  constructor() {
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
    this.pane = hostPane(frame, host, { paneUrl: ADDRESS });
    const deadline = Date.now() + PATIENCE;
    while (frame.isConnected && Date.now() < deadline) {
      if ((frame.contentDocument?.getElementById("pane")?.childElementCount ?? 0) > 0) return true;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    return !frame.isConnected;
  }

  /** Presses a ribbon button of the add-in; a command that wants to be seen brings the pane forward. */
  async press(name: string): Promise<void> {
    await this.host?.pressButton(name);
    if (this.host?.runtime.visibility === "Visible") this.show(true);
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
