import { expect, test } from "vitest";
import { eventsDelivered, openBook } from "../setup-excel";

const onSheet = <T>(work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => Promise<T>): Promise<T> =>
  Excel.run(async (context) => work(context.workbook.worksheets.getItem("Sheet1"), context));

test("a user's entry and the add-in's own write are told apart, with the old and the new value", async () => {
  const host = openBook();
  const seen: Excel.WorksheetChangedEventArgs[] = [];
  await onSheet(async (sheet, context) => {
    sheet.onChanged.add(async (event) => {
      seen.push(event);
    });
    await context.sync();
  });
  await host.type("Sheet1", "C4", "17.9");
  await eventsDelivered();
  await onSheet(async (sheet, context) => {
    sheet.getRange("C4").values = [[17.8]];
    sheet.getRange("A1:B2").values = [
      [1, 2],
      [3, 4],
    ];
    await context.sync();
  });
  await eventsDelivered();
  expect(
    seen.map((event) => [
      event.address,
      event.source,
      (event as { triggerSource?: string }).triggerSource,
      (event.details as Partial<Excel.ChangedEventDetail> | undefined)?.valueBefore,
      (event.details as Partial<Excel.ChangedEventDetail> | undefined)?.valueAfter,
    ]),
  ).toEqual([
    ["C4", "Local", "Unknown", "", 17.9],
    ["C4", "Local", "ThisLocalAddin", 17.9, 17.8],
    ["A1:B2", "Local", "ThisLocalAddin", undefined, undefined],
  ]);
  await Excel.run(async (context) => {
    const range = seen[2]?.getRange(context).load("values");
    await context.sync();
    expect(range?.values).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
});

test("a colleague's edit comes as remote", async () => {
  const host = openBook();
  const sources: string[] = [];
  await Excel.run(async (context) => {
    context.workbook.worksheets.onChanged.add(async (event) => {
      sources.push(event.source);
    });
    await context.sync();
  });
  await host.type("Sheet1", "A1", "x", "coauthor");
  await eventsDelivered();
  expect(sources).toEqual(["Remote"]);
});

test("a table hears of its own cells only", async () => {
  const host = openBook();
  const seen: string[] = [];
  await onSheet(async (sheet, context) => {
    sheet.getRange("A1:B2").values = [
      ["Id", "Now"],
      ["S-1", 18],
    ];
    const table = sheet.tables.add("A1:B2", true);
    await context.sync();
    table.onChanged.add(async (event) => {
      seen.push(event.address);
    });
    await context.sync();
  });
  await host.type("Sheet1", "B2", 17);
  await host.type("Sheet1", "F9", "elsewhere");
  await eventsDelivered();
  expect(seen).toEqual(["B2"]);
});

test("selection, on the workbook and on the sheet", async () => {
  const host = openBook();
  const seen: string[] = [];
  await onSheet(async (sheet, context) => {
    context.workbook.onSelectionChanged.add(async () => {
      seen.push("workbook");
    });
    sheet.onSelectionChanged.add(async (event) => {
      seen.push(event.address);
    });
    await context.sync();
  });
  host.select("Sheet1", "B2:B4");
  host.select("Sheet1", "B2:B4");
  await eventsDelivered();
  expect(seen.sort()).toEqual(["B2:B4", "workbook"]);
});

test("sheets that are added, activated, deleted", async () => {
  const host = openBook();
  const seen: string[] = [];
  await Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.onAdded.add(async () => {
      seen.push("added");
    });
    worksheets.onDeleted.add(async () => {
      seen.push("deleted");
    });
    worksheets.onActivated.add(async (event) => {
      seen.push(`activated ${host.book.sheets.find((sheet) => sheet.id === event.worksheetId)?.name ?? "?"}`);
    });
    await context.sync();
    worksheets.add("Log").activate();
    await context.sync();
    await eventsDelivered();
    worksheets.getItem("Log").delete();
    await context.sync();
  });
  await eventsDelivered();
  expect(seen).toEqual(["added", "activated Log", "deleted", "activated Sheet1"]);
});

test("a handler that was removed hears nothing more; events can be switched off", async () => {
  const host = openBook();
  const seen: string[] = [];
  const [handler, registeredIn] = await onSheet(async (sheet, context) => {
    const added = sheet.onChanged.add(async (event) => {
      seen.push(event.address);
    });
    await context.sync();
    return [added, context] as const;
  });
  await Excel.run(async (context) => {
    context.runtime.enableEvents = false;
    await context.sync();
  });
  await host.type("Sheet1", "A1", 1);
  await Excel.run(async (context) => {
    context.runtime.enableEvents = true;
    await context.sync();
  });
  await host.type("Sheet1", "A2", 2);
  await eventsDelivered();
  await Excel.run(registeredIn, async (context) => {
    handler.remove();
    await context.sync();
  });
  await host.type("Sheet1", "A3", 3);
  await eventsDelivered();
  expect(seen).toEqual(["A2"]);
});

test("what a calculation changes is no event, and events that are not modelled fail by name", async () => {
  const host = openBook();
  const seen: string[] = [];
  await onSheet(async (sheet, context) => {
    sheet.onChanged.add(async (event) => {
      seen.push(event.address);
    });
    await context.sync();
  });
  const sheet = host.book.sheet("Sheet1");
  if (sheet) host.book.tell({ kind: "cells", sheet, box: { row: 0, column: 0, rows: 1, columns: 1 }, by: "calc" });
  await eventsDelivered();
  expect(seen).toEqual([]);
  await expect(
    onSheet(async (worksheet, context) => {
      worksheet.onCalculated.add(async () => undefined);
      await context.sync();
    }),
  ).rejects.toThrow("_RegisterCalculatedEvent");
});

test("a new workbook does not call handlers that were registered with the last one", async () => {
  openBook();
  const seen: string[] = [];
  await Excel.run(async (context) => {
    context.workbook.worksheets.onChanged.add(async (event) => {
      seen.push(event.address);
    });
    await context.sync();
  });
  const next = openBook();
  await next.type("Sheet1", "A1", 1);
  await eventsDelivered();
  expect(seen).toEqual([]);
});
