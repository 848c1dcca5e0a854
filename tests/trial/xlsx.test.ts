import ExcelJS from "exceljs";
import { describe, expect, test } from "vitest";
import { Book } from "../../src/trial/book/book";
import { type Cell, type Sheet } from "../../src/trial/book/book";
import { readXlsx, writeXlsx } from "../../src/trial/file/xlsx";
import { Archive } from "../../src/trial/file/zip";
import { formulaFromFile, formulaToFile } from "../../src/trial/file/formulas";

/** A workbook as the file library writes it, for reading what other programs may have made. */
async function fileWith(fill: (book: ExcelJS.Workbook) => void): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  fill(book);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

async function sheetOf(fill: (sheet: ExcelJS.Worksheet, book: ExcelJS.Workbook) => void): Promise<{ book: Book; sheet: Sheet }> {
  const book = await readXlsx(await fileWith((file) => fill(file.addWorksheet("Log"), file)));
  const sheet = book.sheet("Log");
  if (!sheet) throw new Error("the sheet is missing");
  return { book, sheet };
}

async function roundTrip(book: Book): Promise<Book> {
  return readXlsx(await writeXlsx(book));
}

async function partOf(bytes: Uint8Array, name: string): Promise<string> {
  const text = await Archive.read(bytes).text(name);
  if (text === null) throw new Error(`no ${name}`);
  return text;
}

/** Puts another text in place of one part of a file. */
async function withPart(bytes: Uint8Array, name: string, change: (xml: string) => string): Promise<Uint8Array> {
  const archive = Archive.read(bytes);
  await archive.replace(name, change(await partOf(bytes, name)));
  return archive.write();
}

describe("reading cells", () => {
  test("numbers, texts, booleans, blanks, errors", async () => {
    const { sheet } = await sheetOf((log) => {
      log.addRow(["S-1", 18.5, true, null, { error: "#N/A" }]);
    });
    expect([0, 1, 2, 3, 4].map((column) => sheet.cell(0, column))).toEqual([
      { value: "S-1" },
      { value: 18.5 },
      { value: true },
      undefined,
      { value: null, error: "#N/A" },
    ]);
  });

  test.each([
    [46053, 46053],
    [60, 60],
    [59, 59],
    [46053.3125, 46053.3125],
  ])("the date with serial %f comes out as %f", async (serial, expected) => {
    const { sheet } = await sheetOf((log) => {
      log.getCell("A1").value = serial;
      log.getCell("A1").numFmt = "yyyy-mm-dd";
    });
    expect(sheet.cell(0, 0)).toEqual({ value: expected, format: "yyyy-mm-dd" });
  });

  test("dates of the 1904 system become the same days of the 1900 system", async () => {
    // 44591 days after 1 January 1904 is 31 January 2026.
    const { sheet } = await sheetOf((log, file) => {
      file.properties.date1904 = true;
      log.getCell("A1").value = 44591;
      log.getCell("A1").numFmt = "yyyy-mm-dd";
    });
    expect(sheet.cell(0, 0)?.value).toBe(46053);
  });

  test("rich text and links become plain text; a link and a note are kept", async () => {
    const { sheet } = await sheetOf((log) => {
      log.getCell("A1").value = { richText: [{ text: "hook ", font: { bold: true } }, { text: "No. 3" }] };
      log.getCell("A2").value = { text: "certificate", hyperlink: "https://example.org/c3" };
      log.getCell("A3").value = "S-3";
      log.getCell("A3").note = "seen in the yard";
    });
    expect([sheet.cell(0, 0)?.value, sheet.cell(1, 0), sheet.cell(2, 0)?.note]).toEqual([
      "hook No. 3",
      expect.objectContaining({ value: "certificate", link: "https://example.org/c3" }),
      "seen in the yard",
    ]);
  });

  test("formulas come with their last result, shared ones moved to their row, texts in them untouched", async () => {
    const { sheet } = await sheetOf((log) => {
      log.getCell("B1").value = { formula: 'A1&" A1"', result: "x A1", shareType: "shared", ref: "B1:B3" } as ExcelJS.CellValue;
      log.getCell("B2").value = { sharedFormula: "B1", result: "y A1" };
      log.getCell("B3").value = { sharedFormula: "B1", result: { error: "#REF!" } };
    });
    expect([0, 1, 2].map((row) => sheet.cell(row, 1))).toEqual([
      { value: "x A1", formula: '=A1&" A1"' },
      { value: "y A1", formula: '=A2&" A1"' },
      { value: null, error: "#REF!", formula: '=A3&" A1"' },
    ]);
  });

  test("merged cells: the value stands once, the merge is kept", async () => {
    const { sheet } = await sheetOf((log) => {
      log.getCell("A1").value = "Inspection log";
      log.mergeCells("A1:D1");
    });
    expect([sheet.used(), sheet.merges]).toEqual([
      { row: 0, column: 0, rows: 1, columns: 1 },
      [{ row: 0, column: 0, rows: 1, columns: 4 }],
    ]);
  });

  test("colours of the theme with a tint, and of the old palette", async () => {
    const { sheet } = await sheetOf((log) => {
      log.getCell("A1").value = "x";
      log.getCell("A1").fill = { type: "pattern", pattern: "solid", fgColor: { theme: 4, tint: 0.5 } as Partial<ExcelJS.Color> };
      log.getCell("A1").font = { color: { indexed: 10 } as unknown as Partial<ExcelJS.Color>, bold: true };
    });
    expect(sheet.cell(0, 0)?.style).toMatchObject({
      fill: expect.stringMatching(/^#[0-9A-F]{6}$/) as string,
      color: "#FF0000",
      bold: true,
    });
  });
});

describe("formulas in the file", () => {
  const pairs: [shown: string, inFile: string][] = [
    ["=GEAR.VERDICT(A1:C1,A2:C2)", "_xldudf_GEAR_VERDICT(A1:C1,A2:C2)"],
    ['=MAXIFS(A:A,B:B,"GEAR.VERDICT(")', '_xlfn.MAXIFS(A:A,B:B,"GEAR.VERDICT(")'],
    ["=FILTER(A1:A9,B1:B9>0)", "_xlfn._xlws.FILTER(A1:A9,B1:B9>0)"],
    ["=Gear[@Id]&Gear[@[Last date]]", "Gear[[#This Row],[Id]]&Gear[[#This Row],[Last date]]"],
    [
      '=GEAR.REASON(Gear[[#Headers],[Id]:[Now]],IF(ISBLANK(Gear[@[Id]:[Now]]),"",Gear[@[Id]:[Now]]))',
      '_xldudf_GEAR_REASON(Gear[[#Headers],[Id]:[Now]],IF(ISBLANK(Gear[[#This Row],[Id]:[Now]]),"",Gear[[#This Row],[Id]:[Now]]))',
    ],
    ["=IFS(A1>0,LET(worn,A1*2,worn+1))", "_xlfn.IFS(A1>0,_xlfn.LET(_xlpm.worn,A1*2,_xlpm.worn+1))"],
    ["=SUM(Gear[Now])", "SUM(Gear[Now])"],
  ];
  test.each(pairs)("%s", (shown, inFile) => {
    expect(formulaToFile(shown, null)).toBe(inFile);
    expect(formulaFromFile(inFile)).toBe(shown);
  });

  test("inside its table a reference may leave the name out; the file names it", () => {
    expect(formulaToFile("=[@Now]*2", "Gear")).toBe("Gear[[#This Row],[Now]]*2");
  });

  test("names of functions are known without regard to case, and by a list where the namespace is another", () => {
    expect(formulaFromFile("_xldudf_gear_verdict(A1)")).toBe("=GEAR.VERDICT(A1)");
    expect(formulaFromFile("_xldudf_a_b_c(A1)", ["A.B_C"])).toBe("=A.B_C(A1)");
    expect(formulaFromFile("_xldudf_OTHER_THING(A1)")).toBe("=_xldudf_OTHER_THING(A1)");
  });
});

/** A register as the add-in builds it, with something of everything. */
function register(): Book {
  const book = new Book();
  const sheet = book.addSheet("Gear register");
  const rows: (string | number | boolean | null)[][] = [
    ["Id", "Kind", "Now\nmm", "Verdict", "Next due"],
    ["S-1", "hook", 18.5, "KEEP", 46053],
    ["S-2", "shackle", null, "NO VERDICT", 46100.5],
  ];
  rows.forEach((row, at) =>
    row.forEach((value, column) => {
      if (value !== null) sheet.at(at + 3, column).value = value;
    }),
  );
  sheet.at(0, 0).value = "Gear register";
  sheet.at(0, 0).style = {
    bold: true,
    italic: true,
    size: 16,
    fontName: "Arial",
    color: "#1F4E79",
    fill: "#DDEBF7",
    align: "Center",
    valign: "Center",
    wrap: true,
    indent: 1,
    underline: "Single",
    strikethrough: true,
    locked: false,
    borders: { Bottom: { style: "Continuous", weight: "Medium", color: "#000000" } },
  };
  for (const row of [4, 5]) {
    sheet.at(row, 2).format = "0.0";
    sheet.at(row, 4).format = "yyyy-mm-dd";
    sheet.at(row, 3).formula = "=GEAR.VERDICT(Gear[[#Headers],[Id]:[Kind]],Gear[@[Id]:[Kind]])";
  }
  sheet.at(6, 0).format = "@";
  sheet.at(7, 0).value = "1 1/4";
  sheet.at(7, 0).format = "@";
  const failed = sheet.at(8, 0);
  failed.formula = "=1/0";
  failed.error = "#DIV/0!";
  sheet.columnDefaults.set(6, { format: "@", style: { fill: "#F2F2F2" } });
  sheet.columnWidths.set(0, 84);
  sheet.rowHeights.set(3, 30);
  sheet.hiddenRows.add(5);
  sheet.hiddenColumns.add(6);
  sheet.frozenRows = 4;
  sheet.frozenColumns = 1;
  sheet.merges.push({ row: 0, column: 0, rows: 1, columns: 5 });
  sheet.showGridlines = false;
  sheet.tabColor = "#1F4E79";
  sheet.protected = true;
  sheet.protection = { options: { allowAutoFilter: true } };
  Object.assign(sheet.page, {
    orientation: "Landscape",
    fitWide: 1,
    titleRows: "$1:$4",
    titleColumns: "$A:$A",
    printArea: "A1:E9",
    leftFooter: "standard",
    centerFooter: "31 January 2026",
    rightFooter: "&P / &N",
    centerHeader: "Register",
    paperSize: "A4",
  });
  sheet.rules.push(
    {
      id: "a",
      box: { row: 4, column: 0, rows: 2, columns: 5 },
      formula: '=$D5="REMOVE"',
      fill: "#F8CBAD",
      color: "#9C0006",
      bold: true,
      stopIfTrue: true,
    },
    { id: "b", box: { row: 4, column: 0, rows: 2, columns: 5 }, formula: "=$E5<TODAY()", fill: "#FFE699", stopIfTrue: false },
  );
  sheet.validations.push(
    {
      box: { row: 4, column: 1, rows: 2, columns: 1 },
      rule: { list: { inCellDropDown: true, source: "hook,shackle" } },
      ignoreBlanks: true,
      prompt: { title: "Kind", message: 'Pick "one" & go', showPrompt: true },
      errorAlert: { title: "Kind", message: "Not in the list", showAlert: true, style: "Warning" },
    },
    {
      box: { row: 0, column: 7, rows: 1_048_576, columns: 1 },
      rule: { list: { inCellDropDown: true, source: "=Kinds" } },
      ignoreBlanks: false,
      errorAlert: { title: "", message: "", showAlert: true, style: "Stop" },
    },
    {
      box: { row: 4, column: 2, rows: 2, columns: 1 },
      rule: { decimal: { formula1: 0, formula2: "=$A$1", operator: "Between" } },
      ignoreBlanks: true,
      errorAlert: { title: "", message: "", showAlert: true, style: "Stop" },
    },
  );
  book.tables.push({
    id: "9",
    name: "Gear",
    sheet,
    box: { row: 3, column: 0, rows: 3, columns: 5 },
    style: "TableStyleLight9",
    showBanded: true,
    filters: new Map([[1, ["hook", ""]]]),
    firstColumn: true,
  });
  const notes = book.addSheet("O'Brien's notes");
  notes.at(0, 0).value = "hook";
  notes.visibility = "Hidden";
  book.names.set("Kinds", "='O''Brien''s notes'!$A$1:$A$6");
  book.names.set("Limit", '=MAXIFS(Gear[Id],Gear[Kind],"hook")');
  book.settings.set("place", JSON.stringify({ sheet: "Log" }));
  book.settings.set("long", JSON.stringify("x".repeat(70_000)));
  book.active = sheet;
  return book;
}

describe("a register written and read back", () => {
  test("every cell, with format, style, formula and result", async () => {
    const before = register(),
      after = await roundTrip(before);
    const cellsOf = (book: Book): [string, Cell][] =>
      book.sheets.flatMap((sheet) =>
        [...sheet.rows].flatMap(([row, cells]) =>
          [...cells]
            .filter(([, cell]) => Object.values(cell).some((value) => value !== null && value !== undefined))
            .map(([column, cell]): [string, Cell] => [`${sheet.name} ${row} ${column}`, cell]),
        ),
      );
    expect(Object.fromEntries(cellsOf(after))).toEqual(Object.fromEntries(cellsOf(before)));
  });

  test("layout, page, protection, names, settings, active sheet", async () => {
    const before = register(),
      after = await roundTrip(before);
    for (const sheet of before.sheets) {
      const read = after.sheet(sheet.name);
      const looks = (of: Sheet | undefined): unknown =>
        of && {
          widths: [...of.columnWidths],
          heights: [...of.rowHeights],
          rows: [...of.hiddenRows],
          columns: [...of.hiddenColumns],
          defaults: [...of.columnDefaults],
          frozen: [of.frozenRows, of.frozenColumns],
          merges: of.merges,
          grid: of.showGridlines,
          tab: of.tabColor,
          visibility: of.visibility,
          protected: of.protected,
          protection: of.protection,
        };
      expect(looks(read)).toEqual(looks(sheet));
      expect(read?.page).toMatchObject(sheet.page);
    }
    expect([...after.names]).toEqual([...before.names]);
    expect([...after.settings]).toEqual([...before.settings]);
    expect([after.active.name, after.sheets.map((sheet) => sheet.name), after.notKept]).toEqual([
      "Gear register",
      ["Gear register", "O'Brien's notes"],
      [],
    ]);
  });

  test("rules in their order with their look, validation, tables with filter", async () => {
    const before = register(),
      after = await roundTrip(before);
    const rules = (book: Book): unknown => book.sheets[0]?.rules.map((rule) => ({ ...rule, id: "" }));
    expect(rules(after)).toEqual(rules(before));
    expect(after.sheets[0]?.validations).toEqual(before.sheets[0]?.validations);
    const tables = (book: Book): unknown => book.tables.map((table) => ({ ...table, id: "", sheet: table.sheet.name }));
    expect(tables(after)).toEqual(tables(before));
  });

  test("the parts of the file say what Excel needs: column formulas, escaped headings, print ranges, one chosen sheet", async () => {
    const bytes = await writeXlsx(register());
    const table = await partOf(bytes, "xl/tables/table1.xml");
    expect(table).toContain('name="Now_x000a_mm"');
    expect(table).toContain(
      '<calculatedColumnFormula array="1">_xldudf_GEAR_VERDICT(Gear[[#Headers],[Id]:[Kind]],Gear[[#This Row],[Id]:[Kind]])</calculatedColumnFormula>',
    );
    const workbook = await partOf(bytes, "xl/workbook.xml");
    expect(workbook).toContain(
      '<definedName name="_xlnm.Print_Titles" localSheetId="0">&apos;Gear register&apos;!$A:$A,&apos;Gear register&apos;!$1:$4</definedName>',
    );
    expect(workbook).toContain("$A$1:$E$9");
    const sheet = await partOf(bytes, "xl/worksheets/sheet1.xml");
    expect(sheet).toContain('priority="1" stopIfTrue="1"');
    expect(sheet.indexOf("<dataValidations")).toBeGreaterThan(sheet.indexOf("<conditionalFormatting"));
    expect(sheet.indexOf("<dataValidations")).toBeLessThan(sheet.indexOf("<pageMargins"));
    expect(sheet).toContain('tabSelected="1"');
    expect(await partOf(bytes, "xl/worksheets/sheet2.xml")).not.toContain("tabSelected");
  });

  test("a second round changes nothing", async () => {
    const once = await roundTrip(register()),
      twice = await roundTrip(once);
    expect([...(twice.sheets[0]?.rows ?? [])]).toEqual([...(once.sheets[0]?.rows ?? [])]);
    expect(twice.sheets[0]?.validations).toEqual(once.sheets[0]?.validations);
  });
});

test("a formula that still waits for its result is written without one", async () => {
  const book = new Book();
  Object.assign(book.addSheet("Log").at(0, 0), { formula: "=GEAR.WEARPCT(A2,A3)", error: "#BUSY!" });
  expect((await roundTrip(book)).sheet("Log")?.cell(0, 0)).toEqual({ value: null, formula: "=GEAR.WEARPCT(A2,A3)" });
});

test("an array formula keeps the box it fills", async () => {
  const book = new Book();
  Object.assign(book.addSheet("Log").at(0, 0), { value: 1, formula: "=SEQUENCE(3)", spill: { row: 0, column: 0, rows: 3, columns: 1 } });
  expect((await roundTrip(book)).sheet("Log")?.cell(0, 0)).toEqual({
    value: 1,
    formula: "=SEQUENCE(3)",
    spill: { row: 0, column: 0, rows: 3, columns: 1 },
  });
});

test("a validation list that an older program put into the file's extension is read", async () => {
  const bytes = await withPart(
    await fileWith((file) => {
      file.addWorksheet("Log").addRow(["x"]);
      file.addWorksheet("Lists").addRow(["hook"]);
    }),
    "xl/worksheets/sheet1.xml",
    (xml) =>
      xml.replace(
        "</worksheet>",
        '<extLst><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:dataValidations xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" count="1">' +
          '<x14:dataValidation type="list" allowBlank="1"><x14:formula1><xm:f>Lists!$A$1:$A$4</xm:f></x14:formula1><xm:sqref>B2:B9 D2</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst></worksheet>',
      ),
  );
  const validations = (await readXlsx(bytes)).sheet("Log")?.validations;
  expect(validations?.map(({ box, rule }) => [box.column, box.rows, rule])).toEqual([
    [1, 8, { list: { inCellDropDown: true, source: "=Lists!$A$1:$A$4" } }],
    [3, 1, { list: { inCellDropDown: true, source: "=Lists!$A$1:$A$4" } }],
  ]);
});

test("what is not kept is named", async () => {
  const { book } = await sheetOf((log, file) => {
    log.addConditionalFormatting({
      ref: "A1:A9",
      rules: [
        { type: "colorScale", priority: 1, cfvo: [{ type: "min" }, { type: "max" }], color: [{ argb: "FFFF0000" }, { argb: "FF00FF00" }] },
      ],
    });
    log.addImage(
      file.addImage({
        base64: "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
        extension: "png",
      }),
      "B2:C3",
    );
  });
  expect(book.notKept).toEqual(["the pictures", "1 conditional formats on Log that are not made by a formula"]);
});

describe("files that are no workbook", () => {
  const sentence = /not an \.xlsx workbook, or it is damaged/;
  test("a text, nothing, an archive of other things", async () => {
    await expect(readXlsx(new TextEncoder().encode("Id,Kind,Now\nS-1,hook,18.5\n"))).rejects.toThrow(sentence);
    await expect(readXlsx(new Uint8Array())).rejects.toThrow(sentence);
    const empty = new Uint8Array(22);
    new DataView(empty.buffer).setUint32(0, 0x06054b50, true);
    await expect(readXlsx(empty)).rejects.toThrow(sentence);
  });

  test("a workbook that is cut short anywhere", async () => {
    const whole = await writeXlsx(register());
    for (const share of [0.1, 0.5, 0.9, 0.999])
      await expect(readXlsx(whole.slice(0, Math.floor(whole.length * share)))).rejects.toThrow(sentence);
  });

  test("a workbook with a byte changed in a sheet", async () => {
    const bytes = await writeXlsx(register());
    const name = new TextEncoder().encode("xl/worksheets/sheet1.xml");
    const at = bytes.findIndex((_, start) => name.every((byte, offset) => bytes[start + offset] === byte));
    bytes[at + name.length + 40] = (bytes[at + name.length + 40] ?? 0) ^ 0xff;
    await expect(readXlsx(bytes)).rejects.toThrow(sentence);
  });

  test("a locked workbook or an old .xls", async () => {
    await expect(readXlsx(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Uint8Array(600)]))).rejects.toThrow(
      /password|old \.xls/,
    );
  });
});

test("10,000 rows are written and read within a few seconds", async () => {
  const book = new Book();
  const sheet = book.addSheet("Log");
  for (let row = 0; row < 10_000; row += 1)
    for (let column = 0; column < 12; column += 1) sheet.at(row, column).value = column % 2 ? row * 0.5 : `S-${row}`;
  const started = performance.now();
  const after = await roundTrip(book);
  expect(after.sheet("Log")?.cell(9_999, 11)?.value).toBe(4999.5);
  expect(performance.now() - started).toBeLessThan(20_000);
});
