/** The trial page as a person uses it, in a real browser: open a sample, type, build, filter. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { chromium, type Browser, type BrowserContextOptions, type FrameLocator, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../tools/browser.mjs";
import { serve } from "../../tools/serve.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Fault {
  readonly id: string;
  readonly impact: string;
  readonly nodes: readonly { readonly html: string }[];
}

let browser: Browser;
let server: Awaited<ReturnType<typeof serve>>;
const errors: string[] = [];
const elsewhere = new Set<string>();

beforeAll(async () => {
  server = await serve({});
  browser = await chromium.launch({
    executablePath: process.env["GEAR_BROWSER"] ?? (await findBrowser()),
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      `--ignore-certificate-errors-spki-list=${server.spki}`,
    ],
  });
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

/**
 * The spreadsheet's library places its pop-ups by animation frames (rxjs 7.8, AsyncAction.execute) and on a busy machine
 * drops one that has begun. Nothing of ours uses that scheduler.
 */
const DROPPED_FRAME = "executing a cancelled action";

async function open(options: BrowserContextOptions = {}): Promise<{ page: Page; pane: FrameLocator }> {
  const context = await browser.newContext({
    viewport: { width: 1366, height: 768 },
    ignoreHTTPSErrors: true,
    reducedMotion: "reduce",
    ...options,
  });
  const page = await context.newPage();
  page.on("pageerror", (fault) => {
    if (fault.message !== DROPPED_FRAME) errors.push(fault.message);
  });
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  page.on("request", (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (!["data:", "blob:"].includes(protocol) && hostname !== "localhost") elsewhere.add(request.url());
  });
  await page.goto(server.url);
  await page.evaluate(() => window.trial?.ready);
  const pane = page.frameLocator("iframe");
  await pane.getByRole("button", { name: /build register/i }).waitFor();
  return { page, pane };
}

/** Value of a register cell by id and heading, from the workbook behind the page. */
async function cell(page: Page, id: string, heading: string): Promise<unknown> {
  return page.evaluate(
    ({ id, heading }) => {
      const sheet = window.trial!.book.sheet("Gear register")!;
      const row = [...sheet.rows.keys()].find((r) => String(sheet.cell(r, 1)?.value) === id)!;
      const column = Array.from({ length: 80 }, (_, c) => c).find((c) => sheet.cell(3, c)?.value === heading)!;
      return sheet.cell(row, column)?.value;
    },
    { id, heading },
  );
}

async function seriousFaults(target: Page | Awaited<ReturnType<Page["frames"]>>[number]): Promise<string[]> {
  await target.evaluate(AXE);
  const faults = await target.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run: (root: unknown, options: unknown) => Promise<{ violations: Fault[] }> } }).axe;
    // Focus sentinels of the component library are hidden on purpose and pass the focus on at once.
    return (await axe.run({ include: [document], exclude: [["[data-tabster-dummy]"]] }, { resultTypes: ["violations"], iframes: false }))
      .violations;
  });
  return faults
    .filter((f) => f.impact === "serious" || f.impact === "critical")
    .map((f) => `${f.id}: ${f.nodes[0]?.html.slice(0, 160) ?? ""}`);
}

describe("the trial page", () => {
  it("asks before a changed workbook gives way to another, by keyboard and for a screen reader", { timeout: 120_000 }, async () => {
    const { page } = await open();
    const sample = page.locator("#sample");
    const asked = page.getByRole("dialog", { name: "Replace this workbook?" });
    const title = (): Promise<string | undefined> => page.evaluate(() => window.trial?.book.fileName);
    // Nothing was changed: nothing is asked.
    await sample.selectOption({ label: "Other yard" });
    await page.waitForFunction(() => window.trial?.book.fileName === "other-yard.xlsx");
    await page.evaluate(() => window.trial?.ready);
    expect(await asked.isVisible()).toBe(false);
    const log = await page.evaluate(() => window.trial!.book.sheets[0]!.name);
    await page.evaluate((sheet) => window.trial!.host.type(sheet, "Z99", "noted"), log);

    await sample.selectOption({ label: "Tidy register" });
    await asked.waitFor();
    expect(await asked.getByText("other-yard.xlsx was changed and is not saved.").isVisible()).toBe(true);
    // The choice that changes nothing has the focus, and Esc is that choice.
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Stay here");
    expect(await seriousFaults(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await asked.waitFor({ state: "hidden" });
    expect([await title(), await sample.evaluate((list: HTMLSelectElement) => list.value)]).toEqual(["other-yard.xlsx", "other-yard.xlsx"]);
    expect(await page.evaluate((sheet) => window.trial!.book.sheet(sheet)!.cell(98, 25)?.value, log)).toBe("noted");

    await sample.selectOption({ label: "Tidy register" });
    await asked.waitFor();
    const saved = page.waitForEvent("download");
    await asked.getByRole("button", { name: "Save it, then open" }).press("Enter");
    expect((await saved).suggestedFilename()).toBe("other-yard.xlsx");
    await page.waitForFunction(() => window.trial?.book.fileName === "tidy-register.xlsx");
    await page.evaluate(() => window.trial?.ready);
    // What was opened is unchanged again.
    await sample.selectOption({ label: "Other yard" });
    await page.waitForFunction(() => window.trial?.book.fileName === "other-yard.xlsx");
    expect(await asked.isVisible()).toBe(false);
    await page.context().close();
  });

  it("turns the tidy log into a register, follows a typed reading, filters to removals", { timeout: 180_000 }, async () => {
    const { page, pane } = await open();
    await page.locator("#sample").selectOption({ label: "Tidy register" });
    await pane.getByText("Gear log").first().waitFor();
    await pane.getByText("90 items").first().waitFor();

    await pane.getByRole("button", { name: "Build register" }).click();
    await pane.getByRole("heading", { name: "Register written" }).waitFor({ timeout: 60_000 });
    await page.waitForFunction(() => {
      const sheet = window.trial!.book.sheet("Gear register");
      return sheet !== undefined && [...sheet.rows.values()].some((cells) => [...cells.values()].some((c) => c.value === "KEEP"));
    });

    // A hook whose throat is inside its limit: type a throat as wide as a barn door into its cell, as a person would.
    const target = await page.evaluate(() => {
      const sheet = window.trial!.book.sheet("Gear register")!;
      const column = (h: string): number => Array.from({ length: 80 }, (_, c) => c).find((c) => sheet.cell(3, c)?.value === h)!;
      const row =
        [...sheet.rows.keys()].find(
          (r) => r > 3 && sheet.cell(r, column("Gear"))?.value === "hook" && sheet.cell(r, column("Verdict"))?.value === "KEEP",
        ) ??
        [...sheet.rows.keys()].find(
          (r) => r > 3 && /hook/i.test(String(sheet.cell(r, column("Gear"))?.value)) && sheet.cell(r, column("Verdict"))?.value === "KEEP",
        )!;
      return { row, column: column("Throat now"), id: String(sheet.cell(row, 1)?.value) };
    });
    expect(await cell(page, target.id, "Verdict")).toBe("KEEP");
    const letter = (n: number): string =>
      n < 26 ? String.fromCharCode(65 + n) : String.fromCharCode(64 + Math.floor(n / 26)) + String.fromCharCode(65 + (n % 26));
    await goTo(page, `${letter(target.column)}${String(target.row + 1)}`);
    await page.keyboard.type("40 in");
    await page.keyboard.press("Enter");
    await expect.poll(() => cell(page, target.id, "Verdict"), { timeout: 20_000 }).not.toBe("KEEP");
    expect(await cell(page, target.id, "Throat now")).toBe("40 in");

    // Filter to removals from the pane.
    await pane.getByRole("button", { name: "See the items" }).click();
    await pane
      .getByRole("button", { name: /REMOVE/ })
      .first()
      .click();
    await pane.getByRole("button", { name: "Show only these in the register" }).click();
    await expect
      .poll(
        () =>
          page.evaluate(() => {
            const sheet = window.trial!.book.sheet("Gear register")!;
            const verdict = Array.from({ length: 80 }, (_, c) => c).find((c) => sheet.cell(3, c)?.value === "Verdict")!;
            const items = [...sheet.rows.keys()].filter((r) => r > 3 && sheet.cell(r, verdict)?.value);
            return (
              items
                .filter((r) => !sheet.hiddenRows.has(r))
                .map((r) => sheet.cell(r, verdict)?.value)
                .join() || "none"
            );
          }),
        { timeout: 20_000 },
      )
      .toMatch(/^REMOVE(,REMOVE)*$/);
    await page.context().close();
  });

  it("judges a lift of the tidy log's gear, refuses flat legs, and writes it on its sheet", { timeout: 180_000 }, async () => {
    const { page, pane } = await open();
    // A day on which both items are inside their inspection interval.
    await page.clock.setFixedTime(new Date("2026-11-25T12:00:00"));
    const [SLING, SHACKLE] = ["CS-609", "SH-208"];
    await page.locator("#sample").selectOption({ label: "Tidy register" });
    await pane.getByText("90 items").first().waitFor();
    await pane.getByRole("button", { name: "Log", exact: true }).click();
    await pane.getByRole("menuitemradio", { name: "Lift" }).click();
    const pick = async (id: string): Promise<void> => {
      await pane.getByRole("searchbox", { name: "Search the gear" }).fill(id);
      await pane.getByRole("checkbox", { name: new RegExp(`^${id} `) }).check();
    };
    await pick(SLING);
    await pick(SHACKLE);
    await pane.getByLabel("Load", { exact: true }).fill("100");
    await pane.getByLabel("Unit of the load").selectOption("kg");
    await pane.getByLabel("Hitch").selectOption("vertical");
    await pane.getByLabel("Legs", { exact: true }).selectOption("1");
    await pane.getByLabel("Angle, degrees").fill("25");
    const outcome = pane.getByRole("region", { name: "Can it carry the load?" });
    await outcome.getByText("Not judged: do not lift on this.").waitFor();
    expect(await outcome.getByRole("list", { name: "What is to be put right" }).textContent()).toContain("less than 30 degrees");
    await pane.getByLabel("Angle, degrees").fill("60");
    await expect.poll(() => outcome.getByRole("status").textContent()).toMatch(/^CARRIES\./);

    await pane.getByRole("button", { name: "Put this on a sheet" }).click();
    await pane.getByText("Written on sheet Gear lift, with live formulas.").waitFor({ timeout: 60_000 });
    const lifted = (): Promise<unknown[]> =>
      page.evaluate(() => {
        const sheet = window.trial!.book.sheet("Gear lift");
        const at = (row: number, column: number): unknown => sheet?.cell(row - 1, column)?.value;
        return [
          at(7, 1),
          at(7, 2),
          at(8, 1),
          at(9, 1),
          at(10, 1),
          at(18, 1),
          at(25, 0),
          at(25, 2),
          at(25, 3),
          at(26, 0),
          at(26, 2),
          at(26, 3),
        ];
      });
    await expect
      .poll(lifted, { timeout: 20_000 })
      .toEqual([100, "kg", 1, 60, "vertical", "CARRIES", SLING, "in a leg", "CARRIES", SHACKLE, "on top", "CARRIES"]);
    // 100 kg over the sine of 60 degrees.
    expect(await page.evaluate(() => window.trial!.book.sheet("Gear lift")?.cell(16, 1)?.value)).toBeCloseTo(115.4701, 3);
    await page.context().close();
  });

  it(
    "takes a round through: what is due, readings, post, a removal, its report, its history, a release refused without a name",
    { timeout: 180_000 },
    async () => {
      const { page, pane } = await open();
      await page.clock.setFixedTime(new Date("2026-11-25T12:00:00"));
      await page.locator("#sample").selectOption({ label: "Tidy register" });
      await pane.getByText("90 items").first().waitFor();
      await pane.getByRole("button", { name: "Build register" }).click();
      await pane.getByRole("heading", { name: "Register written" }).waitFor({ timeout: 60_000 });
      const go = async (from: string, to: RegExp): Promise<void> => {
        await pane.getByRole("button", { name: from, exact: true }).click();
        await pane.getByRole("menuitemradio", { name: to }).click();
      };
      await go("Log", /^Rounds/);
      await pane.getByRole("button", { name: "Make round sheet" }).click();
      await pane.getByText(/is made:.*Fill Now/).waitFor({ timeout: 60_000 });
      // Two items as a person fills them: the first as it was, the second cracked.
      const ids = await page.evaluate(async () => {
        const { book, host } = window.trial!;
        const sheet = book.sheet("Round 1")!;
        const text = (row: number, column: number): string => String(sheet.cell(row, column)?.value ?? "");
        await host.type("Round 1", "C3", "Inspector two");
        await host.type("Round 1", "F3", "2026-11-25");
        const seen: string[] = [];
        for (let row = 5; text(row, 0) !== ""; row += 1) {
          if (!seen.includes(text(row, 0))) seen.push(text(row, 0));
          if (seen.length > 2) break;
          if (!text(row, 10).startsWith("check")) continue;
          const cracked = seen.length === 2 && text(row, 3) === "Cracks";
          await host.type("Round 1", `H${String(row + 1)}`, cracked ? "found" : text(row, 5));
        }
        return seen.slice(0, 2);
      });
      const [kept = "", cracked = ""] = ids;
      await pane.getByRole("button", { name: "Post readings" }).click();
      await pane.getByText(/added to the history.*2 inspections dated/).waitFor({ timeout: 60_000 });
      await pane.getByText(`${cracked} REMOVE: Cracks: found.`).waitFor();
      await expect.poll(() => cell(page, cracked, "Verdict"), { timeout: 20_000 }).toBe("REMOVE");
      expect(await cell(page, kept, "Verdict")).toMatch(/^(KEEP|WATCH)$/);
      await pane.getByRole("button", { name: "Check history" }).click();
      await pane.getByText(/^Every seal fits/).waitFor({ timeout: 30_000 });
      await pane.getByRole("button", { name: "Write report" }).click();
      await pane.getByText(/Written on sheet Gear report: 2 items/).waitFor({ timeout: 30_000 });

      await go("Rounds", /^Items/);
      await pane.getByRole("searchbox").first().fill(cracked);
      await pane
        .getByRole("option", { name: new RegExp(cracked) })
        .first()
        .click();
      await pane.getByRole("button", { name: "Look it up" }).click();
      await pane.getByText(/Recorded for 2026-11-25 by Inspector two/).waitFor({ timeout: 30_000 });
      await pane.getByRole("heading", { name: "Tag out" }).click();
      await pane.getByLabel("Tagged out by").fill("Clerk three");
      await pane.getByLabel("Reason").fill("cracked");
      await pane.getByRole("button", { name: "Tag out" }).click();
      await pane.getByRole("heading", { name: "Release" }).click({ timeout: 60_000 });
      await pane.getByLabel("What was done").fill("ground out");
      await pane.getByRole("button", { name: "Release" }).click();
      await pane.getByText(/Name the qualified person who releases it/).waitFor({ timeout: 30_000 });
      expect(await cell(page, cracked, "Released by")).toBeFalsy();
      await page.context().close();
    },
  );

  it("rebuilds from the ribbon button and keeps what was typed", { timeout: 120_000 }, async () => {
    const { page, pane } = await open();
    await page.locator("#sample").selectOption({ label: "Shared round" });
    await pane.getByText("45 items").first().waitFor();
    await pane.getByRole("button", { name: "Build register" }).click();
    await pane.getByRole("heading", { name: "Register written" }).waitFor({ timeout: 60_000 });
    const id = await page.evaluate(() => {
      const sheet = window.trial!.book.sheet("Gear register")!;
      const remarks = Array.from({ length: 80 }, (_, c) => c).find((c) => sheet.cell(3, c)?.value === "Remarks")!;
      sheet.at(4, remarks).value = "seen on the bench";
      return String(sheet.cell(4, 1)?.value);
    });
    await page.locator("#rebuild").click();
    await pane.getByText(/45 items, 0 new, 45 kept/).waitFor({ timeout: 60_000 });
    expect(await cell(page, id, "Remarks")).toBe("seen on the bench");
    await page.context().close();
  });

  it(
    "takes the list of another yard in two steps: its columns and its unit, each with all questions in sight",
    { timeout: 180_000 },
    async () => {
      const { page, pane } = await open();
      await page.locator("#sample").selectOption({ label: "Other yard" });
      const found = pane.getByRole("region", { name: "Log found" }).getByText(/^60 items: /);
      await found.waitFor();
      const counts = (): Promise<string | null> => found.textContent();
      expect(await counts()).not.toMatch(/KEEP|WATCH/);
      await pane.getByRole("heading", { name: "3 columns need an answer" }).waitFor();
      // One step: each column is answered on the same screen.
      const column = (name: string): ReturnType<typeof pane.getByRole> => pane.getByRole("group", { name, exact: true });
      for (const [heading, reading] of [
        ["Examiner", "Inspected by"],
        ["Bent / drawn out", "Bent or stretched"],
      ] as const) {
        await column(heading).getByRole("combobox").selectOption({ label: reading });
        await column(heading)
          .getByRole("button", { name: `Read as ${reading}` })
          .click();
        await column(heading).waitFor({ state: "detached" });
      }
      await column("Rings when struck").getByRole("button", { name: "Not judged" }).click();
      await pane.getByRole("heading", { name: "1 column needs an answer" }).waitFor({ state: "detached" });
      // The other step.
      await pane.getByRole("button", { name: "Millimetres" }).click();
      await pane.getByText("Sizes without a unit are read in mm.").waitFor();
      expect(await counts()).toBe("60 items: 22 REMOVE, 4 NO VERDICT, 1 WATCH, 33 KEEP.");
      const lacks = pane.getByRole("region", { name: "What this log lacks for KEEP" });
      expect(await lacks.textContent()).toContain("Next: press Build register.");
      await pane.getByRole("button", { name: "Build register" }).click();
      await pane.getByRole("heading", { name: "Register written" }).waitFor({ timeout: 60_000 });
      await expect.poll(() => cell(page, "K1", "Verdict"), { timeout: 20_000 }).toBe("KEEP");
      expect(await cell(page, "K1", "As-new from")).toBe("Gear types, row 3 (Hook 20): maker's catalogue, page 14");
      await page.context().close();
    },
  );

  it("says in one sentence that a file is no workbook, and keeps the page as it was", { timeout: 60_000 }, async () => {
    const { page } = await open();
    const before = await page.evaluate(() => window.trial!.book.sheets.map((s) => s.name).join());
    await page
      .locator("input[type=file]")
      .setInputFiles({ name: "notes.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from("these are my notes") });
    await page
      .getByText(/not an \.xlsx workbook/i)
      .first()
      .waitFor();
    expect(await page.evaluate(() => window.trial!.book.sheets.map((s) => s.name).join())).toBe(before);
    await page.context().close();
  });

  it("has no serious accessibility finding on the page or in the pane", { timeout: 120_000 }, async () => {
    const { page, pane } = await open();
    const frame = page.frames().find((f) => f.url().includes("taskpane"))!;
    // The build button has just become enabled; its colours are measured when they have settled.
    await expect.poll(() => frame.evaluate(() => document.getAnimations().length)).toBe(0);
    expect(await seriousFaults(frame)).toEqual([]);
    await pane.locator("body").focus();
    // The sheet itself is drawn by its library; the page around it is ours.
    expect((await seriousFaults(page)).filter((f) => !f.includes("univer"))).toEqual([]);
    await page.context().close();
  });

  it("gives the pane the page's shade, also after another workbook was opened", { timeout: 120_000 }, async () => {
    const { page, pane } = await open({ colorScheme: "light" });
    const shade = (): Promise<string> =>
      pane.locator("footer").evaluate((foot) => {
        const [red = 0, green = 0, blue = 0] = (getComputedStyle(foot).backgroundColor.match(/\d+/g) ?? []).map(Number);
        return red + green + blue < 384 ? "dark" : "light";
      });
    expect(await shade()).toBe("light");
    await page.locator("#shade").click();
    await expect.poll(shade, { timeout: 10_000 }).toBe("dark");
    await page.locator("#sample").selectOption({ label: "Shared round" });
    await pane.getByText("45 items").first().waitFor();
    await expect.poll(shade, { timeout: 10_000 }).toBe("dark");
    await page.context().close();
  });

  it("reaches the folded headings with the Tab key, and shows a list with one scrollbar", { timeout: 120_000 }, async () => {
    const { page, pane } = await open();
    await page.locator("#sample").selectOption({ label: "Tidy register" });
    await pane.getByText("90 items").first().waitFor();
    await pane.getByRole("button", { name: "Build register" }).focus();
    const focused = (): Promise<string> => pane.locator(":focus").evaluate((one) => one.tagName + one.textContent);
    for (let presses = 0; presses < 4 && !(await focused()).startsWith("SUMMARYHeadings"); presses += 1) await page.keyboard.press("Tab");
    expect(await focused()).toMatch(/^SUMMARYHeadings/);
    await page.keyboard.press("Enter");
    await pane.getByRole("combobox", { name: "Throat now is read as" }).waitFor();

    await pane.getByRole("button", { name: /^90 items/ }).click();
    const scrolling = await pane
      .locator("#place, #place *")
      .evaluateAll((parts) =>
        parts
          .filter((part) => ["auto", "scroll"].includes(getComputedStyle(part).overflowY) && part.scrollHeight > part.clientHeight + 1)
          .map((part) => part.id),
      );
    expect(scrolling).toEqual(["place"]);
    await page.context().close();
  });

  it("shows in forced colours which filter is pressed", { timeout: 120_000 }, async () => {
    const { page, pane } = await open({ forcedColors: "active" });
    await pane.getByRole("button", { name: /items: go to the items/ }).click();
    const fill = (name: RegExp): Promise<string> =>
      pane
        .getByRole("button", { name })
        .first()
        .evaluate((button) => getComputedStyle(button).backgroundColor);
    await pane
      .getByRole("button", { name: /\d REMOVE/ })
      .first()
      .click();
    expect(await fill(/\d REMOVE/)).not.toBe(await fill(/\d KEEP/));
    await page.context().close();
  });

  it("goes from the log to a list to hand over by the keyboard alone", { timeout: 180_000 }, async () => {
    const { page, pane } = await open();
    await page.locator("#sample").selectOption({ label: "Shared round" });
    await pane.getByText("45 items").first().waitFor();
    const focused = (): Promise<string> =>
      pane.locator(":focus").evaluate((one) => one.getAttribute("aria-label") ?? one.textContent.trim());
    const tabTo = async (name: RegExp, key = "Tab"): Promise<void> => {
      for (let presses = 0; presses < 20; presses += 1) {
        if (name.test(await focused())) return;
        await page.keyboard.press(key);
      }
      throw new Error(`${String(name)} was not reached; ${await focused()} was.`);
    };
    // F6 leads from the sheet to the pane's first control.
    await pane.getByRole("button", { name: /choose the log/ }).focus();
    await tabTo(/^Build register$/);
    await page.keyboard.press("Enter");
    await pane.getByRole("heading", { name: "Register written" }).waitFor({ timeout: 60_000 });
    await tabTo(/^See the items$/);
    await page.keyboard.press("Enter");
    const list = pane.getByRole("listbox", { name: "Items, worst first" });
    await list.waitFor();
    await expect.poll(focused).toBe("Items, worst first");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await pane.getByRole("article").waitFor();
    await tabTo(/^Back$/, "Shift+Tab");
    await page.keyboard.press("Enter");
    await list.waitFor();
    await tabTo(/^Out \(\d+\)$/, "Shift+Tab");
    await page.keyboard.press("Enter");
    await pane
      .getByText(/stands on the sheet Gear out, one page wide/)
      .first()
      .waitFor();
    expect(await page.evaluate(() => String(window.trial!.book.sheet("Gear out")?.cell(0, 0)?.value))).toBe("Gear to take out of service");
    await page.context().close();
  });

  it.each([
    ["320 pixels wide", {}],
    ["at 200 % zoom", { viewport: { width: 683, height: 384 }, deviceScaleFactor: 2 }],
  ] as const)("shows its questions and its items %s without a sideways scroll", { timeout: 120_000 }, async (_, options) => {
    const { page, pane } = await open(options);
    await page.locator("#sample").selectOption({ label: "Other yard" });
    await pane.getByRole("heading", { name: "3 columns need an answer" }).waitFor();
    expect(await pane.locator("body").evaluate((body) => body.clientWidth)).toBeLessThanOrEqual(320);
    const wider = (): Promise<string[]> =>
      pane
        .locator("body, #place, #place *")
        .evaluateAll((parts) =>
          parts
            .filter(
              (part) => part.clientWidth > 0 && part.scrollWidth > part.clientWidth + 1 && getComputedStyle(part).overflowX !== "hidden",
            )
            .map((part) => `${part.tagName} ${part.textContent.slice(0, 40)}`),
        );
    expect(await wider()).toEqual([]);
    await pane.getByRole("button", { name: /^60 items/ }).click();
    await pane.getByRole("listbox").waitFor();
    expect(await wider()).toEqual([]);
    await page.context().close();
  });

  it("keeps the card on the item that was typed when Enter moves the selection on", { timeout: 120_000 }, async () => {
    const { page, pane } = await open();
    await page.locator("#sample").selectOption({ label: "Tidy register" });
    await pane.getByText("90 items").first().waitFor();
    await pane.getByRole("button", { name: /^90 items/ }).click();
    await pane.getByRole("searchbox", { name: "Search the items" }).fill("HK-104");
    await pane
      .getByRole("listbox")
      .getByRole("option", { name: /HK-104/ })
      .click();
    await pane.getByRole("article", { name: "HK-104" }).waitFor();
    // Its place; HK-105 stands in the row below.
    await goTo(page, "H5");
    await page.keyboard.type("Boat hall");
    await page.keyboard.press("Enter");
    await pane.getByRole("article", { name: "HK-104" }).getByText("Eye hook, Boat hall").waitFor({ timeout: 20_000 });
    await page.context().close();
  });

  it("raised no error and asked nothing of another machine", () => {
    expect(errors).toEqual([]);
    expect([...elsewhere]).toEqual([]);
  });
});

/** Goes to a cell with the name box, as a person would. */
async function goTo(page: Page, address: string): Promise<void> {
  const box = page.locator("input").filter({ hasNot: page.locator("[type=file]") });
  const count = await box.count();
  for (let i = 0; i < count; i += 1) {
    const value = await box
      .nth(i)
      .inputValue()
      .catch(() => "");
    if (/^[A-Z]+\d+/.test(value)) {
      await box.nth(i).click();
      await box.nth(i).fill(address);
      await page.keyboard.press("Enter");
      return;
    }
  }
  throw new Error("The name box of the sheet was not found.");
}
