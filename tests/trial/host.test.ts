import { expect, test } from "vitest";
import { Book } from "../../src/trial/book/book";
import { type Cell } from "../../src/trial/book/book";
import { hasFormulas } from "../../src/trial/host/protocol/state";
import { eventsDelivered, openBook } from "../setup-excel";

/** Fails unless the work ends in an error of the client library; gives the error back. */
async function failure(work: () => Promise<unknown>): Promise<OfficeExtension.Error> {
  try {
    await work();
  } catch (error) {
    return error as OfficeExtension.Error;
  }
  throw new Error("nothing failed");
}

const onSheet = <T>(work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => Promise<T>): Promise<T> =>
  Excel.run(async (context) => work(context.workbook.worksheets.getItem("Sheet1"), context));

test("values are written and read back through the real library", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:B2").values = [
      ["Id", "New mm"],
      ["S-1", 20],
    ];
    await context.sync();
    const used = sheet.getUsedRange().load("values, address, rowCount, valueTypes");
    await context.sync();
    expect(used.values).toEqual([
      ["Id", "New mm"],
      ["S-1", 20],
    ]);
    expect(used.address).toBe("Sheet1!A1:B2");
    expect(used.rowCount).toBe(2);
    expect(used.valueTypes).toEqual([
      ["String", "String"],
      ["String", "Double"],
    ]);
  });
});

test("a value that was not loaded can't be read", async () => {
  openBook();
  const error = await failure(() =>
    onSheet(async (sheet, context) => {
      const range = sheet.getRange("A1");
      await context.sync();
      return range.values;
    }),
  );
  expect(error.code).toBe("PropertyNotLoaded");
});

test("an object used after Excel.run has ended is refused", async () => {
  openBook();
  let kept: Excel.Range | undefined;
  await onSheet(async (sheet, context) => {
    kept = sheet.getRange("A1");
    await context.sync();
  });
  expect(() => {
    if (kept) kept.values = [[1]];
  }).toThrow(expect.objectContaining({ code: "InvalidObjectPath" }));
});

test("a range kept over several syncs is still the same range", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    const range = sheet.getRange("B2:C3");
    await context.sync();
    range.values = [
      [1, 2],
      [3, 4],
    ];
    await context.sync();
    const cell = range.getCell(1, 1).load("values, address");
    await context.sync();
    expect([cell.address, cell.values]).toEqual(["Sheet1!C3", [[4]]]);
  });
});

test("a missing sheet is a null object or ItemNotFound, and the error names the statement", async () => {
  openBook();
  await Excel.run(async (context) => {
    const none = context.workbook.worksheets.getItemOrNullObject("Nowhere");
    const range = none.getUsedRangeOrNullObject();
    await context.sync();
    expect(none.isNullObject).toBe(true);
    expect(range.isNullObject).toBe(true);
  });
  const error = await failure(() =>
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Nowhere").getRange("A1").load("values");
      await context.sync();
    }),
  );
  expect(error.code).toBe("ItemNotFound");
  expect(error.debugInfo.statement).toContain("getItem");
});

test("what is written before the failing action stays, what comes after it does not happen", async () => {
  const { book } = openBook();
  await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.getRange("A1").values = [["first"]];
      context.workbook.worksheets.getItem("Nowhere").activate();
      sheet.getRange("A2").values = [["second"]];
      await context.sync();
    }),
  );
  const sheet = book.sheet("Sheet1");
  expect([sheet?.cell(0, 0)?.value, sheet?.cell(1, 0)?.value]).toEqual(["first", undefined]);
});

test("a member that is not modelled fails by name", async () => {
  openBook();
  const chart = await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.charts.add("Line", sheet.getRange("A1"));
      await context.sync();
    }),
  );
  expect([chart.code, chart.message]).toEqual(["ApiNotFound", expect.stringContaining("Worksheet.Charts")]);
  const sort = await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.getRange("A1:A3").sort.apply([{ key: 0 }]);
      await context.sync();
    }),
  );
  expect(sort.message).toContain("Range.Sort");
});

test("the requirement sets of the manifest's minimum are claimed, and the library refuses what is newer", async () => {
  openBook();
  const { requirements } = Office.context;
  expect([requirements.isSetSupported("ExcelApi", "1.12"), requirements.isSetSupported("ExcelApi", "1.13")]).toEqual([true, false]);
  expect([requirements.isSetSupported("SharedRuntime", "1.1"), requirements.isSetSupported("SharedRuntime", "1.2")]).toEqual([true, false]);
  const error = await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.onProtectionChanged.add(async () => undefined);
      await context.sync();
    }),
  );
  expect(error.code).toBe("ApiNotFound");
});

test("a host can claim newer requirement sets", () => {
  openBook(new Book(), { requirements: { ExcelApi: "1.14" } });
  expect(Office.context.requirements.isSetSupported("ExcelApi", "1.14")).toBe(true);
  expect(Office.context.requirements.isSetSupported("CustomFunctionsRuntime", "1.1")).toBe(false);
});

test("each sync is one request in the log, with its size", async () => {
  const host = openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1").values = [["x"]];
    await context.sync();
    sheet.getRange("A2").values = [["y".repeat(1000)]];
    await context.sync();
  });
  const [first, second] = host.requests;
  // A third request gives the tracked objects back when Excel.run ends; it waits for no answer.
  expect(host.requests.length).toBeGreaterThanOrEqual(2);
  expect((second?.bytes ?? 0) - (first?.bytes ?? 0)).toBeGreaterThan(900);
});

test("a request over 5 MB is refused as a whole", async () => {
  const { book } = openBook();
  const rows = Array.from({ length: 200 }, () => ["z".repeat(30_000)]);
  const error = await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.getRange("A1:A200").values = rows;
      await context.sync();
    }),
  );
  expect(error.code).toBe("RequestPayloadSizeLimitExceeded");
  expect(book.sheet("Sheet1")?.used()).toBeNull();
});

test("a response over 5 MB is refused", async () => {
  const book = new Book();
  const sheet = book.addSheet("Sheet1");
  for (let row = 0; row < 200; row += 1) sheet.at(row, 0).value = "z".repeat(30_000);
  openBook(book);
  const error = await failure(() =>
    onSheet(async (worksheet, context) => {
      worksheet.getRange("A1:A200").load("values");
      await context.sync();
    }),
  );
  expect(error.code).toBe("ResponsePayloadSizeLimitExceeded");
});

test("while the user edits a cell a batch fails, unless it may wait", async () => {
  const host = openBook();
  host.editing = true;
  const error = await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.getRange("A1").values = [["now"]];
      await context.sync();
    }),
  );
  expect(error.code).toBe("InvalidOperationInCellEditMode");
  const waiting = Excel.run({ delayForCellEdit: true }, async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [["later"]];
    await context.sync();
  });
  await eventsDelivered();
  expect(host.book.sheet("Sheet1")?.cell(0, 0)).toBeUndefined();
  host.editing = false;
  await waiting;
  expect(host.book.sheet("Sheet1")?.cell(0, 0)?.value).toBe("later");
});

test("20,000 cells are written in the library's own pieces and read back", async () => {
  openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:J2000").values = Array.from({ length: 2000 }, (_, row) => Array<number>(10).fill(row));
    await context.sync();
    const back = sheet.getRange("A1:J2000").load("values");
    await context.sync();
    expect([back.values[0]?.[0], back.values[1999]?.[9]]).toEqual([0, 1999]);
  });
});

test("rows and columns must fit the range", async () => {
  openBook();
  const error = await failure(() =>
    onSheet(async (sheet, context) => {
      sheet.getRange("A1:B2").values = [[1, 2, 3]];
      await context.sync();
    }),
  );
  expect(error.code).toBe("InvalidArgument");
});

test("settings are kept in the book when they are saved", async () => {
  const book = new Book();
  book.settings.set("basis", '["standard"]');
  openBook(book);
  const { settings } = Office.context.document;
  expect(settings.get("basis")).toEqual(["standard"]);
  settings.set("place", { sheet: "Log", row: 4 });
  expect(book.settings.has("place")).toBe(false);
  const status = await new Promise((done) => settings.saveAsync((result) => done(result.status)));
  expect(status).toBe(Office.AsyncResultStatus.Succeeded);
  expect(JSON.parse(book.settings.get("place") ?? "")).toEqual({ sheet: "Log", row: 4 });
  settings.remove("basis");
  await new Promise((done) => settings.saveAsync(done));
  expect([...book.settings.keys()]).toEqual(["place"]);
});

test("a ribbon button calls its command and waits until it is completed", async () => {
  const host = openBook();
  const order: string[] = [];
  Office.actions.associate("BUILDREGISTER", (event: Office.AddinCommands.Event) => {
    order.push(event.source.id);
    setTimeout(() => {
      order.push("done");
      event.completed();
    }, 10);
  });
  await host.pressButton("BUILDREGISTER");
  expect(order).toEqual(["BUILDREGISTER", "done"]);
  await expect(host.pressButton("UNKNOWN")).rejects.toThrow("UNKNOWN");
});

test("the add-in's own runtime: start with the workbook, show the pane", async () => {
  const host = openBook();
  await Office.addin.setStartupBehavior(Office.StartupBehavior.load);
  expect(host.runtime.startup).toBe("Background");
  expect(await Office.addin.getStartupBehavior()).toBe(Office.StartupBehavior.load);
  await Office.addin.hide();
  expect(host.runtime.visibility).toBe("Background");
  await Office.addin.showAsTaskpane();
  expect(host.runtime.visibility).toBe("Visible");
});

test("worksheet functions are called through the library's runtime: blanks as they are, errors with their sentence", async () => {
  const host = openBook();
  CustomFunctions.associate("TRIALARGS", (...given: unknown[]) => JSON.stringify(given.slice(0, -1)));
  CustomFunctions.associate("TRIALMISSING", () => {
    // The library's own error class, which is no Error to the type checker.
    throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "no measurement") as unknown as Error;
  });
  expect(await host.invoke("TRIALARGS", [null, 0, "", [[1, null]]])).toEqual({ ok: true, value: '[null,0,"",[[1,null]]]' });
  expect(await host.invoke("TRIALMISSING", [])).toEqual({ ok: false, error: "#N/A", message: "no measurement" });
  expect(await host.invoke("TRIALUNKNOWN", [])).toMatchObject({ ok: false });
});

test("formulas are calculated before they are read, also within one batch, and only when something changed", async () => {
  const book = new Book();
  book.addSheet("Sheet1");
  let runs = 0;
  const doubled = (cell: Cell | undefined): number => 2 * Number(cell?.value ?? 0);
  const calculator = {
    recalculate: async (of: Book): Promise<void> => {
      runs += 1;
      await Promise.resolve();
      const cell = of.sheet("Sheet1")?.cell(0, 1);
      if (!cell) return;
      cell.value = doubled(of.sheet("Sheet1")?.cell(0, 0));
      delete cell.error;
    },
  };
  openBook(book, { calculator });
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:B1").formulas = [[21, "=A1*2"]];
    const range = sheet.getRange("B1").load("values, formulas");
    await context.sync();
    expect([range.values, range.formulas]).toEqual([[[42]], [["=A1*2"]]]);
    const before = runs;
    const again = sheet.getRange("B1").load("values");
    await context.sync();
    expect([again.values, runs]).toEqual([[[42]], before]);
    context.workbook.application.suspendApiCalculationUntilNextSync();
    sheet.getRange("A1").values = [[5]];
    const stale = sheet.getRange("B1").load("values");
    await context.sync();
    expect(stale.values).toEqual([[42]]);
    const fresh = sheet.getRange("B1").load("values");
    await context.sync();
    expect(fresh.values).toEqual([[10]]);
  });
});

test("without a calculator a formula shows that it waits", async () => {
  const { book } = openBook();
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1").formulas = [["=1+1"]];
    await context.sync();
  });
  expect(book.sheet("Sheet1")?.cell(0, 0)).toMatchObject({ formula: "=1+1", error: "#BUSY!" });
  expect(hasFormulas(book)).toBe(true);
});
