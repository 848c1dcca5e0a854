import { afterEach, describe, expect, it } from "vitest";
import { Book } from "../../src/trial/book/book";
import { type Sheet } from "../../src/trial/book/book";
import { WorkbookCalculator } from "../../src/trial/calculation/calculator";
import { type CalculatorOptions } from "../../src/trial/calculation/calculator";
import { Host } from "../../src/trial/host/host";
import { type BlankMode, type WorksheetFunction } from "../../src/trial/calculation/worksheet-functions";

const open: WorkbookCalculator[] = [];
afterEach(() => {
  for (const calculator of open.splice(0)) calculator.dispose();
});

function calculator(functions: Record<string, WorksheetFunction> = {}, more: Partial<CalculatorOptions> = {}): WorkbookCalculator {
  const made = new WorkbookCalculator({ functions: new Map(Object.entries(functions)), ...more });
  open.push(made);
  return made;
}

/** Fills a sheet from its top left cell; texts that begin with "=" are formulas. */
function fill(sheet: Sheet, rows: (string | number | boolean | null)[][], row = 0, column = 0): void {
  rows.forEach((cells, r) => {
    cells.forEach((value, c) => {
      if (value === null) return;
      const cell = sheet.at(row + r, column + c);
      if (typeof value === "string" && value.startsWith("=")) cell.formula = value;
      else cell.value = value;
    });
  });
}

function shown(sheet: Sheet, row: number, column: number): unknown {
  const cell = sheet.cell(row, column);
  return cell?.error ?? cell?.value ?? null;
}

/** The value of one formula in Z1 over a small block of cells at A1. */
async function valueOf(
  formula: string,
  rows: (string | number | boolean | null)[][] = [],
  functions: Record<string, WorksheetFunction> = {},
  more: Partial<CalculatorOptions> = {},
): Promise<unknown> {
  const book = new Book();
  const sheet = book.addSheet("Sheet1");
  fill(sheet, rows);
  sheet.at(0, 25).formula = formula;
  await calculator(functions, more).recalculate(book);
  return shown(sheet, 0, 25);
}

describe("built-in functions that the register and its users need", () => {
  const block = [
    ["Id", "Gear", "Due", "Note"],
    ["H1", "hook", 46_000, "long reach"],
    ["S1", "shackle", 46_010, null],
    ["H2", "hook", 46_020, "stores"],
  ];
  it.each([
    ['=IF(C2>46005,"late","early")', "early"],
    ["=ISBLANK(D3)", true],
    ["=ISBLANK(D2)", false],
    ["=IFERROR(1/0,7)", 7],
    ["=INDEX(A2:A4,2)", "S1"],
    ['=MATCH("H2",A2:A4,0)', 3],
    ['=INDEX(C2:C4,MATCH("S1",A2:A4,0))', 46_010],
    ['=MAXIFS(C2:C4,B2:B4,"hook")', 46_020],
    ['=COUNTIF(B2:B4,"hook")', 2],
    ['=COUNTIFS(B2:B4,"hook",C2:C4,">46010")', 1],
    ["=AND(TRUE,C2>0)", true],
    ["=OR(FALSE,C2<0)", false],
    ["=ISNUMBER(C2)", true],
    ['=SEARCH("REACH",D2)', 6],
    ['=ISNUMBER(SEARCH("reach",D4))', false],
    ["=TODAY()-1", 46_350],
    ["=SUM(C2:C4)/3", 46_010],
    ["=COUNTA(A:A)", 4],
    ['=IF(D3="","none",D3)', "none"],
    ["=D3", 0],
    ['=B2&" "&A2', "hook H1"],
    ["=EDATE(C2,12)", 46_365],
    ["=1/0", "#DIV/0!"],
    ["=NOSUCH(1)", "#NAME?"],
    ['=MATCH("zz",A2:A4,0)', "#N/A"],
  ])("%s is %s", async (formula, value) => {
    expect(await valueOf(formula, block, {}, { today: () => 46_351 })).toBe(value);
  });

  it("TODAY is this machine's local date when no clock is given", async () => {
    const now = new Date();
    const serial = Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000 + 25_569;
    expect(await valueOf("=TODAY()")).toBe(serial);
  });
});

describe("what reaches a worksheet function", () => {
  async function received(formula: string, rows: (string | number | boolean | null)[][], blank?: BlankMode): Promise<unknown[]> {
    const calls: unknown[][] = [];
    await valueOf(
      formula,
      rows,
      {
        "GEAR.SEE": (...values: unknown[]) => {
          calls.push(values);
          return "seen";
        },
      },
      blank ? { blank } : {},
    );
    return calls.at(-1) ?? [];
  }

  it.each([
    ["null", null],
    ["zero", 0],
    ["empty", ""],
  ] as const)("a blank cell as %s, alone and in a range", async (mode, blank) => {
    expect(await received("=GEAR.SEE(A1,A1:C1)", [[null, 2, "x"]], mode)).toEqual([blank, [[blank, 2, "x"]]]);
  });
  it("a blank cell as null when no mode is given", async () => {
    expect(await received("=GEAR.SEE(A1)", [[null]])).toEqual([null]);
  });
  it("an omitted argument as null in every mode", async () => {
    expect(await received("=GEAR.SEE(1,,3)", [], "zero")).toEqual([1, null, 3]);
    expect(await received("=GEAR.SEE(1,,3)", [], "empty")).toEqual([1, null, 3]);
  });
  it("numbers, texts and logical values as they are", async () => {
    expect(await received('=GEAR.SEE(A1,B1,C1,"3/4",TRUE)', [[0.1, "1 1/4", false]])).toEqual([0.1, "1 1/4", false, "3/4", true]);
  });
  it("a fraction written as text stays text, also on its way through IF", async () => {
    expect(await received('=GEAR.SEE("3/4",IF(TRUE,"1-2"),IFERROR("5/8",0))', [])).toEqual(["3/4", "1-2", "5/8"]);
  });
  it("a range with every blank replaced by an empty text, through IF and ISBLANK over the range", async () => {
    expect(await received('=GEAR.SEE(IF(ISBLANK(A1:D1),"",A1:D1))', [[null, 0, "x", true]], "zero")).toEqual([[["", 0, "x", true]]]);
  });
  it("a trailing argument that is left out as null when the parameters are declared", async () => {
    const calls: unknown[][] = [];
    const shapes = new Map([["GEAR.SEE", [{}, {}, { dimensionality: "matrix" }]]]);
    await valueOf(
      "=GEAR.SEE(1)",
      [],
      {
        "GEAR.SEE": (...values: unknown[]) => {
          calls.push(values);
          return 1;
        },
      },
      { shapes },
    );
    expect(calls).toEqual([[1, null, [[null]]]]);
  });
  it("an error among the arguments is the result, and the function is not called", async () => {
    expect(await received("=GEAR.SEE(A1)", [["=1/0"]])).toEqual([]);
    expect(await valueOf("=GEAR.SEE(A1)", [["=1/0"]], { "GEAR.SEE": () => 1 })).toBe("#DIV/0!");
  });
  it("a function name in any case", async () => {
    expect(await valueOf("=gear.twice(21)", [], { "GEAR.TWICE": (n: number) => 2 * n })).toBe(42);
  });
  it("a range for a scalar parameter is worked out cell by cell", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [[1, "=GEAR.TWICE(A1:A2)"], [2]]);
    await calculator({ "GEAR.TWICE": (n: number) => 2 * n }, { shapes: new Map([["GEAR.TWICE", [{ type: "number" }]]]) }).recalculate(book);
    expect([shown(sheet, 0, 1), shown(sheet, 1, 1)]).toEqual([2, 4]);
  });
  it("a repeating parameter is refused by name", async () => {
    const shapes = new Map([["GEAR.ALL", [{ repeating: true }]]]);
    await expect(valueOf("=GEAR.ALL(1)", [], { "GEAR.ALL": () => 1 }, { shapes })).rejects.toThrow("GEAR.ALL has a repeating parameter");
  });
});

describe("what comes back from a worksheet function", () => {
  it("a number with all its digits", async () => {
    // 2.5 - 2.3 is 0.20000000000000018 in doubles; a rounded 0.2 would hide what the engine has to cope with.
    expect(await valueOf("=GEAR.MINUS(2.5,2.3)", [], { "GEAR.MINUS": (a: number, b: number) => a - b })).toBe(2.5 - 2.3);
    expect(await valueOf("=A1/B1", [[208, 29]])).toBe(208 / 29);
  });
  it("a text that looks like a number stays a text", async () => {
    expect(await valueOf("=GEAR.TEXT()", [], { "GEAR.TEXT": () => "0012" })).toBe("0012");
  });
  it("an error with its sentence", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [['=GEAR.LENGTH("wide")', '=IFERROR(A1,"none")', "=A1+1"]]);
    await calculator({
      "GEAR.LENGTH": () => {
        throw Object.assign(new Error("wide is not a length."), { code: "#N/A" });
      },
    }).recalculate(book);
    expect(sheet.cell(0, 0)).toEqual({ formula: '=GEAR.LENGTH("wide")', value: null, error: "#N/A", message: "wide is not a length." });
    expect(shown(sheet, 0, 1)).toBe("none");
    expect(shown(sheet, 0, 2)).toBe("#N/A");
  });
  it("an exception without a code is #VALUE!", async () => {
    expect(
      await valueOf("=GEAR.BAD()", [], {
        "GEAR.BAD": () => {
          throw new Error("no");
        },
      }),
    ).toBe("#VALUE!");
  });
  it("NaN is #NUM!", async () => {
    expect(await valueOf("=GEAR.NAN()", [], { "GEAR.NAN": () => NaN })).toBe("#NUM!");
  });
  it("an empty text from a formula is not a blank cell", async () => {
    expect(await valueOf("=ISBLANK(A1)", [['=IF(TRUE,"",1)']])).toBe(false);
  });
});

describe("array results", () => {
  const judged: Record<string, WorksheetFunction> = {
    "GEAR.COUNTDOWN": (n: number) => Array.from({ length: n }, (_, i) => [n - i, `row ${String(i)}`]),
  };

  it("fill the cells beside and below, and shrink with their input", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [[3, null, "=GEAR.COUNTDOWN(A1)"]]);
    const calc = calculator(judged);
    await calc.recalculate(book);
    expect([0, 1, 2].map((row) => [shown(sheet, row, 2), shown(sheet, row, 3)])).toEqual([
      [3, "row 0"],
      [2, "row 1"],
      [1, "row 2"],
    ]);
    await calc.recalculate(book);
    expect(shown(sheet, 2, 3)).toBe("row 2");
    sheet.at(0, 0).value = 2;
    await calc.recalculate(book);
    expect([0, 1, 2].map((row) => [shown(sheet, row, 2), shown(sheet, row, 3)])).toEqual([
      [2, "row 0"],
      [1, "row 1"],
      [null, null],
    ]);
  });
  it("that find no room show #SPILL!, until there is room", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [
      [2, null, "=GEAR.COUNTDOWN(A1)"],
      [null, null, "in the way"],
    ]);
    const calc = calculator(judged);
    await calc.recalculate(book);
    expect([shown(sheet, 0, 2), shown(sheet, 1, 2), shown(sheet, 0, 3)]).toEqual(["#SPILL!", "in the way", null]);
    sheet.at(1, 2).value = null;
    await calc.recalculate(book);
    expect([shown(sheet, 0, 2), shown(sheet, 1, 2)]).toEqual([2, 1]);
  });
  it("read from a file are results, not something in the way", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [
      ["=GEAR.COUNTDOWN(2)", "row 0"],
      [1, "row 1"],
    ]);
    Object.assign(sheet.at(0, 0), { value: 2, spill: { row: 0, column: 0, rows: 2, columns: 2 } });
    await calculator(judged).recalculate(book);
    expect([shown(sheet, 0, 0), shown(sheet, 1, 1)]).toEqual([2, "row 1"]);
    expect(sheet.cell(0, 0)?.spill).toEqual({ row: 0, column: 0, rows: 2, columns: 2 });
  });
  it("end with their formula", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [["=GEAR.COUNTDOWN(3)"]]);
    const calc = calculator(judged);
    await calc.recalculate(book);
    sheet.rows.get(0)?.set(0, { value: "typed over" });
    await calc.recalculate(book);
    expect([shown(sheet, 0, 0), shown(sheet, 0, 1), shown(sheet, 2, 0)]).toEqual(["typed over", null, null]);
  });
  it("can be read by other formulas", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [["=SUM(GEAR.COUNTDOWN(3))", "=SUM(D1:D3)", null, "=GEAR.COUNTDOWN(3)"]]);
    await calculator(judged).recalculate(book);
    expect([shown(sheet, 0, 0), shown(sheet, 0, 1)]).toEqual([6, 6]);
  });
});

describe("a register as a table", () => {
  /** Headings in row 4, `rows` items, two readings, three formula columns. */
  function register(rows: number): { book: Book; sheet: Sheet } {
    const book = new Book();
    const sheet = book.addSheet("Register");
    fill(sheet, [["Register"], ["Basis", null, "standard"]]);
    fill(sheet, [["Id", "As new", "Measured", "Remarks", "Verdict", "Share used", "Next due"]], 3);
    for (let i = 0; i < rows; i += 1) {
      fill(
        sheet,
        [
          [
            `H${String(i + 1)}`,
            50,
            i % 10 === 9 ? null : 50 - (i % 8),
            null,
            '=GEAR.VERDICT(Gear[[#Headers],[Id]:[Remarks]],IF(ISBLANK(Gear[@[Id]:[Remarks]]),"",Gear[@[Id]:[Remarks]]),$C$2)',
            '=IF(ISNUMBER([@Measured]),([@[As new]]-[@Measured])/5,"")',
            "=TODAY()+365",
          ],
        ],
        4 + i,
      );
    }
    book.tables.push({
      id: "1",
      name: "Gear",
      sheet,
      box: { row: 3, column: 0, rows: rows + 1, columns: 7 },
      style: "TableStyleMedium2",
      showBanded: true,
      filters: new Map(),
    });
    return { book, sheet };
  }
  let calls = 0;
  const functions: Record<string, WorksheetFunction> = {
    "GEAR.VERDICT": (headings: unknown[][], row: unknown[][], basis: unknown) => {
      calls += 1;
      const at = (heading: string): unknown => row[0]?.[headings[0]?.indexOf(heading) ?? -1];
      const asNew = at("As new");
      const measured = at("Measured");
      if (basis !== "standard" || typeof asNew !== "number" || typeof measured !== "number") return "NO VERDICT";
      return (asNew - measured) / asNew > 0.1 ? "REMOVE" : "KEEP";
    },
  };

  it("judges each row by its headings, with blank readings as empty text", async () => {
    const { book, sheet } = register(10);
    await calculator(functions, { blank: "zero" }).recalculate(book);
    expect(Array.from({ length: 10 }, (_, i) => shown(sheet, 4 + i, 4))).toEqual([
      "KEEP",
      "KEEP",
      "KEEP",
      "KEEP",
      "KEEP",
      "KEEP",
      "REMOVE",
      "REMOVE",
      "KEEP",
      "NO VERDICT",
    ]);
    expect(shown(sheet, 4 + 3, 5)).toBe(0.6);
  });

  it("works out only what depends on an edit", async () => {
    const { book, sheet } = register(20);
    const calc = calculator(functions);
    await calc.recalculate(book);
    calls = 0;
    sheet.at(4, 2).value = 40;
    const told: string[] = [];
    book.listen((change) => {
      if (change.kind === "cells") told.push(change.by);
    });
    await calc.recalculate(book);
    expect(calls).toBe(1);
    expect([shown(sheet, 4, 4), shown(sheet, 4, 5), shown(sheet, 5, 4)]).toEqual(["REMOVE", 2, "KEEP"]);
    expect(told).toEqual(["calc"]);
  });

  it("judges a new row when the table has grown, and all rows when a heading is renamed", async () => {
    const { book, sheet } = register(3);
    const calc = calculator(functions);
    await calc.recalculate(book);
    fill(sheet, [["H9", 50, 30, null, sheet.cell(4, 4)?.formula ?? ""]], 7);
    const table = book.tables[0];
    if (table) table.box = { ...table.box, rows: 5 };
    await calc.recalculate(book);
    expect(shown(sheet, 7, 4)).toBe("REMOVE");
    sheet.at(3, 2).value = "Reading";
    await calc.recalculate(book);
    expect([shown(sheet, 4, 4), shown(sheet, 4, 5)]).toEqual(["NO VERDICT", "#REF!"]);
    expect(sheet.cell(4, 5)?.message).toBe('Gear has no column named "Measured".');
    sheet.at(3, 2).value = "Measured";
    await calc.recalculate(book);
    expect([shown(sheet, 4, 4), shown(sheet, 4, 5)]).toEqual(["KEEP", 0]);
  });

  it("puts a result back that was overwritten without a change of formula", async () => {
    const { book, sheet } = register(3);
    const calc = calculator(functions);
    await calc.recalculate(book);
    sheet.at(4, 4).value = null;
    sheet.rows.get(5)?.set(4, { value: null, formula: sheet.cell(5, 4)?.formula ?? "" });
    await calc.recalculate(book);
    expect([shown(sheet, 4, 4), shown(sheet, 5, 4)]).toEqual(["KEEP", "KEEP"]);
  });

  it("comes to the same in every row as the formula written out for that row", async () => {
    const book = new Book();
    const sheet = book.addSheet("Log");
    fill(sheet, [["Id", "Now", "Own", "Share", "Place", "Above"]], 2, 1);
    book.tables.push({
      id: "1",
      name: "T",
      sheet,
      box: { row: 2, column: 1, rows: 41, columns: 6 },
      style: "",
      showBanded: false,
      filters: new Map(),
    });
    book.names.set("Most", "=Log!$C$43");
    for (let row = 3; row < 43; row += 1) {
      fill(sheet, [[`H-${String(row)}`, row * 2]], row, 1);
      sheet.at(row, 3).formula = '=IF([@Now]>T[[#Headers],[Now]],"",T[@Id]&"/"&ROW()-ROW(T[[#Headers],[Id]]))';
      sheet.at(row, 4).formula = "=T[@Now]/SUM(T[Now])*$C$44";
      sheet.at(row, 5).formula = "=SUM(T[@[Now]:[Now]],$B$1)-Most";
      sheet.at(row, 6).formula = `=C${String(row)}`;
    }
    sheet.at(43, 2).value = 100;
    const calculating = calculator();
    await calculating.recalculate(book);
    const sum = Array.from({ length: 40 }, (_, at) => (at + 3) * 2).reduce((a, b) => a + b);
    const check = (row: number): void => {
      const now = sheet.cell(row, 2)!.value as number;
      expect(shown(sheet, row, 3)).toBe(`H-${String(row)}/${String(row - 2)}`);
      expect(shown(sheet, row, 4)).toBeCloseTo((now / (sum - 6 + (sheet.cell(3, 2)!.value as number))) * 100, 9);
      expect(shown(sheet, row, 5)).toBe(now - 84);
    };
    for (let row = 3; row < 43; row += 1) check(row);
    expect([shown(sheet, 4, 6), shown(sheet, 42, 6)]).toEqual([6, 82]);
    // The row for which the formula was written out is gone; the others go on.
    sheet.rows.get(3)!.delete(3);
    sheet.at(3, 4).formula = "=1";
    sheet.at(3, 2).value = 26;
    await calculating.recalculate(book);
    for (let row = 4; row < 43; row += 1) check(row);
    expect(shown(sheet, 3, 4)).toBe(1);
  });

  it("follows a formula that is changed, removed and put on another sheet", async () => {
    const { book, sheet } = register(3);
    const calc = calculator(functions);
    await calc.recalculate(book);
    const notes = book.addSheet("Notes");
    notes.at(0, 0).formula = '=COUNTIF(Gear[Verdict],"KEEP")';
    await calc.recalculate(book);
    expect(shown(notes, 0, 0)).toBe(3);
    const cell = sheet.at(4, 4);
    delete cell.formula;
    cell.value = "REMOVE";
    await calc.recalculate(book);
    expect(shown(notes, 0, 0)).toBe(2);
    notes.at(0, 0).formula = '=COUNTIF(Gear[Verdict],"REMOVE")';
    await calc.recalculate(book);
    expect(shown(notes, 0, 0)).toBe(1);
    sheet.rows.clear();
    await calc.recalculate(book);
    expect(shown(notes, 0, 0)).toBe("#REF!");
  });

  it("changes every result when blank cells are handed over in another way", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [[null, "=GEAR.SEEN(A1)"]]);
    const calc = calculator({ "GEAR.SEEN": (value: unknown) => JSON.stringify(value) });
    const seen: unknown[] = [];
    for (const mode of ["null", "zero", "empty"] as const) {
      calc.blank = mode;
      await calc.recalculate(book);
      seen.push(shown(sheet, 0, 1));
    }
    expect(seen).toEqual(["null", "0", '""']);
  });

  it("works the dates out again when the day changes, and not before", async () => {
    const book = new Book();
    const sheet = book.addSheet("Sheet1");
    fill(sheet, [[46_400, '=IF(A1<TODAY(),"OVERDUE","CURRENT")']]);
    let day = 46_400;
    const calc = calculator({}, { today: () => day });
    await calc.recalculate(book);
    await calc.recalculate(book);
    expect([shown(sheet, 0, 1), calc.last.formulas]).toEqual(["CURRENT", 0]);
    day += 1;
    await calc.recalculate(book);
    expect([shown(sheet, 0, 1), calc.last.formulas]).toEqual(["OVERDUE", 1]);
  });

  it("passes that are asked for at the same time end with the book up to date", async () => {
    const { book, sheet } = register(5);
    const calc = calculator(functions);
    const first = calc.recalculate(book);
    sheet.at(4, 2).value = 10;
    await Promise.all([first, calc.recalculate(book)]);
    expect(shown(sheet, 4, 4)).toBe("REMOVE");
  });

  it("200 rows of eight formulas follow one edit in well under a second", async () => {
    const { book, sheet } = register(200);
    for (let i = 0; i < 200; i += 1) {
      fill(
        sheet,
        [
          [
            '=IF([@Verdict]="REMOVE",1,0)',
            "=[@[As new]]*2",
            "=[@Measured]+1",
            '=IFERROR([@Measured]/[@[As new]],"")',
            '=IF([@[Next due]]<TODAY(),"OVERDUE","CURRENT")',
          ],
        ],
        4 + i,
        7,
      );
    }
    fill(sheet, [["Out", "Twice", "Plus", "Ratio", "State"]], 3, 7);
    const table = book.tables[0];
    if (table) table.box = { ...table.box, columns: 12 };
    const calc = calculator(functions);
    await calc.recalculate(book);
    const whole = calc.last;
    sheet.at(50, 2).value = 33;
    await calc.recalculate(book);
    console.info(
      `200 x 8: all ${whole.milliseconds.toFixed(0)} ms (${String(whole.formulas)} formulas), one edit ${calc.last.milliseconds.toFixed(0)} ms (${String(calc.last.formulas)} formulas)`,
    );
    expect(shown(sheet, 50, 4)).toBe("REMOVE");
    // The verdict, the share used, and the three formulas that read the verdict or the measurement.
    expect(calc.last.formulas).toBe(5);
    expect(calc.last.milliseconds).toBeLessThan(1000);
  });
});

describe("a calculation that does not end", () => {
  it("is told in a sentence, and the next one begins afresh", async () => {
    const book = new Book();
    const sheet = book.addSheet("Log");
    // The result fills the cell that the formula hangs on, and so takes itself back.
    fill(sheet, [['=IF(A2="",{1;2},7)']]);
    const calculating = calculator();
    await expect(calculating.recalculate(book)).rejects.toThrow(/^The formulas did not come to an end, .*\.$/);
    sheet.at(0, 0).formula = "=1+2";
    await calculating.recalculate(book);
    expect(shown(sheet, 0, 0)).toBe(3);
  });

  it("frees the add-in that waited for it", async () => {
    const book = new Book();
    book.addSheet("Log").at(0, 0).formula = "=1+1";
    const host = new Host(book, { calculator: { recalculate: () => Promise.reject(new Error("The formulas did not come to an end.")) } });
    const body = { AutoKeepReference: false, Actions: [], ObjectPaths: {} };
    await host.type("Log", "B1", 1).catch(() => undefined);
    (host as unknown as { state: { stale: boolean } }).state.stale = true;
    expect(await host.answer(JSON.stringify(body))).toEqual({
      ok: false,
      code: "GeneralException",
      message: "The formulas did not come to an end.",
    });
    expect((await host.answer(JSON.stringify(body))).ok).toBe(true);
  });
});

describe("conditional formats", () => {
  function coloured(): { book: Book; sheet: Sheet; told: string[]; calc: WorkbookCalculator } {
    const book = new Book();
    const sheet = book.addSheet("Register");
    fill(
      sheet,
      [
        ["KEEP", 10, 1],
        ["REMOVE", 20, 2],
        ["KEEP", 30, 3],
      ],
      4,
    );
    sheet.rules = [
      { id: "1", box: { row: 4, column: 0, rows: 100, columns: 3 }, formula: '=$A5="REMOVE"', fill: "#F8CBCB", stopIfTrue: true },
      { id: "2", box: { row: 4, column: 1, rows: 3, columns: 2 }, formula: "=B5>=20", bold: true, stopIfTrue: false },
    ];
    const told: string[] = [];
    const calc = calculator({}, { onRules: (changed) => told.push(changed.name) });
    return { book, sheet, told, calc };
  }

  it("hold for whole rows, and cell by cell where the column is not fixed", async () => {
    const { book, sheet, told, calc } = coloured();
    await calc.recalculate(book);
    const at = (row: number, column: number): string =>
      calc
        .rulesAt(sheet, row, column)
        .map((rule) => rule.id)
        .join();
    expect([at(5, 0), at(5, 2), at(4, 0), at(6, 1), at(6, 2), at(5, 1), at(5, 3)]).toEqual(["1", "1", "", "2", "", "1", ""]);
    expect(told).toEqual(["Register"]);
  });
  it("follow an edit, a new rule and a rule that is gone", async () => {
    const { book, sheet, told, calc } = coloured();
    await calc.recalculate(book);
    sheet.at(6, 0).value = "REMOVE";
    await calc.recalculate(book);
    expect(calc.rulesAt(sheet, 6, 1).map((rule) => rule.id)).toEqual(["1"]);
    await calc.recalculate(book);
    expect(told).toEqual(["Register", "Register"]);
    sheet.rules = sheet.rules.slice(1);
    await calc.recalculate(book);
    expect(calc.rulesAt(sheet, 6, 1).map((rule) => rule.id)).toEqual(["2"]);
    expect(calc.rulesAt(sheet, 6, 0)).toEqual([]);
  });
  it("leave the sheet's own cells alone", async () => {
    const { book, sheet, calc } = coloured();
    await calc.recalculate(book);
    expect(sheet.used()).toEqual({ row: 4, column: 0, rows: 3, columns: 3 });
  });
});
