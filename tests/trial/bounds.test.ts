/**
 * Workbooks that declare more than a sheet can hold, or unpack to more than a machine can. A sheet ends at row 1,048,576
 * and column XFD (Excel specifications and limits).
 */
import { beforeAll, describe, expect, it } from "vitest";
import type { Book } from "../../src/trial/book/book";
import { readXlsx, writeXlsx } from "../../src/trial/file/xlsx";
import { elementsOf } from "../../src/trial/file/xml";
import { Archive } from "../../src/trial/file/zip";
import { book, hookLog } from "../excel/books";

const SHEET = "xl/worksheets/sheet1.xml";
let plain: Uint8Array;
beforeAll(async () => {
  plain = await writeXlsx(book({ "Gear log": hookLog(3) }));
});
/** The workbook with one part changed. */
async function changed(part: string, change: (xml: string) => string): Promise<Uint8Array> {
  const archive = Archive.read(plain);
  await archive.replace(part, change((await archive.text(part)) ?? ""));
  return archive.write();
}
const opened = async (bytes: Uint8Array): Promise<Book | string> => readXlsx(bytes).catch((fault: unknown) => (fault as Error).message);
const inSheet = async (change: (xml: string) => string): Promise<Book | string> => opened(await changed(SHEET, change));
const withRow =
  (row: string) =>
  (xml: string): string =>
    xml.replace("</sheetData>", `${row}</sheetData>`);
const after =
  (text: string) =>
  (xml: string): string =>
    xml.replace("</sheetData>", `</sheetData>${text}`);

describe("a workbook that goes beyond a sheet", () => {
  it.each([
    ["a row number", withRow('<row r="99999999"><c r="A99999999"><v>1</v></c></row>')],
    ["a row number that a 32-bit number can't hold", withRow('<row r="4294967295"><c r="A4294967295"><v>1</v></c></row>')],
    ["a column", withRow('<row r="9"><c r="ZZZZZZ9"><v>1</v></c></row>')],
    ["the column behind the last", withRow("<row r='9'><c r='XFE9'><v>1</v></c></row>")],
    ["a merged area", after('<mergeCells count="1"><mergeCell ref="A10:XFE1048576"/></mergeCells>')],
    ["a column's width", (xml: string) => xml.replace("<sheetData>", '<cols><col min="1" max="2000000000" width="9"/></cols><sheetData>')],
    ["a declared size", (xml: string) => xml.replace(/<dimension[^>]*>/, '<dimension ref="A1:XFD9999999"/>')],
  ])("is refused in a sentence: %s", async (_, change) => {
    const message = await inSheet(change);
    expect(message).toMatch(/^The sheet Gear log of this workbook names the place \S+, which no sheet has: .*\.$/);
  });

  it("is refused for names: too many, or outside of every sheet", async () => {
    const names =
      (list: string) =>
      (xml: string): string =>
        xml.replace("</sheets>", `</sheets><definedNames>${list}</definedNames>`);
    const many = Array.from(
      { length: 100_000 },
      (_, at) => `<definedName name="n${String(at)}">'Gear log'!$A$1:$XFD$1048576</definedName>`,
    );
    expect(await opened(await changed("xl/workbook.xml", names(many.join(""))))).toMatch(/^This workbook holds 100,000 names, .*\.$/);
    const far = "<definedName name=\"far\">'Gear log'!$A$1:$A$9999999</definedName>";
    expect(await opened(await changed("xl/workbook.xml", names(far)))).toMatch(/^The name far of this workbook names the place /);
    const whole = await opened(await changed("xl/workbook.xml", names(many.slice(0, 2).join(""))));
    expect([...(whole as Book).names.keys()]).toEqual(["n0", "n1"]);
  });
});

describe("a workbook at the limits of a sheet", () => {
  it("opens with an area merged down to the last cell, whose first cell alone has a value", async () => {
    const read = (await inSheet(after('<mergeCells count="1"><mergeCell ref="A2:XFD1048576"/></mergeCells>'))) as Book;
    const sheet = read.sheet("Gear log")!;
    expect(sheet.merges).toEqual([{ row: 1, column: 0, rows: 1_048_575, columns: 16_384 }]);
    expect(sheet.cell(1, 0)?.value).toBe("H-1");
    expect([sheet.cell(1, 1)?.value ?? null, sheet.cell(2, 0)?.value ?? null]).toEqual([null, null]);
    expect(sheet.rows.size).toBeLessThan(10);
  });

  it("opens with a cell in the last corner and 16,384 columns of one width", async () => {
    const read = (await inSheet((xml) =>
      withRow('<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>')(xml).replace(
        "<sheetData>",
        '<cols><col min="1" max="16384" width="9.5"/></cols><sheetData>',
      ),
    )) as Book;
    expect(read.sheet("Gear log")!.cell(1_048_575, 16_383)?.value).toBe(1);
  });
});

describe("a workbook that unpacks to more than it says or more than can be held", () => {
  it("is refused: 300 MB of rows in 1 MB", { timeout: 120_000 }, async () => {
    const row = '<row r="9"><c r="A9"><v>1</v></c></row>'.repeat(1000);
    const bytes = await changed(SHEET, withRow(row.repeat(Math.ceil(3e8 / row.length))));
    expect(bytes.length).toBeLessThan(2e6);
    const before = process.memoryUsage().rss;
    expect(await opened(bytes)).toMatch(/^This workbook is too large to be read here: .*\.$/);
    // What is unpacked goes by; it is not kept.
    expect(process.memoryUsage().rss - before).toBeLessThan(6e8);
  });

  it("is refused where the size it declares is untrue", { timeout: 120_000 }, async () => {
    const bytes = await changed("xl/styles.xml", () => " ".repeat(295_000_000));
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    for (let at = 0; at < bytes.length - 28; at += 1)
      if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 24, true) === 295_000_000) view.setUint32(at + 24, 1000, true);
    expect(await opened(bytes)).toMatch(/^This workbook is too large to be read here: .*\.$/);
  });

  it("is refused for more cells than can be held", { timeout: 120_000 }, async () => {
    const cells = '<row r="9">' + '<c r="A9"/>'.repeat(100_000) + "</row>";
    expect(await inSheet(withRow(cells.repeat(31)))).toMatch(/^This workbook is too large to be read here: .*\.$/);
  });

  it("does not unpack what nobody reads", async () => {
    const archive = Archive.read(plain);
    await archive.replace("xl/media/image1.png", "x");
    const bytes = archive.write();
    // The picture's packed bytes are spoilt: whoever unpacks it fails.
    const at = bytes.findIndex((_, i) => new TextDecoder().decode(bytes.subarray(i, i + 19)) === "xl/media/image1.png");
    bytes.fill(255, at + 19, at + 21);
    expect(((await opened(bytes)) as Book).notKept).toEqual(["the pictures"]);
  });
});

describe("elements of a damaged part", () => {
  it("are found in one walk, however many are not closed", () => {
    const began = performance.now();
    expect(elementsOf('<a x="1">'.repeat(200_000), "a")).toEqual([]);
    expect(elementsOf(`<a x="`.repeat(200_000), "a")).toEqual([]);
    expect(performance.now() - began).toBeLessThan(5000);
    expect(elementsOf("<n:a k='>'>1</n:a><a/><ab>2</ab><a>3</a>", "a")).toEqual([
      { attributes: { k: ">" }, inner: "1" },
      { attributes: {}, inner: "" },
      { attributes: {}, inner: "3" },
    ]);
  });
});
