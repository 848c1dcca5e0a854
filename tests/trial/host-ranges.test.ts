import { expect, test } from "vitest";
import { Book } from "../../src/trial/book/book";
import { openBook } from "../setup-excel";

async function codeOf(work: () => Promise<unknown>): Promise<string> {
  try {
    await work();
  } catch (error) {
    return (error as OfficeExtension.Error).code;
  }
  return "no error";
}

const onSheet = <T>(work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => Promise<T>): Promise<T> =>
  Excel.run(async (context) => work(context.workbook.worksheets.getItem("Sheet1"), context));

test("one value, one formula and one format stand for every cell of the range", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("A1:B2");
    (range as { numberFormat: unknown }).numberFormat = "0.0";
    (range as { values: unknown }).values = 7;
    range.load("values, numberFormat");
    await context.sync();
    expect(range.values).toEqual([
      [7, 7],
      [7, 7],
    ]);
    expect(range.numberFormat).toEqual([
      ["0.0", "0.0"],
      ["0.0", "0.0"],
    ]);
    (range as { formulas: unknown }).formulas = "=SUM(Gear[Now])*$D$1";
    range.load("formulas");
    await context.sync();
    expect(range.formulas.flat()).toEqual(Array(4).fill("=SUM(Gear[Now])*$D$1"));
  });
});

test("one formula with a relative address for many cells is refused by name", async () => {
  openBook();
  await expect(
    onSheet(async (sheet, context) => {
      (sheet.getRange("A1:A2") as { formulas: unknown }).formulas = "=B1*2";
      await context.sync();
    }),
  ).rejects.toThrow("=B1*2");
});

test.each([
  ["=SUM(A1", "parenthesis"],
  ['="open', "quote"],
  ["=Gear[Id", "bracket"],
])("the broken formula %s is refused", async (formula, part) => {
  openBook();
  await expect(
    onSheet(async (sheet, context) => {
      sheet.getRange("A1").formulas = [[formula]];
      await context.sync();
    }),
  ).rejects.toMatchObject({ code: "InvalidArgument", message: expect.stringContaining(part) as string });
});

test("ranges beside, inside and around a range", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("B2:D5");
    const found = {
      cell: range.getCell(1, 2),
      row: range.getRow(3),
      column: range.getColumn(0),
      lastRow: range.getLastRow(),
      offset: range.getOffsetRange(1, -1),
      resized: range.getResizedRange(2, 1),
      around: range.getBoundingRect("F9"),
      rows: range.getEntireRow(),
      columns: range.getEntireColumn(),
      indexes: sheet.getRangeByIndexes(4, 1, 2, 3),
      one: sheet.getCell(0, 27),
      shared: range.getIntersectionOrNullObject("D5:E9"),
      none: range.getIntersectionOrNullObject("F6"),
    };
    for (const each of Object.values(found)) each.load("address");
    await context.sync();
    expect(found.none.isNullObject).toBe(true);
    const addresses = Object.fromEntries(
      Object.entries(found)
        .filter(([name]) => name !== "none")
        .map(([name, each]) => [name, each.address.replace("Sheet1!", "")]),
    );
    expect(addresses).toEqual({
      cell: "D3",
      row: "B5:D5",
      column: "B2:B5",
      lastRow: "B5:D5",
      offset: "A3:C6",
      resized: "B2:E7",
      around: "B2:F9",
      rows: "2:5",
      columns: "B:D",
      indexes: "B5:D6",
      one: "AB1",
      shared: "D5",
    });
  });
  expect(
    await codeOf(() =>
      onSheet(async (sheet, context) => {
        sheet.getRange("A1").getOffsetRange(-1, 0).load("address");
        await context.sync();
      }),
    ),
  ).toBe("InvalidArgument");
});

test("the used range counts values alone or formats too; an empty sheet has none", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    const none = sheet.getUsedRangeOrNullObject();
    await context.sync();
    expect(none.isNullObject).toBe(true);
    sheet.getRange("B2").values = [["x"]];
    sheet.getRange("D9").format.fill.color = "#FFC000";
    const all = sheet.getUsedRange().load("address"),
      values = sheet.getUsedRange(true).load("address");
    await context.sync();
    expect([all.address, values.address]).toEqual(["Sheet1!B2:D9", "Sheet1!B2"]);
  });
});

test("formats: set, read back, null where cells differ", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("A1:B1");
    range.format.fill.color = "red";
    range.format.font.bold = true;
    range.format.font.color = "#1F4E79";
    range.format.font.size = 14;
    range.format.wrapText = true;
    range.format.horizontalAlignment = "Center";
    range.format.verticalAlignment = "Top";
    range.format.columnWidth = 60;
    range.format.rowHeight = 30;
    range.format.borders.getItem("EdgeBottom").style = "Continuous";
    sheet.getRange("B1").format.font.bold = false;
    range.load(
      "format/wrapText, format/columnWidth, format/rowHeight, format/horizontalAlignment, format/fill/color, format/font/bold, format/font/size",
    );
    const border = range.format.borders.getItem("EdgeBottom").load("style, color");
    await context.sync();
    expect([range.format.fill.color, range.format.font.bold, range.format.font.size]).toEqual(["#FF0000", null, 14]);
    expect([range.format.wrapText, range.format.horizontalAlignment, range.format.columnWidth, range.format.rowHeight]).toEqual([
      true,
      "Center",
      60,
      30,
    ]);
    expect([border.style, border.color]).toEqual(["Continuous", "#000000"]);
    range.format.fill.clear();
    range.load("format/fill/color");
    await context.sync();
    expect(range.format.fill.color).toBe("#FFFFFF");
  });
  expect(book.sheet("Sheet1")?.cell(0, 0)?.style).toMatchObject({ bold: true, color: "#1F4E79", align: "Center", valign: "Top" });
});

test("a whole column formatted as text keeps later entries as text", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    (sheet.getRange("C:C") as { numberFormat: unknown }).numberFormat = "@";
    await context.sync();
    const cell = sheet.getRange("C40");
    cell.values = [["1/2"]];
    cell.load("values, numberFormat");
    const untouched = sheet.getRange("C41").load("numberFormat");
    await context.sync();
    expect([cell.values, cell.numberFormat, untouched.numberFormat]).toEqual([[["1/2"]], [["@"]], [["@"]]]);
  });
});

test("autofit makes a column as wide as its longest text", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:B2").values = [
      ["a".repeat(30), "b"],
      ["c", "d"],
    ];
    sheet.getRange("A:B").format.autofitColumns();
    await context.sync();
  });
  const widths = book.sheet("Sheet1")?.columnWidths;
  expect(widths?.get(0)).toBeGreaterThan(150);
  expect(widths?.get(1)).toBeLessThan(20);
});

test("clear takes contents, formats or all", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("A1:A3");
    range.values = [[1], [2], [3]];
    range.numberFormat = [["0.0"], ["0.0"], ["0.0"]];
    sheet.getRange("A1").clear("Contents");
    sheet.getRange("A2").clear("Formats");
    sheet.getRange("A3").clear();
    await context.sync();
  });
  const cells = [0, 1, 2].map((row) => {
    const cell = book.sheet("Sheet1")?.cell(row, 0);
    return [cell?.value, cell?.format];
  });
  expect(cells).toEqual([
    [null, "0.0"],
    [2, undefined],
    [null, undefined],
  ]);
});

test("hidden rows and columns: all, none, some", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("2:3").rowHidden = true;
    sheet.getRange("B:B").columnHidden = true;
    const all = sheet.getRange("A2:A3").load("rowHidden, hidden"),
      some = sheet.getRange("A1:A3").load("rowHidden"),
      column = sheet.getRange("B9").load("columnHidden");
    await context.sync();
    expect([all.rowHidden, all.hidden, some.rowHidden, column.columnHidden]).toEqual([true, true, null, true]);
    sheet.getRange("A1:A3").rowHidden = false;
    some.load("rowHidden");
    await context.sync();
    expect(some.rowHidden).toBe(false);
  });
});

test("a protected sheet refuses writes, formats, tables and rules; unlocked cells and reading stay open", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:B2").values = [
      ["Id", "Now"],
      ["S-1", 18],
    ];
    sheet.getRange("C1").format.protection.locked = false;
    sheet.protection.protect({ allowAutoFilter: true });
    sheet.load("protection/protected");
    await context.sync();
    expect(sheet.protection.protected).toBe(true);
  });
  const refused: ((sheet: Excel.Worksheet) => void)[] = [
    (sheet) => {
      sheet.getRange("A2").values = [["no"]];
    },
    (sheet) => {
      sheet.getRange("A2").format.fill.color = "#FF0000";
    },
    (sheet) => {
      (sheet.getRange("A2") as { numberFormat: unknown }).numberFormat = "@";
    },
    (sheet) => {
      sheet.tables.add("A1:B2", true);
    },
    (sheet) => {
      sheet.getRange("A2").conditionalFormats.add("Custom");
    },
    (sheet) => {
      sheet.getRange("A2").dataValidation.rule = { list: { inCellDropDown: true, source: "a,b" } };
    },
    (sheet) => {
      sheet.getRange("A:A").format.columnWidth = 90;
    },
    (sheet) => {
      sheet.getRange("A1:A2").clear();
    },
  ];
  for (const write of refused) {
    expect(
      await codeOf(() =>
        onSheet(async (sheet, context) => {
          write(sheet);
          await context.sync();
        }),
      ),
    ).toBe("AccessDenied");
  }
  await onSheet(async (sheet, context) => {
    sheet.getRange("C1").values = [["open"]];
    const read = sheet.getRange("A2").load("values");
    await context.sync();
    expect(read.values).toEqual([["S-1"]]);
    sheet.protection.unprotect();
    sheet.getRange("A2").values = [["yes"]];
    await context.sync();
  });
  expect(book.sheet("Sheet1")?.cell(1, 0)?.value).toBe("yes");
});

test("a password is asked for again", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    sheet.protection.protect({}, "tern");
    await context.sync();
  });
  expect(
    await codeOf(() =>
      onSheet(async (sheet, context) => {
        sheet.protection.unprotect("gull");
        await context.sync();
      }),
    ),
  ).toBe("AccessDenied");
  expect(
    await codeOf(() =>
      onSheet(async (sheet, context) => {
        sheet.protection.unprotect("tern");
        await context.sync();
      }),
    ),
  ).toBe("no error");
});

test("conditional formats: a formula rule with its look; a new rule comes first", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("A2:D9");
    for (const [formula, fill] of [
      ['=$D2="REMOVE"', "#F8CBAD"],
      ['=$D2="EXAMINE"', "#FFE699"],
    ] as const) {
      const format = range.conditionalFormats.add(Excel.ConditionalFormatType.custom);
      format.custom.rule.formula = formula;
      format.custom.format.fill.color = fill;
      format.custom.format.font.bold = true;
      format.stopIfTrue = true;
    }
    const formats = range.conditionalFormats.load("items/type, items/priority, items/stopIfTrue");
    const count = range.conditionalFormats.getCount();
    await context.sync();
    expect([count.value, formats.items.map((item) => [item.type, item.priority, item.stopIfTrue])]).toEqual([
      2,
      [
        ["Custom", 0, true],
        ["Custom", 1, true],
      ],
    ]);
    formats.items[1]?.custom.rule.load("formula");
    await context.sync();
    expect(formats.items[1]?.custom.rule.formula).toBe('=$D2="REMOVE"');
    const last = formats.items[1];
    if (last) last.priority = 0;
    await context.sync();
  });
  expect(book.sheet("Sheet1")?.rules.map((rule) => [rule.formula, rule.fill])).toEqual([
    ['=$D2="REMOVE"', "#F8CBAD"],
    ['=$D2="EXAMINE"', "#FFE699"],
  ]);
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:F20").conditionalFormats.clearAll();
    await context.sync();
  });
  expect(book.sheet("Sheet1")?.rules).toEqual([]);
});

test("rules can't hold table references or functions of the add-in; other kinds of formats are not modelled", async () => {
  openBook();
  const withRule = (formula: string): Promise<string> =>
    codeOf(() =>
      onSheet(async (sheet, context) => {
        sheet.getRange("A2").conditionalFormats.add("Custom").custom.rule.formula = formula;
        await context.sync();
      }),
    );
  expect(await withRule("=Gear[@Id]=1")).toBe("InvalidArgument");
  expect(await withRule('=GEAR.VERDICT(A1:B1,A2:B2)="REMOVE"')).toBe("InvalidArgument");
  expect(await withRule('=$A2="GEAR.VERDICT("')).toBe("no error");
  await expect(
    onSheet(async (sheet, context) => {
      sheet.getRange("A2").conditionalFormats.add("ColorScale");
      await context.sync();
    }),
  ).rejects.toThrow("ColorScale");
});

test("data validation: list with prompt, cut out where another rule is set", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("A2:A10");
    range.dataValidation.rule = { list: { inCellDropDown: true, source: "hook,shackle" } };
    range.dataValidation.prompt = { title: "Kind", message: "Pick one", showPrompt: true };
    range.dataValidation.errorAlert = { title: "Kind", message: "Not in the list", showAlert: true, style: "Warning" };
    range.dataValidation.ignoreBlanks = false;
    sheet.getRange("A5").dataValidation.rule = { list: { inCellDropDown: true, source: sheet.getRange("F1:F3") } };
    const first = sheet.getRange("A2:A4").dataValidation.load("rule, type, prompt, ignoreBlanks"),
      all = range.dataValidation.load("type"),
      none = sheet.getRange("B2").dataValidation.load("type, rule");
    await context.sync();
    expect([first.type, first.rule, first.prompt.message, first.ignoreBlanks]).toEqual([
      "List",
      { list: { inCellDropDown: true, source: "hook,shackle" } },
      "Pick one",
      false,
    ]);
    expect([all.type, none.type]).toEqual(["Inconsistent", "None"]);
  });
  const validations = book.sheet("Sheet1")?.validations ?? [];
  expect(validations.map(({ box, rule }) => [box.row, box.rows, (rule["list"] as { source: string }).source])).toEqual([
    [1, 3, "hook,shackle"],
    [5, 5, "hook,shackle"],
    [4, 1, "=Sheet1!$F$1:$F$3"],
  ]);
  const tooLong = Array.from({ length: 60 }, (_, at) => `choice ${at}`).join(",");
  expect(
    await codeOf(() =>
      onSheet(async (sheet, context) => {
        sheet.getRange("A2").dataValidation.rule = { list: { inCellDropDown: true, source: tooLong } };
        await context.sync();
      }),
    ),
  ).toBe("InvalidArgument");
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:A20").dataValidation.clear();
    await context.sync();
  });
  expect(book.sheet("Sheet1")?.validations).toEqual([]);
});

test("page, frozen panes, tab and grid lines of a sheet", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    sheet.pageLayout.orientation = Excel.PageOrientation.landscape;
    sheet.pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 };
    sheet.pageLayout.setPrintTitleRows("$1:$4");
    sheet.pageLayout.setPrintArea("A1:H40");
    sheet.pageLayout.headersFooters.defaultForAllPages.leftFooter = "standard";
    sheet.pageLayout.headersFooters.defaultForAllPages.rightFooter = "&P / &N";
    sheet.freezePanes.freezeAt(sheet.getRange("A1:B4"));
    sheet.tabColor = "#1F4E79";
    sheet.showGridlines = false;
    const frozen = sheet.freezePanes.getLocationOrNullObject().load("address");
    sheet.load("pageLayout/orientation, pageLayout/zoom");
    await context.sync();
    expect([frozen.address, sheet.pageLayout.orientation, sheet.pageLayout.zoom.horizontalFitToPages]).toEqual([
      "Sheet1!A1:B4",
      "Landscape",
      1,
    ]);
  });
  const sheet = book.sheet("Sheet1");
  expect(sheet?.page).toMatchObject({
    orientation: "Landscape",
    fitWide: 1,
    titleRows: "$1:$4",
    printArea: "A1:H40",
    leftFooter: "standard",
    rightFooter: "&P / &N",
  });
  expect([sheet?.frozenRows, sheet?.frozenColumns, sheet?.tabColor, sheet?.showGridlines]).toEqual([4, 2, "#1F4E79", false]);
  await onSheet(async (worksheet, context) => {
    worksheet.freezePanes.unfreeze();
    await context.sync();
  });
  expect([sheet?.frozenRows, sheet?.frozenColumns]).toEqual([0, 0]);
});

test("sheets: add, name, order, hide, delete with tables and names", async () => {
  const { book } = openBook();
  await Excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    const log = worksheets.add("Log");
    log.getRange("A1:B2").values = [
      ["Id", "Now"],
      ["S-1", 18],
    ];
    log.tables.add("A1:B2", true).name = "Readings";
    names.add("Kinds", log.getRange("A1:A2"));
    worksheets.getItem("Sheet1").getRange("C1").formulas = [["=Log!A2&'Log'!B2&\"Log!\""]];
    log.position = 0;
    log.name = "Old log";
    worksheets.load("items/name, items/id");
    await context.sync();
    expect(worksheets.items.map((item) => item.name)).toEqual(["Old log", "Sheet1"]);
    log.activate();
    const active = worksheets.getActiveWorksheet().load("name"),
      formula = worksheets.getItem("Sheet1").getRange("C1").load("formulas"),
      count = worksheets.getCount();
    await context.sync();
    expect([active.name, formula.formulas[0]?.[0], count.value]).toEqual(["Old log", "='Old log'!A2&'Old log'!B2&\"Log!\"", 2]);
    const kinds = names.getItem("Kinds").getRange().load("values");
    await context.sync();
    expect(kinds.values).toEqual([["Id"], ["S-1"]]);
  });
  expect(book.names.get("Kinds")).toBe("='Old log'!$A$1:$A$2");
  expect(
    await codeOf(() =>
      Excel.run(async (context) => {
        context.workbook.worksheets.add("sheet1");
        await context.sync();
      }),
    ),
  ).toBe("ItemAlreadyExists");
  expect(
    await codeOf(() =>
      Excel.run(async (context) => {
        context.workbook.worksheets.add("a/b");
        await context.sync();
      }),
    ),
  ).toBe("InvalidArgument");
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Old log").delete();
    await context.sync();
  });
  expect([book.sheets.length, book.tables.length, book.names.size, book.active.name]).toEqual([1, 0, 0, "Sheet1"]);
  expect(
    await codeOf(() =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").delete();
        await context.sync();
      }),
    ),
  ).toBe("InvalidOperation");
});

test("the selection is read and moved", async () => {
  const host = openBook(new Book());
  await onSheet(async (sheet, context) => {
    sheet.getRange("B3:C4").select();
    const selected = context.workbook.getSelectedRange().load("address"),
      active = context.workbook.getActiveCell().load("address");
    await context.sync();
    expect([selected.address, active.address]).toEqual(["Sheet1!B3:C4", "Sheet1!B3"]);
  });
  host.select("Sheet1", "D9");
  await Excel.run(async (context) => {
    const selected = context.workbook.getSelectedRange().load("address");
    await context.sync();
    expect(selected.address).toBe("Sheet1!D9");
  });
});

/** Excel specifications and limits (support.microsoft.com): 255 characters in a header or footer; its codes (&L, &C, &R) are among them. */
test("a footer takes 255 characters with its codes, and one more is refused", async () => {
  const { book } = openBook();
  const put = (left: number, right: number): Promise<void> =>
    onSheet(async (sheet, context) => {
      const foot = sheet.pageLayout.headersFooters.defaultForAllPages;
      foot.leftFooter = "a".repeat(left);
      foot.rightFooter = "b".repeat(right);
      await context.sync();
    });
  await put(100, 151);
  expect(book.sheets[0]?.page.rightFooter).toHaveLength(151);
  expect(await codeOf(() => put(100, 152))).toBe("InvalidArgument");
  expect(book.sheets[0]?.page.rightFooter).toHaveLength(151);
});
