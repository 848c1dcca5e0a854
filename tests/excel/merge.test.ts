/** A register that is rebuilt from a log which people went on using. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { excelPort } from "../../src/excel/workbook";
import { COPIED_SHEET, HEADING_ROW, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { type BuildResult, type ReadLog, type RegisterCheck } from "../../src/excel/port";
import { type Book } from "../../src/trial/book/book";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, fill, HOOK_HEADINGS, hookRow, records, type Value } from "./books";

const read = (): Promise<ReadLog> => excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
let current: { readonly made: Book; readonly calc: ReturnType<typeof calculator> } | null = null;
/** What was put into cells by hand is worked out with the build, whatever that writes. */
const build = async (): Promise<BuildResult> => {
  const result = await excelPort.build(await read(), () => undefined, new AbortController().signal);
  await current?.calc.recalculate(current.made);
  return result;
};
const register = (made: Book): Record<string, unknown>[] => records(made.sheet(REGISTER_SHEET)!, HEADING_ROW - 1);
const row = (made: Book, id: string): Record<string, unknown> => register(made).find((r) => r["Id"] === id)!;

/** What the pane shows of the register, with the log at hand. */
async function pane(
  withLog = true,
): Promise<{ readonly decisions: Record<string, string>; readonly check: RegisterCheck; readonly log: ReadLog }> {
  const found = await excelPort.checkRegister(DEFAULT_BASIS, AS_OF, withLog ? await read() : null);
  return { ...found!, decisions: Object.fromEntries(found!.log.report.items.map((item) => [item.id, item.verdict.decision])) };
}

function typeIn(made: Book, sheet: string, id: string, heading: string, value: Value): void {
  const on = made.sheet(sheet)!;
  const top = sheet === REGISTER_SHEET ? HEADING_ROW - 1 : 0;
  const columnOf = (name: string): number => Array.from({ length: 80 }, (_, c) => on.cell(top, c)?.value).indexOf(name);
  const at = Array.from({ length: 40 }, (_, r) => on.cell(top + 1 + r, columnOf("Id"))?.value).indexOf(id);
  const cell = on.at(top + 1 + at, columnOf(heading));
  cell.value = typeof value === "object" && value !== null ? value.date : value;
}
const inLog = (made: Book, id: string, heading: string, value: Value): void => {
  typeIn(made, "Gear log", id, heading, value);
};
const inRegister = (made: Book, id: string, heading: string, value: Value): void => {
  typeIn(made, REGISTER_SHEET, id, heading, value);
};

async function built(rows: readonly Value[][] = [hookRow("H-1", "2.01"), hookRow("H-2", "2.01")]): Promise<Book> {
  const made = book({ "Gear log": [[...HOOK_HEADINGS], ...rows] });
  const calc = calculator();
  openBook(made, { calculator: calc });
  current = { made, calc };
  await build();
  return made;
}

describe("what is typed in the log after the register was built", () => {
  it("counts in the pane at once, and is taken over by a rebuild where nobody changed the register", async () => {
    const made = await built();
    inLog(made, "H-2", "Cracks", "hairline at the neck");
    const now = await pane();
    expect(now.decisions).toEqual({ "H-1": "KEEP", "H-2": "REMOVE" });
    expect(now.check).toMatchObject({
      disagreeing: [],
      apart: [{ id: "H-2", cells: ["Cracks: register none, log hairline at the neck"], register: "KEEP", log: "REMOVE", both: false }],
    });
    expect(now.log.report.counts).toMatchObject({ KEEP: 1, REMOVE: 1 });
    expect(now.log.report.items[1]?.verdict.reason).toMatch(
      /^Log and register differ \(Cracks: register none, log hairline at the neck\), and the worse counts\. /,
    );
    const result = await build();
    expect(result).toMatchObject({
      added: 0,
      kept: 2,
      differing: [],
      sentences: ["1 cell that nobody had changed in the register took its new value from the log."],
    });
    expect(row(made, "H-2")).toMatchObject({ Cracks: "hairline at the neck", Verdict: "REMOVE", "Log differs": null });
    expect((await pane()).check).toMatchObject({ disagreeing: [], apart: [] });
    inLog(made, "H-2", "Cracks", "none");
    await build();
    expect(row(made, "H-2")).toMatchObject({ Cracks: "none", Verdict: "KEEP" });
  });

  it("fills a cell that was blank and a column that the register did not have", async () => {
    const made = await built();
    const log = made.sheet("Gear log")!;
    ["Tagged out", "2026-11-20"].forEach((value, r) => {
      log.at(r, HOOK_HEADINGS.length).value = value;
    });
    expect((await pane()).decisions).toEqual({ "H-1": "REMOVE", "H-2": "KEEP" });
    await build();
    expect(row(made, "H-1")).toMatchObject({ Verdict: "REMOVE" });
  });

  it("tightens the service that the build had written for a blank one, and never loosens one that was recorded", async () => {
    const made = await built([
      hookRow("H-1", "2.01").map((cell) => (cell === "normal" ? null : cell)),
      hookRow("H-2", "2.01").map((cell) => (cell === "normal" ? "severe" : cell)),
    ]);
    expect(row(made, "H-1")["Service"]).toBe("normal");
    expect((await build()).sentences).toEqual([]);
    inLog(made, "H-1", "Service", "severe");
    inLog(made, "H-2", "Service", null);
    await build();
    expect([row(made, "H-1")["Service"], row(made, "H-2")["Service"]]).toEqual(["severe", "severe"]);
  });

  it("reaches the other parts of an assembly when it shows an overload", async () => {
    const made = await built([
      hookRow("H-1", "2.01", { assembly: "Gantry" }),
      hookRow("H-2", "2.01", { assembly: "Gantry" }),
      hookRow("H-3", "2.01", { assembly: "Slipway" }),
    ]);
    inRegister(made, "H-1", "Throat now", "2.02");
    inLog(made, "H-1", "Throat now", "2.2");
    expect((await pane()).decisions).toEqual({ "H-1": "REMOVE", "H-2": "EXAMINE", "H-3": "KEEP" });
    await build();
    expect(register(made).map((r) => r["Verdict"])).toEqual(["REMOVE", "EXAMINE", "KEEP"]);
    // Once the register says so as well, the other part is no news.
    expect((await pane()).check.apart.map(({ id }) => id)).toEqual(["H-1"]);
  });
});

describe("a cell that was changed in the register and in the log", () => {
  it("keeps what was typed in the register, and the worse verdict counts in sheet and pane until both agree", async () => {
    const made = await built();
    inRegister(made, "H-2", "Throat now", "2.02");
    inLog(made, "H-2", "Throat now", "2.2");
    for (let times = 0; times < 2; times += 1) {
      const result = await build();
      expect(result.differing).toEqual([{ id: "H-2", heading: "Throat now", register: "2.02", log: "2.2" }]);
      expect(result.sentences).toEqual([expect.stringContaining("Changed both in the register and in the log: H-2.")]);
      expect(row(made, "H-2")).toMatchObject({ "Throat now": "2.02", Verdict: "REMOVE", Flag: "✖ REMOVE" });
      expect(row(made, "H-2")["Reason"]).toMatch(
        /^REMOVE: so says the log, which differs from the register \(Throat now: register 2\.02, log 2\.2\)/,
      );
      const now = await pane();
      expect(now.decisions["H-2"]).toBe("REMOVE");
      expect(now.check).toMatchObject({ disagreeing: [], apart: [{ id: "H-2", both: true }] });
      // Without the log at hand, what was found at the last build still holds.
      expect((await pane(false)).decisions["H-2"]).toBe("REMOVE");
    }
    inLog(made, "H-2", "Throat now", "2.02");
    expect((await build()).differing).toEqual([]);
    expect(row(made, "H-2")).toMatchObject({ "Throat now": "2.02", Verdict: "KEEP", "Log differs": null });
    expect((await pane()).decisions["H-2"]).toBe("KEEP");
  });

  it("is no worse than the register's own reading, either", async () => {
    const made = await built();
    inRegister(made, "H-2", "Throat now", "2.2");
    inLog(made, "H-2", "Throat now", "2.02");
    await build();
    expect(row(made, "H-2")).toMatchObject({ "Throat now": "2.2", Verdict: "REMOVE" });
    expect((await pane()).decisions["H-2"]).toBe("REMOVE");
  });

  it("is not one where only the register was changed: what was typed there is the later word", async () => {
    const made = await built([hookRow("H-1", "2.2")]);
    inRegister(made, "H-1", "Throat now", "2.01");
    const result = await build();
    expect(result.differing).toEqual([{ id: "H-1", heading: "Throat now", register: "2.01", log: "2.2" }]);
    expect(row(made, "H-1")).toMatchObject({ "Throat now": "2.01", Verdict: "KEEP" });
    expect((await pane()).check.apart).toEqual([]);
  });

  it("is assumed wherever register and log differ and nothing tells what was copied, or it came from another sheet", async () => {
    const another = (made: Book): void => {
      made.sheets.splice(made.sheets.indexOf(made.sheet("Gear log")!), 1);
      fill(made.addSheet("Log of 2027"), [[...HOOK_HEADINGS], hookRow("H-1", "2.01"), hookRow("H-2", "2.01")]);
    };
    const forgotten = (made: Book): void => {
      made.sheets.splice(made.sheets.indexOf(made.sheet(COPIED_SHEET)!), 1);
    };
    for (const unknown of [another, forgotten]) {
      const made = await built();
      unknown(made);
      typeIn(made, unknown === another ? "Log of 2027" : "Gear log", "H-2", "Cracks", "hairline");
      expect((await pane()).decisions).toEqual({ "H-1": "KEEP", "H-2": "REMOVE" });
      await build();
      expect(row(made, "H-2")).toMatchObject({ Cracks: "none", Verdict: "REMOVE" });
      expect(row(made, "H-1")).toMatchObject({ Verdict: "KEEP", "Log differs": null });
    }
  });

  it("is not assumed for a log whose sheet was only renamed", async () => {
    const made = await built();
    made.sheet("Gear log")!.name = "Log of 2027";
    typeIn(made, "Log of 2027", "H-2", "Cracks", "hairline");
    await build();
    expect(row(made, "H-2")).toMatchObject({ Cracks: "hairline", Verdict: "REMOVE", "Log differs": null });
  });
});

describe("a cell that was emptied in the log", () => {
  it("stays in the register, and is not judged better than the log that no longer says it", async () => {
    const made = await built();
    inLog(made, "H-2", "Cracks", null);
    expect((await pane()).decisions["H-2"]).toBe("NO VERDICT");
    const result = await build();
    expect(result.differing).toEqual([{ id: "H-2", heading: "Cracks", register: "none", log: "" }]);
    expect(row(made, "H-2")).toMatchObject({ Cracks: "none", Verdict: "NO VERDICT", Flag: "? NO VERDICT" });
    inLog(made, "H-2", "Cracks", "none");
    await build();
    expect(row(made, "H-2")).toMatchObject({ Cracks: "none", Verdict: "KEEP" });
  });
});

describe("what was copied", () => {
  it("stands on a very hidden sheet of its own, and is never read as a log", async () => {
    const made = await built();
    expect(made.sheet(COPIED_SHEET)?.visibility).toBe("VeryHidden");
    made.sheet(COPIED_SHEET)!.visibility = "Visible";
    expect((await read()).place.sheet).toBe("Gear log");
  });

  it("is left alone when the register is rebuilt from itself: what people typed there is not the log's word", async () => {
    const made = await built();
    inRegister(made, "H-2", "Cracks", "hairline");
    inRegister(made, "H-1", "Throat now", "2.02");
    inLog(made, "H-1", "Throat now", "2.2");
    await build();
    made.sheet("Gear log")!.visibility = "Hidden";
    expect((await read()).place.how).toBe("register");
    await build();
    expect(row(made, "H-1")["Verdict"]).toBe("REMOVE");
    made.sheet("Gear log")!.visibility = "Visible";
    await build();
    expect(row(made, "H-2")).toMatchObject({ Cracks: "hairline", Verdict: "REMOVE" });
    expect(row(made, "H-1")).toMatchObject({ "Throat now": "2.02", Verdict: "REMOVE" });
  });

  it("of another origin is refused by name, and nothing is written", async () => {
    const made = await built();
    made.sheet(COPIED_SHEET)!.at(0, 0).value = "mine";
    const before = JSON.stringify(register(made));
    await expect(build()).rejects.toMatchObject({ kind: "other shape", message: expect.stringContaining(COPIED_SHEET) });
    expect(JSON.stringify(register(made))).toBe(before);
  });
});

describe("a column of the log whose heading is not understood", () => {
  it("is judged in the register as in the log, until it is answered; then it stands aside there too", async () => {
    const made = book({
      "Gear log": [
        [...HOOK_HEADINGS, "Zorbl"],
        [...hookRow("H-1", "2.01"), "yes"],
        [...hookRow("H-2", "2.01"), null],
      ],
    });
    const calc = calculator();
    openBook(made, { calculator: calc });
    current = { made, calc };
    await build();
    expect(register(made).map((r) => [r["Id"], r["Zorbl"] ?? "", r["Verdict"]])).toEqual([
      ["H-1", "yes", "NO VERDICT"],
      ["H-2", "", "KEEP"],
    ]);
    const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: { zorbl: null } });
    await excelPort.build(log, () => undefined, new AbortController().signal);
    await calc.recalculate(made);
    expect(register(made).map((r) => [r["Id"], r["Not judged: Zorbl"] ?? "", r["Verdict"]])).toEqual([
      ["H-1", "yes", "KEEP"],
      ["H-2", "", "KEEP"],
    ]);
  });
});
