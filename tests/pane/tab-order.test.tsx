/** Tab where office.js would hand the focus to the sheet. */
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { keepTabInside } from "../../src/taskpane/shared/tab-order";

let end: () => void = () => undefined;

beforeEach(() => {
  document.body.innerHTML = `<button id="top">top</button><div id="place"><i tabindex="0" data-tabster-dummy></i><h2 id="title" tabindex="-1">HK-1</h2><button id="first">first</button><button id="second">second</button></div>`;
  end = keepTabInside(document);
});
afterEach(() => {
  end();
});

const focused = (): string => document.activeElement?.id ?? "";

function tab(shiftKey = false): boolean {
  return (document.activeElement ?? document.body).dispatchEvent(
    new KeyboardEvent("keydown", { key: "Tab", shiftKey, bubbles: true, cancelable: true }),
  );
}

describe("the Tab key", () => {
  it("goes on from a heading that holds the focus, both ways", () => {
    document.getElementById("title")?.focus();
    expect(tab()).toBe(false);
    expect(focused()).toBe("first");
    document.getElementById("title")?.focus();
    tab(true);
    expect(focused()).toBe("top");
  });

  it("goes to the open place when what held the focus is gone", () => {
    document.getElementById("second")?.focus();
    document.getElementById("second")?.remove();
    expect(focused()).toBe("");
    tab();
    expect(focused()).toBe("first");
  });

  it("begins at the top when nothing held the focus yet", () => {
    tab();
    expect(focused()).toBe("top");
  });

  it("is left alone on a control", () => {
    document.getElementById("first")?.focus();
    expect(tab()).toBe(true);
    expect(focused()).toBe("first");
  });
});

describe("Escape", () => {
  it("stays in the pane when it was answered there, and reaches office.js when not", () => {
    let heard = 0;
    const listen = (): void => {
      heard += 1;
    };
    document.addEventListener("keydown", listen);
    const first = document.getElementById("first")!;
    const answer = (event: Event): void => {
      event.preventDefault();
    };
    const press = (): void => {
      first.dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true, cancelable: true }));
    };
    press();
    expect(heard).toBe(1);
    first.addEventListener("keydown", answer);
    press();
    expect(heard).toBe(1);
    document.removeEventListener("keydown", listen);
  });
});
