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
  const archive = Archive.read(bytes);
  for (const [at, sheet] of book.sheets.entries()) await finishSheet(archive, `xl/worksheets/sheet${String(at + 1)}.xml`, sheet);
  for (const part of archive.names().filter((name) => /^xl\/tables\/[^/]+\.xml$/.test(name))) {
    const attributes = elementsOf((await archive.text(part)) ?? "", "table")[0]?.attributes;
    const table = book.tables.find((known) => known.name === attributes?.["name"]);
    if (!table) throw new Error(`The table ${attributes?.["name"] ?? ""} of the file has no counterpart in the book.`);
    await archive.replace(part, tableXml(table, Number(attributes?.["id"]), functions));
  }
  return archive.write();
}
async function finishSheet(archive: Archive, part: string, sheet: Sheet): Promise<void> {
  const stopping = sheet.rules.map((rule, at) => (rule.stopIfTrue ? at + 1 : 0)).filter((priority) => priority > 0);
  const validations = validationsXml(sheet.validations);
  if (stopping.length === 0 && validations === "") return;
  let xml = await archive.text(part);
  if (xml === null) throw new Error(`The sheet ${sheet.name} is not where it is expected in the file.`);
  for (const priority of stopping) xml = xml.replace(new RegExp(`(<cfRule\\b[^>]*\\spriority="${String(priority)}")`), '$1 stopIfTrue="1"');
  if (validations !== "") xml = xml.replace(AFTER_VALIDATIONS, (next) => validations + next);
  await archive.replace(part, xml);
}
