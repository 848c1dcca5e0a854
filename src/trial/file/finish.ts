/** Puts into the finished file what the file library does not write. */
import type { Book, Sheet } from "../book/book";
import { tableXml } from "./tables";
import { validationsXml } from "./validations";
import { elementsOf } from "./xml";
import { Archive } from "./zip";

/** What may follow data validation in a sheet's part, in the order of the file format. */
const AFTER_VALIDATIONS =
  /<(?:hyperlinks|printOptions|pageMargins|pageSetup|headerFooter|rowBreaks|colBreaks|customProperties|cellWatches|ignoredErrors|smartTags|drawing|legacyDrawing|legacyDrawingHF|picture|oleObjects|controls|webPublishItems|tableParts|extLst)\b|<\/worksheet>/;
export async function finish(bytes: Uint8Array, book: Book, functions: readonly string[]): Promise<Uint8Array> {
  const archive = Archive.read(bytes, true);
  let arrays = false;
  for (const [at, sheet] of book.sheets.entries())
    arrays = (await finishSheet(archive, `xl/worksheets/sheet${String(at + 1)}.xml`, sheet)) || arrays;
  if (arrays) await addDynamicArrays(archive);
  await setCalculation(archive);
  for (const part of archive.names().filter((name) => /^xl\/tables\/[^/]+\.xml$/.test(name))) {
    const attributes = elementsOf((await archive.text(part)) ?? "", "table")[0]?.attributes;
    const table = book.tables.find((known) => known.name === attributes?.["name"]);
    if (!table) throw new Error(`The table ${attributes?.["name"] ?? ""} of the file has no counterpart in the book.`);
    await archive.replace(part, tableXml(table, Number(attributes?.["id"]), functions));
  }
  return archive.write();
}
/** Returns whether the sheet has array formulas. Each is marked as a dynamic one, by the first entry of the metadata part. */
async function finishSheet(archive: Archive, part: string, sheet: Sheet): Promise<boolean> {
  if (!archive.names().includes(part)) throw new Error(`The sheet ${sheet.name} is not where it is expected in the file.`);
  const found = { arrays: false };
  await archive.rewrite(part, (pieces) => finished(pieces, sheet, found));
  return found.arrays;
}
/** Quotes need no escape between the marks of a formula, and formulas are full of them. */
const plainQuotes = (xml: string): string =>
  xml.replace(
    /(<f[^>]*>)([^<]*)(?=<\/f>)/g,
    (_, mark: string, text: string) => mark + text.replace(/&quot;/g, '"').replace(/&apos;/g, "'"),
  );
const CELLS_END = "</sheetData>";
/** The cells go by piece by piece, cut in front of a cell; what follows them is short and changed as a whole. */
async function* finished(pieces: AsyncIterable<string>, sheet: Sheet, found: { arrays: boolean }): AsyncGenerator<string> {
  const marked = (xml: string): string =>
    plainQuotes(xml).replace(/<c (?=[^>]*><f t="array")/g, () => {
      found.arrays = true;
      return '<c cm="1" ';
    });
  let held = "";
  let after = false;
  for await (const piece of pieces) {
    held += piece;
    if (after) continue;
    const end = held.indexOf(CELLS_END);
    after = end >= 0;
    const cell = held.lastIndexOf("<c ");
    const cut = after ? end : cell >= 0 ? cell : Math.max(0, held.length - CELLS_END.length);
    yield marked(held.slice(0, cut));
    held = held.slice(cut);
  }
  const stopping = sheet.rules.map((rule, at) => (rule.stopIfTrue ? at + 1 : 0)).filter((priority) => priority > 0);
  for (const priority of stopping)
    held = held.replace(new RegExp(`(<cfRule\\b[^>]*\\spriority="${String(priority)}")`), '$1 stopIfTrue="1"');
  const validations = validationsXml(sheet.validations);
  yield validations === "" ? held : held.replace(AFTER_VALIDATIONS, (next) => validations + next);
}
/** The metadata part that says what `cm="1"` of a cell means, as the file format has it for dynamic arrays (Office Open XML extensions, MS-XLSX 2.3.1 and 2.6.208). */
const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
async function addDynamicArrays(archive: Archive): Promise<void> {
  await archive.replace("xl/metadata.xml", METADATA);
  const type =
    '<Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/>';
  const relation =
    '<Relationship Id="rIdMetadata" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/>';
  await insert(archive, "[Content_Types].xml", "</Types>", type);
  await insert(archive, "xl/_rels/workbook.xml.rels", "</Relationships>", relation);
}
async function insert(archive: Archive, part: string, before: string, text: string): Promise<void> {
  const xml = await archive.text(part);
  if (!xml?.includes(before)) throw new Error(`The part ${part} of the file is not as it is expected.`);
  await archive.replace(part, xml.replace(before, text + before));
}
/**
 * A file that was calculated by an older program is calculated anew when it is opened, and where the add-in is not there its
 * functions then show #NAME?. So the file says that a program as new as any has worked it out (calcPr; 191029 is what current
 * versions write, from memory).
 */
async function setCalculation(archive: Archive): Promise<void> {
  const xml = (await archive.text("xl/workbook.xml")) ?? "";
  if (!/<calcPr\b[^>]*\/>/.test(xml)) throw new Error("The part xl/workbook.xml of the file is not as it is expected.");
  await archive.replace("xl/workbook.xml", xml.replace(/<calcPr\b[^>]*\/>/, '<calcPr calcId="191029"/>'));
}
