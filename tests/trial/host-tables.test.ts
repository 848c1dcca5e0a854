import { expect, test } from "vitest";
import { type Book } from "../../src/trial/book/book";
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

/** A log of three items as table Gear in A1:C4. */
async function openGear(): Promise<Book> {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:C4").values = [
      ["Id", "Kind", "Now"],
      ["S-1", "hook", 18.5],
      ["S-2", "shackle", 17.5],
      ["S-3", "hook", 19],
    ];
    sheet.tables.add("A1:C4", true).name = "Gear";
    await context.sync();
  });
  return book;
}

const gear = <T>(work: (table: Excel.Table, context: Excel.RequestContext, sheet: Excel.Worksheet) => Promise<T>): Promise<T> =>
  Excel.run(async (context) => work(context.workbook.tables.getItem("Gear"), context, context.workbook.worksheets.getItem("Sheet1")));

test("a table: name, style, ranges, columns by name and number", async () => {
  await openGear();
  await gear(async (table, context) => {
    table.style = "TableStyleLight9";
    table.showBandedRows = false;
    table.showFilterButton = false;
    table.highlightFirstColumn = true;
    table.load("id, name, style, showBandedRows, showFilterButton, highlightFirstColumn, showTotals, worksheet/name");
    const header = table.getHeaderRowRange().load("values"),
      body = table.getDataBodyRange().load("address"),
      all = table.getRange().load("address");
    const columns = table.columns.load("items/name, items/index, count"),
      byName = table.columns.getItem("kind").getDataBodyRange().load("values"),
      byNumber = table.columns.getItemAt(2).load("name");
    const rows = table.rows.load("count");
    await context.sync();
    expect([table.name, table.style, table.showBandedRows, table.showFilterButton, table.highlightFirstColumn, table.showTotals]).toEqual([
      "Gear",
      "TableStyleLight9",
      false,
      false,
      true,
      false,
    ]);
    expect([header.values, body.address, all.address, table.worksheet.name]).toEqual([
      [["Id", "Kind", "Now"]],
      "Sheet1!A2:C4",
      "Sheet1!A1:C4",
      "Sheet1",
    ]);
    expect([columns.items.map((column) => [column.index, column.name]), columns.count]).toEqual([
      [
        [0, "Id"],
        [1, "Kind"],
        [2, "Now"],
      ],
      3,
    ]);
    expect([byName.values, byNumber.name, rows.count]).toEqual([[["hook"], ["shackle"], ["hook"]], "Now", 3]);
  });
});

test("tables are found by name without regard to case, and by sheet", async () => {
  await openGear();
  await Excel.run(async (context) => {
    const { tables } = context.workbook;
    const found = tables.getItemOrNullObject("gear").load("name"),
      none = tables.getItemOrNullObject("Log");
    const onThis = context.workbook.worksheets.getItem("Sheet1").tables.load("items/name"),
      count = tables.getCount();
    const under = context.workbook.worksheets.getItem("Sheet1").getRange("C3:F9").getTables().load("items/name");
    await context.sync();
    expect([
      found.name,
      none.isNullObject,
      onThis.items.map((table) => table.name),
      count.value,
      under.items.map((table) => table.name),
    ]).toEqual(["Gear", true, ["Gear"], 1, ["Gear"]]);
  });
});

test("tables don't overlap, don't share a name, need a proper name", async () => {
  await openGear();
  expect(
    await codeOf(() =>
      onSheet(async (sheet, context) => {
        sheet.tables.add("C4:D9", true);
        await context.sync();
      }),
    ),
  ).toBe("InvalidArgument");
  const named = (name: string): Promise<string> =>
    codeOf(() =>
      onSheet(async (sheet, context) => {
        const table = sheet.tables.add("F1:G3", true);
        table.name = name;
        await context.sync();
      }),
    );
  expect(await named("GEAR")).toBe("ItemAlreadyExists");
  for (const name of ["A1", "two words", "9lives"]) {
    const book = openBook().book;
    expect([await named(name), book.tables.length]).toEqual(["InvalidArgument", 1]);
  }
});

test("headings become texts, unique and never blank", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:E2").values = [
      ["Now", "now", "", 2024, "Now"],
      [1, 2, 3, 4, 5],
    ];
    const table = sheet.tables.add("A1:E2", true);
    const header = table.getHeaderRowRange().load("values, valueTypes");
    await context.sync();
    expect(header.values[0]).toEqual(["Now", "now2", "Column3", "2024", "Now3"]);
    expect(header.valueTypes[0]).toEqual(Array(5).fill("String"));
  });
});

test("a heading that is renamed is renamed in the formulas, a table's name too", async () => {
  const book = await openGear();
  await gear(async (table, context, sheet) => {
    sheet.getRange("E1:E3").formulas = [["=SUM(Gear[Now])"], ['="Gear[Now]"&ROWS(Gear)'], ["=Gear[[#Headers],[Now]:[Kind]]"]];
    table.columns.getItem("Now").name = "Measured today";
    table.name = "Register";
    await context.sync();
  });
  const formulas = [0, 1, 2].map((row) => book.sheet("Sheet1")?.cell(row, 4)?.formula);
  expect(formulas).toEqual([
    "=SUM(Register[Measured today])",
    '="Gear[Now]"&ROWS(Register)',
    "=Register[[#Headers],[Measured today]:[Kind]]",
  ]);
});

test("a table grows when a row is written directly below it, with formats, rules and the column's formula", async () => {
  const book = await openGear();
  await gear(async (_table, context, sheet) => {
    sheet.getRange("D1:D4").values = [
      ["Verdict"],
      ["=GEAR.VERDICT(Gear[[#Headers],[Id]:[Now]],Gear[@[Id]:[Now]])"],
      ["=GEAR.VERDICT(Gear[[#Headers],[Id]:[Now]],Gear[@[Id]:[Now]])"],
      ["=GEAR.VERDICT(Gear[[#Headers],[Id]:[Now]],Gear[@[Id]:[Now]])"],
    ];
    await context.sync();
    sheet.getRange("C2:C4").numberFormat = [["0.0"], ["0.0"], ["0.0"]];
    sheet.getRange("B2:B4").dataValidation.rule = { list: { inCellDropDown: true, source: "hook,shackle" } };
    sheet.getRange("A2:D4").conditionalFormats.add("Custom").custom.rule.formula = '=$D2="REMOVE"';
    await context.sync();
    sheet.getRange("A5:C6").values = [
      ["S-4", "hook", 17],
      ["S-5", "shackle", 16],
    ];
    await context.sync();
  });
  const sheet = book.sheet("Sheet1"),
    table = book.tables[0];
  expect(table?.box).toEqual({ row: 0, column: 0, rows: 6, columns: 4 });
  expect([sheet?.cell(5, 2)?.format, sheet?.cell(5, 3)?.formula]).toEqual([
    "0.0",
    "=GEAR.VERDICT(Gear[[#Headers],[Id]:[Now]],Gear[@[Id]:[Now]])",
  ]);
  expect([sheet?.validations[0]?.box, sheet?.rules[0]?.box]).toEqual([
    { row: 1, column: 1, rows: 5, columns: 1 },
    { row: 1, column: 0, rows: 5, columns: 4 },
  ]);
});

test("a table grows by a column written directly to its right", async () => {
  const book = await openGear();
  await gear(async (table, context, sheet) => {
    sheet.getRange("D2").values = [["ok"]];
    const header = table.getHeaderRowRange().load("values");
    await context.sync();
    expect(header.values[0]).toEqual(["Id", "Kind", "Now", "Column4"]);
  });
  expect(book.tables[0]?.box.columns).toBe(4);
});

test("a formula with addresses of its own row is moved along when a table grows", async () => {
  const book = await openGear();
  await gear(async (_table, context, sheet) => {
    sheet.getRange("D1:D4").values = [["Half"], ["=C2/$C$2"], ["=C3/$C$2"], ["=C4/$C$2"]];
    await context.sync();
    sheet.getRange("A5:C5").values = [["S-4", "hook", 17]];
    await context.sync();
  });
  expect(book.sheet("Sheet1")?.cell(4, 3)?.formula).toBe("=C5/$C$2");
});

test.each([
  [
    "a blank row in between",
    (sheet: Excel.Worksheet) => {
      sheet.getRange("A6:C6").values = [["S-4", "hook", 17]];
    },
  ],
  [
    "nothing but blanks",
    (sheet: Excel.Worksheet) => {
      sheet.getRange("A5:C5").values = [["", "", ""]];
    },
  ],
  [
    "wider than the table",
    (sheet: Excel.Worksheet) => {
      sheet.getRange("A5:D5").values = [["note", 1, 2, 3]];
    },
  ],
  [
    "a validation rule waiting below",
    (sheet: Excel.Worksheet) => {
      sheet.getRange("B5").dataValidation.rule = { list: { inCellDropDown: true, source: "a,b" } };
      sheet.getRange("A5:C5").values = [["S-4", "hook", 17]];
    },
  ],
])("a table does not grow with %s", async (_case, write) => {
  const book = await openGear();
  await gear(async (_table, context, sheet) => {
    write(sheet);
    await context.sync();
  });
  expect(book.tables[0]?.box.rows).toBe(4);
});

test("a table on a protected sheet does not grow, even where cells are open", async () => {
  const book = await openGear();
  await gear(async (_table, context, sheet) => {
    sheet.getRange("A5:C5").format.protection.locked = false;
    sheet.protection.protect();
    sheet.getRange("A5:C5").values = [["S-4", "hook", 17]];
    await context.sync();
  });
  expect([book.tables[0]?.box.rows, book.sheet("Sheet1")?.cell(4, 0)?.value]).toEqual([4, "S-4"]);
});

test("rows are added at the end", async () => {
  const book = await openGear();
  await gear(async (table, context) => {
    table.rows.add(undefined, [["S-4", "hook", 17]]);
    await context.sync();
  });
  expect([book.tables[0]?.box.rows, book.sheet("Sheet1")?.cell(4, 0)?.value]).toEqual([5, "S-4"]);
});

test("a table is resized, converted, deleted; resizing is newer than the minimum", async () => {
  const book = await openGear();
  expect(
    await codeOf(() =>
      gear(async (table, context) => {
        table.resize("A1:D9");
        await context.sync();
      }),
    ),
  ).toBe("ApiNotFound");
  openBook(book, { requirements: { ExcelApi: "1.13" } });
  await gear(async (table, context) => {
    table.resize("A1:D9");
    await context.sync();
    expect(book.tables[0]?.box).toEqual({ row: 0, column: 0, rows: 9, columns: 4 });
    table.resize("A1:C5");
    table.convertToRange();
    await context.sync();
  });
  expect([book.tables.length, book.sheet("Sheet1")?.cell(1, 0)?.value]).toEqual([0, "S-1"]);
  await onSheet(async (sheet, context) => {
    sheet.tables.add("A1:C5", true).delete();
    await context.sync();
  });
  // The heading that the wider table had been given stays.
  expect([book.tables.length, book.sheet("Sheet1")?.used()]).toEqual([0, { row: 0, column: 3, rows: 1, columns: 1 }]);
});

test("a filter by values hides the other rows; filters of two columns work together; clearing shows all", async () => {
  const book = await openGear();
  const hidden = (): number[] => [...(book.sheet("Sheet1")?.hiddenRows ?? [])].sort();
  await gear(async (table, context) => {
    table.columns.getItem("Kind").filter.applyValuesFilter(["HOOK"]);
    await context.sync();
    expect(hidden()).toEqual([2]);
    table.columns.getItem("Now").filter.applyValuesFilter(["19"]);
    table.autoFilter.load("isDataFiltered, enabled");
    const filter = table.columns.getItem("Now").filter.load("criteria");
    await context.sync();
    expect([hidden(), table.autoFilter.isDataFiltered, filter.criteria.values]).toEqual([[1, 2], true, ["19"]]);
    table.columns.getItem("Kind").filter.clear();
    await context.sync();
    expect(hidden()).toEqual([1, 2]);
    table.clearFilters();
    await context.sync();
    expect(hidden()).toEqual([]);
    table.autoFilter.apply(table.getRange(), 1, { filterOn: Excel.FilterOn.values, values: ["shackle"] });
    await context.sync();
    expect(hidden()).toEqual([1, 3]);
  });
});

test("a protected sheet filters only when it allows it", async () => {
  await openGear();
  await gear(async (_table, context, sheet) => {
    sheet.protection.protect();
    await context.sync();
  });
  const filter = (): Promise<string> =>
    codeOf(() =>
      gear(async (table, context) => {
        table.columns.getItem("Kind").filter.applyValuesFilter(["hook"]);
        await context.sync();
      }),
    );
  expect(await filter()).toBe("AccessDenied");
  await gear(async (_table, context, sheet) => {
    sheet.protection.unprotect();
    sheet.protection.protect({ allowAutoFilter: true });
    await context.sync();
  });
  expect(await filter()).toBe("no error");
});

test("kinds of filters that are not modelled fail by name", async () => {
  await openGear();
  await expect(
    gear(async (table, context) => {
      table.columns.getItem("Now").filter.applyTopItemsFilter(1);
      await context.sync();
    }),
  ).rejects.toThrow("Filter.ApplyTopItemsFilter");
});
