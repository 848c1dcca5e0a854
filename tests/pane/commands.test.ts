/** The ribbon's buttons, with a stand-in for the few Office calls they make. */
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createBell, PATIENCE_MS, type Bell } from "../../src/taskpane/ribbon/bell";
import { connectRibbon } from "../../src/taskpane/ribbon/commands";

type Button = (event: { completed: () => void }) => Promise<void>;

let bell: Bell;
let buttons: Map<string, Button>;
const showAsTaskpane = vi.fn(() => Promise.resolve());
const completed = vi.fn();

beforeEach(() => {
  buttons = new Map();
  bell = createBell();
  vi.clearAllMocks();
  vi.stubGlobal("Office", {
    actions: { associate: (name: string, button: Button) => buttons.set(name, button) },
    addin: { showAsTaskpane },
  });
  connectRibbon(bell);
});

afterEach(() => vi.unstubAllGlobals());

const press = async (name: string): Promise<void> => buttons.get(name)?.({ completed });

describe("the ribbon", () => {
  it("has the two buttons that the manifest names", () => {
    expect([...buttons.keys()]).toEqual(["ShowPane", "RebuildRegister"]);
  });

  it("shows the pane", async () => {
    await press("ShowPane");
    expect(showAsTaskpane).toHaveBeenCalledOnce();
    expect(completed).toHaveBeenCalledOnce();
  });

  it("rebuilds the register behind a closed pane, and brings the pane forward only when that fails", async () => {
    const forget = bell.answer(() => Promise.resolve(true));
    await press("RebuildRegister");
    expect(showAsTaskpane).not.toHaveBeenCalled();
    forget();
    bell.answer(() => Promise.resolve(false));
    await press("RebuildRegister");
    expect(showAsTaskpane).toHaveBeenCalledOnce();
    expect(completed).toHaveBeenCalledTimes(2);
  });

  it("rebuilds on the first press, while the pane still loads", async () => {
    vi.useFakeTimers();
    const work = vi.fn(() => Promise.resolve(true));
    const pressed = press("RebuildRegister");
    await vi.advanceTimersByTimeAsync(PATIENCE_MS - 1);
    bell.answer(work);
    await pressed;
    expect(work).toHaveBeenCalledOnce();
    expect(showAsTaskpane).not.toHaveBeenCalled();
    vi.useRealTimers();
  });

  it("shows the pane when nobody answers in time", async () => {
    vi.useFakeTimers();
    const pressed = press("RebuildRegister");
    await vi.advanceTimersByTimeAsync(PATIENCE_MS);
    await pressed;
    expect(showAsTaskpane).toHaveBeenCalledOnce();
    vi.useRealTimers();
  });

  it("lets Excel go on even when the pane cannot be shown", async () => {
    showAsTaskpane.mockRejectedValueOnce(new Error("no pane"));
    await expect(press("ShowPane")).rejects.toThrow("no pane");
    expect(completed).toHaveBeenCalledOnce();
  });
});
