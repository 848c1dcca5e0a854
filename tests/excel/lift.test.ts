import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { judgeHookup, type HookupPlace, type HookupRequest } from "../../src/engine/lift/judge-lift";
import { excelPort } from "../../src/excel/workbook";
import { columnOf, INPUT_ROW, ITEM_ROW, LIFT_HEADINGS, planLift, RESULT_ROW, WORKED_OUT } from "../../src/excel/lift/plan-lift";
import { LIFT_SHEET } from "../../src/excel/kit/sheets";
import { type LiftToWrite, type ReadLog } from "../../src/excel/port";
import { type Book } from "../../src/trial/book/book";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, records, type Value } from "./books";

const HEADINGS = [
  "Id",
  "Gear",
  "Unit",
  "Size",
  "Section now",
  "Section as-new",
  "Pin as-new",
  "Pin now",
  "Pin fully seated",
  "Cracks",
  "Bent or stretched",
  "Identification legible",
  "Rated load",
  "Service",
  "Inspected",
];

/** Chain slings with 3/8 in links, 0.375 in now, and shackles, all in good order. */
const chain = (id: string, rated: Value): Value[] => [
  id,
  "chain sling",
  "in",
  "3/8",
  "0.375",
  null,
  null,
  null,
  null,
  "none",
  "none",
  "yes",
  rated,
  "normal",
  { date: 46300 },
];
const shackle = (id: string, rated: Value): Value[] => [
  id,
  "shackle",
  "mm",
  null,
  "20",
  "20",
  "22",
  "22",
  "yes",
  "none",
  "none",
  "yes",
  rated,
  "normal",
  { date: 46300 },
];

const LOG: Value[][] = [HEADINGS, chain("C-1", "7,100 lb"), chain("C-2", "7,100 lb"), shackle("3/4", "3.25 t"), shackle("S-2", "12000 lb")];

const read = (): Promise<ReadLog> => excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });

/** The lift of the log's items, each at its place. */
async function lift(places: Readonly<Record<string, HookupPlace>>, more: Partial<HookupRequest> = {}): Promise<LiftToWrite> {
  const { report } = await read();
  const items = Object.entries(places).map(([id, place]) => {
    const item = report.items.find((one) => one.id === id);
    if (!item) throw new Error(`No item ${id}`);
    return { item, place };
  });
  const request: HookupRequest = {
    items,
    load: "10000 lb",
    legs: "2",
    angle: "60",
    angleFrom: "horizontal",
    hitch: "vertical",
    asOf: AS_OF,
    ...more,
  };
  return { request, result: judgeHookup(request) };
}

/** One item of another kind in a lift of 1 t, rated 3 t, as the engine judged it. */
async function rope(
  more: Partial<HookupRequest> & { readonly gear?: string; readonly gearText?: string; readonly place?: HookupPlace },
): Promise<LiftToWrite> {
  const { gear = "wire rope sling", gearText = gear, place = "leg", ...rest } = more;
  const made = book({ "Gear log": LOG });
  openBook(made);
  const [first] = (await read()).report.items;
  if (!first) throw new Error("No item");
  const item = { ...first, id: "R-1", gear, gearText, cells: new Map([...first.cells, ["ratedLoad", "3 t"] as const]) };
  const request: HookupRequest = {
    items: [{ item, place }],
    load: "1 t",
    legs: 1,
    angle: "90",
    angleFrom: "horizontal",
    hitch: "choker",
    asOf: AS_OF,
    ...rest,
  };
  return { request, result: judgeHookup(request) };
}

const cell = (made: Book, row: number, column: number): unknown => {
  const at = made.sheet(LIFT_SHEET)?.cell(row - 1, column);
  return at?.error ?? at?.value ?? "";
};
const rows = (made: Book): Record<string, unknown>[] => records(made.sheet(LIFT_SHEET)!, ITEM_ROW - 1);
const results = (made: Book): unknown[] => [0, 1, 2, 3].map((i) => cell(made, RESULT_ROW + i, 1));
const snapshot = (made: Book, name: string): string => JSON.stringify([...made.sheet(name)!.rows].map(([r, cells]) => [r, [...cells]]));

const ALL = { "C-1": "leg", "C-2": "leg", "3/4": "leg", "S-2": "top" } as const;

describe("the lift on a sheet", () => {
  it("works out the same as the engine, from formulas", async () => {
    const made = book({ "Gear log": LOG });
    const before = snapshot(made, "Gear log");
    openBook(made, { calculator: calculator() });
    const asked = await lift(ALL);
    expect(asked.result.refusals).toEqual([]);
    expect(await excelPort.writeLift(asked)).toEqual({ sheet: LIFT_SHEET });
    // 10,000 / (2 sin 60) is 5,773.503 lb; 12,000 lb on top under 10,000 is the weakest: a sixth is left.
    expect(results(made)[0]).toBeCloseTo(5773.503, 3);
    expect(results(made).slice(1, 3)).toEqual(["CARRIES", "S-2"]);
    expect(results(made)[3]).toBe(0.16);
    expect(rows(made).map((r) => [r["Id"], r["Place"], r["State when read"], r["Decision"]])).toEqual([
      ["C-1", "in a leg", "in use", "CARRIES"],
      ["C-2", "in a leg", "in use", "CARRIES"],
      ["3/4", "in a leg", "in use", "CARRIES"],
      ["S-2", "on top", "in use", "CARRIES"],
    ]);
    // 3.25 t is 3,250 / 0.45359237 = 7,165.02 lb.
    expect(rows(made)[2]?.["Rated here"]).toBeCloseTo(7165.0, 1);
    for (const [i, line] of asked.result.lines.entries()) expect(rows(made)[i]?.["Used"]).toBeCloseTo(line.used ?? NaN, 9);
    expect(snapshot(made, "Gear log")).toBe(before);
    expect(made.sheets.map((s) => s.name)).toEqual(["Gear log", LIFT_SHEET]);
  });

  it("follows what is typed in it: load, unit, angle, hitch, choke, heat", async () => {
    const made = book({ "Gear log": LOG });
    const calc = calculator();
    openBook(made, { calculator: calc });
    await excelPort.writeLift(await lift({ "C-1": "leg", "C-2": "leg" }));
    const sheet = made.sheet(LIFT_SHEET)!;
    const type = async (
      changes: readonly (readonly [row: number, column: number, value: string | number | null])[],
    ): Promise<unknown[]> => {
      for (const [row, column, value] of changes) sheet.at(row - 1, column).value = value;
      await calc.recalculate(made);
      return results(made);
    };
    const [LOAD, ANGLE, HITCH, CHOKE, HEAT, GRADE, COUNTED] = [
      INPUT_ROW + 1,
      INPUT_ROW + 3,
      INPUT_ROW + 4,
      INPUT_ROW + 5,
      INPUT_ROW + 6,
      INPUT_ROW + 7,
      INPUT_ROW + 8,
    ];
    // Two legs at 30 degrees carry exactly one leg's 7,100 lb.
    expect(
      (
        await type([
          [LOAD, 1, 7100],
          [ANGLE, 1, 30],
        ])
      )[1],
    ).toBe("CARRIES");
    expect((await type([[LOAD, 1, 7100.1]]))[1]).toBe("OVERLOADED");
    expect(
      (
        await type([
          [LOAD, 1, 7000],
          [ANGLE, 1, 29.9],
        ])
      )[1],
    ).toBe("REFUSED");
    expect((await type([[ANGLE, 1, null]]))[1]).toBe("REFUSED");
    // 60 degrees between the legs is 60 from horizontal. 12,297 lb carries, 12,298 does not: 2 sin 60 x 7,100 = 12,297.56.
    expect(
      (
        await type([
          [ANGLE, 1, 60],
          [ANGLE, 2, "included"],
          [LOAD, 1, 12297],
        ])
      )[1],
    ).toBe("CARRIES");
    expect((await type([[LOAD, 1, 12298]]))[1]).toBe("OVERLOADED");
    expect((await type([[LOAD, 1, ""]]))[1]).toBe("REFUSED");
    // 5,578 kg is 12,297.4 lb.
    expect(
      (
        await type([
          [LOAD, 1, 5578],
          [LOAD, 2, "kg"],
        ])
      )[1],
    ).toBe("CARRIES");
    expect((await type([[LOAD, 1, 5579]]))[1]).toBe("OVERLOADED");
    // Choker: 75 % of 12,297.56 lb is 9,223.2 lb; a choke of 45 degrees leaves chain 40 % of 12,297.56 lb, 4,919.0 lb; below 30 degrees none.
    expect(
      (
        await type([
          [LOAD, 1, 9223],
          [LOAD, 2, "lb"],
          [HITCH, 1, "choker"],
        ])
      )[1],
    ).toBe("REFUSED");
    expect((await type([[CHOKE, 1, 130]]))[1]).toBe("CARRIES");
    expect((await type([[CHOKE, 1, 45]]))[1]).toBe("OVERLOADED");
    expect((await type([[LOAD, 1, 4920]]))[1]).toBe("OVERLOADED");
    expect((await type([[LOAD, 1, 4919]]))[1]).toBe("CARRIES");
    expect((await type([[CHOKE, 1, 29.9]]))[1]).toBe("REFUSED");
    expect((await type([[CHOKE, 1, 0]]))[1]).toBe("REFUSED");
    // Grade 80 at 800 F keeps 60 %: 2 sin 60 x 4,260 = 7,378.5 lb.
    expect(
      (
        await type([
          [HITCH, 1, "vertical"],
          [LOAD, 1, 7378],
          [HEAT, 1, 800],
          [HEAT, 2, "F"],
        ])
      )[1],
    ).toBe("REFUSED");
    expect((await type([[GRADE, 1, 80]]))[1]).toBe("CARRIES");
    expect((await type([[LOAD, 1, 7379]]))[1]).toBe("OVERLOADED");
    // Basket: two slings are four parts, of which three or two are counted; upright 3 x 7,100 = 21,300 lb.
    expect(
      (
        await type([
          [HEAT, 1, null],
          [HITCH, 1, "basket"],
          [ANGLE, 1, 90],
          [ANGLE, 2, "horizontal"],
          [LOAD, 1, 21300],
        ])
      )[1],
    ).toBe("CARRIES");
    expect((await type([[COUNTED, 1, 2]]))[1]).toBe("OVERLOADED");
  });

  it("holds hardware in a basket against both parts, and asks for the sling of a choker", async () => {
    const made = book({ "Gear log": LOG });
    const calc = calculator();
    openBook(made, { calculator: calc });
    // One sling upright under 7,000 lb: each part 3,500 lb, the shackle of 3.25 t (7,165.02 lb) both.
    const asked = await lift({ "C-1": "leg", "3/4": "leg" }, { legs: 1, angle: 90, hitch: "basket", load: "7000 lb" });
    await excelPort.writeLift(asked);
    expect(rows(made).map((r) => r["Needed"])).toEqual([3500, 7000]);
    for (const [i, line] of asked.result.lines.entries()) expect(rows(made)[i]?.["Used"]).toBeCloseTo(line.used ?? NaN, 9);
    expect(results(made)[1]).toBe("CARRIES");
    const sheet = made.sheet(LIFT_SHEET)!;
    sheet.at(INPUT_ROW, 1).value = 7166;
    await calc.recalculate(made);
    expect(results(made)[1]).toBe("OVERLOADED");
    // The sling on top, the hitch left as it is.
    sheet.at(INPUT_ROW, 1).value = 100;
    sheet.at(ITEM_ROW, 2).value = "on top";
    await calc.recalculate(made);
    expect(results(made)[1]).toBe("REFUSED");
    sheet.at(INPUT_ROW + 3, 1).value = "vertical";
    await calc.recalculate(made);
    expect(results(made)[1]).toBe("CARRIES");
    // A place that is neither of the two is no leg: the tension of a leg would be too little.
    for (const place of ["top", "", "hook"]) {
      sheet.at(ITEM_ROW + 1, 2).value = place;
      await calc.recalculate(made);
      expect([place, results(made)[1]]).toEqual([place, "REFUSED"]);
    }
  });

  it("takes the choke of a rope sling as the engine does, at every angle", async () => {
    const calc = calculator();
    for (const [angle, share] of [
      // Two readings of sling handbooks for wire rope: 75 % of a leg from 120 degrees, as low as 40 % below; restated.
      [0, 0.4],
      [30, 0.4],
      [90, 0.4],
      [119.5, 0.4],
      [120, 0.75],
      [180, 0.75],
    ] as const) {
      const asked = await rope({ chokeAngle: angle });
      const made = book({ "Gear log": LOG });
      openBook(made, { calculator: calc });
      await excelPort.writeLift(asked);
      expect([angle, rows(made)[0]?.["Hitch share"], rows(made)[0]?.["Decision"]]).toEqual([
        angle,
        expect.closeTo(share, 12),
        asked.result.lines[0]?.decision,
      ]);
      expect(asked.result.lines[0]?.used).toBeCloseTo(Number(rows(made)[0]?.["Used"]), 9);
    }
  });

  it("takes the grade that the row names, and no other that is typed on the sheet", async () => {
    const calc = calculator();
    const asked = await rope({
      hitch: "vertical",
      gear: "chain sling",
      gearText: "Chain sling single leg grade 100",
      load: "2.25 t",
      temperature: "450",
      temperatureUnit: "F",
    });
    expect(asked.result.lines[0]).toMatchObject({ decision: "CARRIES", used: 1 });
    const made = book({ "Gear log": LOG });
    openBook(made, { calculator: calc });
    await excelPort.writeLift(asked);
    // Grade 100 at 450 F keeps 75 % of 3 t; grade 80 would keep 85 %.
    expect([rows(made)[0]?.["Heat share"], results(made)[1]]).toEqual([0.75, "CARRIES"]);
    const sheet = made.sheet(LIFT_SHEET)!;
    for (const [grade, decision] of [
      [80, "REFUSED"],
      ["80", "REFUSED"],
      [8, "REFUSED"],
      ["T", "REFUSED"],
      [100, "CARRIES"],
      ["100", "CARRIES"],
      [10, "CARRIES"],
      [null, "CARRIES"],
    ] as const) {
      sheet.at(INPUT_ROW + 6, 1).value = grade;
      await calc.recalculate(made);
      expect([grade, results(made)[1]]).toEqual([grade, decision]);
    }
    // Written cold with the other grade, then heated on the sheet.
    const two = await rope({ hitch: "vertical", gear: "chain sling", gearText: "Chain sling grade 80/100", load: "1 t", grade: "80" });
    openBook(made, { calculator: calc });
    await excelPort.writeLift(two);
    expect(results(made)[1]).toBe("CARRIES");
    sheet.at(INPUT_ROW + 5, 1).value = 450;
    sheet.at(INPUT_ROW + 5, 2).value = "F";
    await calc.recalculate(made);
    expect(results(made)[1]).toBe("REFUSED");
  });

  it("keeps a plain eyebolt in line when its angle is typed on the sheet", async () => {
    const calc = calculator();
    for (const [gearText, decision] of [
      ["plain eyebolt", "REFUSED"],
      ["eyebolt", "REFUSED"],
      ["shoulder eyebolt", "CARRIES"],
    ] as const) {
      const asked = await rope({ hitch: "vertical", gear: "eyebolt", gearText, place: "top", sideAngles: { "R-1": 0 } });
      const made = book({ "Gear log": LOG });
      openBook(made, { calculator: calc });
      await excelPort.writeLift(asked);
      expect(results(made)[1]).toBe("CARRIES");
      made.sheet(LIFT_SHEET)!.at(ITEM_ROW, columnOf("Side load deg")).value = 20;
      await calc.recalculate(made);
      expect([gearText, results(made)[1]]).toEqual([gearText, decision]);
    }
  });

  it("refuses the angle between two of four legs, and pulls on top as hard as the one leg that is not straight", async () => {
    const made = book({ "Gear log": LOG });
    const calc = calculator();
    openBook(made, { calculator: calc });
    // One leg at 30 degrees under 3,000 lb: 6,000 lb on the sling and on the shackle on top.
    const asked = await lift({ "C-1": "leg", "S-2": "top" }, { legs: 1, angle: "30", load: "3000 lb" });
    await excelPort.writeLift(asked);
    expect(rows(made).map((r) => r["Needed"])).toEqual([6000, 6000]);
    for (const [i, line] of asked.result.lines.entries()) expect(rows(made)[i]?.["Used"]).toBeCloseTo(line.used ?? NaN, 9);
    // Two slings in baskets are four parts, of which two are counted.
    await excelPort.writeLift(await lift({ "C-1": "leg", "C-2": "leg" }, { angle: "60", hitch: "basket", load: "1000 lb", strict: true }));
    expect(results(made)[1]).toBe("CARRIES");
    made.sheet(LIFT_SHEET)!.at(INPUT_ROW + 2, 2).value = "included";
    await calc.recalculate(made);
    expect(results(made)[1]).toBe("REFUSED");
  });

  it("refuses without a hitch, with more legs than slings, and once an inspection is due", async () => {
    const made = book({ "Gear log": LOG });
    const calc = calculator();
    openBook(made, { calculator: calc });
    await excelPort.writeLift(await lift({ "C-1": "leg", "C-2": "leg" }, { load: "1000 lb" }));
    const sheet = made.sheet(LIFT_SHEET)!;
    const after = async (row: number, value: string | number | null): Promise<unknown> => {
      const at = sheet.at(row - 1, 1);
      const before = at.value;
      at.value = value;
      await calc.recalculate(made);
      const decision = results(made)[1];
      at.value = before;
      return decision;
    };
    const [AS_OF_ROW, LEGS, HITCH] = [INPUT_ROW, INPUT_ROW + 2, INPUT_ROW + 4];
    expect(await after(HITCH, "")).toBe("REFUSED");
    expect(await after(HITCH, "cradle")).toBe("REFUSED");
    expect(await after(LEGS, 3)).toBe("REFUSED");
    expect(await after(LEGS, "")).toBe("REFUSED");
    // Inspected 5 October 2026 (46300), due 5 October 2027 (46665): on the day itself it is due.
    expect(await after(AS_OF_ROW, 46664)).toBe("CARRIES");
    expect(await after(AS_OF_ROW, 46665)).toBe("REFUSED");
  });

  it("refuses an item that is out of use and lowers side loads", async () => {
    const made = book({
      "Gear log": [
        ...LOG,
        ["C-3", "chain sling", "in", "3/8", "0.3", null, null, null, null, "none", "none", "yes", "7100 lb", "normal", { date: 46300 }],
      ],
    });
    openBook(made, { calculator: calculator() });
    await excelPort.writeLift(
      await lift({ "C-3": "leg", "S-2": "top" }, { legs: 1, angle: "", load: "6000 lb", sideAngles: { "S-2": "90" } }),
    );
    // Half of 12,000 lb is left at 90 degrees out of plane: exactly 6,000 lb.
    expect(rows(made).map((r) => r["Decision"])).toEqual(["REFUSED", "CARRIES"]);
    expect(rows(made)[1]).toMatchObject({ "Side share": 0.5, "Rated here": 6000, Left: 0 });
    expect(rows(made)[0]?.["State when read"]).toMatch(/C-3 \(chain sling\) is out of use, REMOVE/);
    expect(results(made)[1]).toBe("REFUSED");
  });

  it("is written anew on its own sheet and leaves another sheet of that name alone", async () => {
    const made = book({ "Gear log": LOG });
    openBook(made, { calculator: calculator() });
    await excelPort.writeLift(await lift(ALL));
    await excelPort.writeLift(await lift({ "C-1": "leg" }, { legs: 1, angle: "", load: "1 t" }));
    expect(
      rows(made)
        .filter((r) => r["Id"] !== null && r["Id"] !== "")
        .map((r) => r["Id"]),
    ).toEqual(["C-1"]);
    expect(cell(made, INPUT_ROW + 1, 2)).toBe("t");

    const other = book({ "Gear log": LOG, [LIFT_SHEET]: [["My own lift plans"], [5]] });
    openBook(other, { calculator: calculator() });
    const before = snapshot(other, LIFT_SHEET);
    await expect(excelPort.writeLift(await lift({ "C-1": "leg" }, { legs: 1, angle: "" }))).rejects.toMatchObject({
      kind: "other shape",
      message: expect.stringContaining("Rename that sheet") as string,
    });
    expect(snapshot(other, LIFT_SHEET)).toBe(before);
  });

  it("says so when its sheet is protected", async () => {
    const made = book({ "Gear log": LOG });
    openBook(made, { calculator: calculator() });
    await excelPort.writeLift(await lift(ALL));
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem(LIFT_SHEET).protection.protect();
      await context.sync();
    });
    await expect(excelPort.writeLift(await lift(ALL))).rejects.toMatchObject({ kind: "protected" });
  });
});

describe("rated loads in the register", () => {
  it("keep the unit that the log's heading gave them", async () => {
    const headings = HEADINGS.map((heading) => (heading === "Rated load" ? "WLL (t)" : heading));
    const made = book({ "Gear log": [headings, shackle("S-1", 3.25), shackle("S-2", "4750 lb"), shackle("S-3", "")] });
    openBook(made, { calculator: calculator() });
    await excelPort.build(await read(), () => undefined, new AbortController().signal);
    expect(records(made.sheet("Gear register")!, 3).map((r) => r["Rated load"] ?? "")).toEqual(["3.25 t", "4750 lb", ""]);
  });
});

describe("rated loads of another sort in the register", () => {
  it("keep the words of the log's heading, so that the lift refuses them there as well", async () => {
    const headings = HEADINGS.map((heading) => (heading === "Rated load" ? "Basket WLL" : heading));
    const made = book({ "Gear log": [headings, chain("C-1", "3.25 t"), chain("C-2", "4750 lb"), chain("C-3", "")] });
    openBook(made, { calculator: calculator() });
    const build = async (): Promise<unknown[]> => {
      const log = await excelPort.read({
        from: { sheet: "Gear log", address: "A1:O4", how: "found", table: "" },
        basis: DEFAULT_BASIS,
        asOf: AS_OF,
        choices: {},
      });
      const { differing } = await excelPort.build(log, () => undefined, new AbortController().signal);
      expect(differing).toEqual([]);
      return records(made.sheet("Gear register")!, 3).map((r) => r["Rated load"] ?? "");
    };
    for (const again of [false, true]) expect([again, await build()]).toEqual([again, ["3.25 t (Basket WLL)", "4750 lb (Basket WLL)", ""]]);
    const register = (await excelPort.checkRegister(DEFAULT_BASIS, AS_OF))?.log;
    const items = (register?.report.items ?? []).slice(0, 1).map((item) => ({ item, place: "leg" as const }));
    expect(
      judgeHookup({
        items,
        load: "1 t",
        legs: 1,
        angle: "",
        angleFrom: "",
        hitch: "vertical",
        asOf: AS_OF,
        ratedHeading: "Rated load",
      }).refusals.join(" "),
    ).toMatch(/^C-1 \(chain sling\): the rated load "3\.25 t \(Basket WLL\)" .*cannot be used/);
  });
});

describe("the legs of a sling", () => {
  it("go from the log into the register, where the lift reads them again", async () => {
    const row: Value[] = [...chain("C-1", "6.7 t"), 4];
    const made = book({ "Gear log": [[...HEADINGS, "No. of legs"], row] });
    openBook(made, { calculator: calculator() });
    const refused = /C-1 \(chain sling\) cannot be judged: its row says "4" under Legs/;
    const one = { legs: 1, angle: "", load: "6 t" };
    expect((await lift({ "C-1": "leg" }, one)).result.refusals.join(" ")).toMatch(refused);
    await excelPort.build(await read(), () => undefined, new AbortController().signal);
    expect(records(made.sheet("Gear register")!, 3).map((r) => r["Legs"])).toEqual(["4"]);
    const register = (await excelPort.checkRegister(DEFAULT_BASIS, AS_OF))?.log;
    expect(register?.place.how).toBe("register");
    expect(
      judgeHookup({
        items: (register?.report.items ?? []).map((item) => ({ item, place: "leg" })),
        angleFrom: "",
        hitch: "vertical",
        asOf: AS_OF,
        ...one,
      }).refusals.join(" "),
    ).toMatch(refused);
  });

  it("are no column of a register whose log has none", async () => {
    const made = book({ "Gear log": LOG });
    openBook(made, { calculator: calculator() });
    await excelPort.build(await read(), () => undefined, new AbortController().signal);
    expect(Object.keys(records(made.sheet("Gear register")!, 3)[0]!)).not.toContain("Legs");
  });
});

describe("the plan of a lift", () => {
  it("has a formula in each worked-out column, and no formula from what a log holds", async () => {
    const made = book({ "Gear log": [HEADINGS, chain("=1+1", "=2 t")] });
    openBook(made);
    const plan = planLift(await lift({ "=1+1": "leg" }, { legs: 1, angle: "" }));
    for (const row of plan.rows) {
      expect(row).toHaveLength(LIFT_HEADINGS.length);
      row.forEach((value, column) => {
        if (WORKED_OUT.includes(LIFT_HEADINGS[column]!)) expect([column, value]).toEqual([column, expect.stringMatching(/^=/)]);
        // Tag and side load are numbers or blank; the other columns are text to the sheet, whatever stands in them.
        if (column === columnOf("Tag") || column === columnOf("Side load deg"))
          expect([column, typeof value === "number" || value === ""]).toEqual([column, true]);
      });
    }
    await excelPort.writeLift(await lift({ "=1+1": "leg" }, { legs: 1, angle: "" }));
    expect(made.sheet(LIFT_SHEET)?.cell(ITEM_ROW, 0)).toMatchObject({ value: "=1+1" });
    expect(made.sheet(LIFT_SHEET)?.cell(ITEM_ROW, 0)?.formula).toBeUndefined();
  });
});
