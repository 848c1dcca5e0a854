/** What the file library leaves out or gets wrong, read from the workbook's own parts. */
import { checkPlaces, isOutsideFormula, outside, scanSheet } from "./sheet-scan";
import { attributeText, elementsOf, unescapeXml } from "./xml";
import { type Archive, NOT_A_WORKBOOK } from "./zip";
export { elementsOf } from "./xml";
export { textOf } from "./xml";

export interface RawName {
  name: string;
  formula: string;
  /** Number of the sheet a name is limited to, else null. */
  sheet: number | null;
}
export interface RawBook {
  archive: Archive;
  /** Sheet name to its XML without the cells. */
  sheets: Map<string, string>;
  /** Order in the workbook, as names that belong to a sheet count them. */
  order: string[];
  names: RawName[];
  /** The workbook's own part. */
  workbook: string;
  /** Table name to its XML. */
  tables: Map<string, string>;
  /** Colours 0 to 11 of the workbook's theme, without "#". */
  theme: string[];
}
/** More names than this are not read. */
const MOST_NAMES = 20_000;
/** Throws one sentence for what is damaged, too large to be held, or outside of every sheet. */
export async function readRaw(archive: Archive): Promise<RawBook> {
  const workbook = await archive.text("xl/workbook.xml");
  if (workbook === null) throw new Error(NOT_A_WORKBOOK);
  const targets = await relations(archive, "xl/_rels/workbook.xml.rels", "xl/");
  const sheets = new Map<string, string>();
  const order: string[] = [];
  for (const { attributes } of elementsOf(textBetween(workbook, "sheets"), "sheet")) {
    const name = attributes["name"] ?? "";
    order.push(name);
    const pieces = archive.pieces(targets.get(attributes["r:id"] ?? "") ?? "");
    if (pieces) sheets.set(name, await scanSheet(pieces, name));
  }
  for (const part of archive.names().filter((name) => /^xl\/comments[^/]*\.xml$/.test(name)))
    checkPlaces("", (await archive.text(part)) ?? "", "A note");
  for (const part of archive.names().filter(isUnpacked)) await unpacked(archive, part);
  const tables = new Map<string, string>();
  for (const part of archive.names().filter((name) => /^xl\/tables\/[^/]+\.xml$/.test(name))) {
    const xml = (await archive.text(part)) ?? "";
    const name = elementsOf(xml, "table")[0]?.attributes["displayName"];
    if (name !== undefined) tables.set(name, xml);
  }
  return {
    archive,
    sheets,
    order,
    names: namesOf(workbook),
    workbook,
    tables,
    theme: themeColors(await archive.text("xl/theme/theme1.xml")),
  };
}
function namesOf(workbook: string): RawName[] {
  const elements = elementsOf(workbook, "definedName");
  if (elements.length > MOST_NAMES)
    throw new Error(
      `This workbook holds ${elements.length.toLocaleString("en-US")} names, and at most ${MOST_NAMES.toLocaleString("en-US")} are read here: delete those that nobody uses in the Name Manager.`,
    );
  return elements.map(({ attributes, inner }) => {
    const name = attributes["name"] ?? "";
    const formula = unescapeXml(inner);
    if (isOutsideFormula(formula)) throw outside(`The name ${name}`, formula);
    return { name, formula, sheet: attributes["localSheetId"] === undefined ? null : Number(attributes["localSheetId"]) };
  });
}
/** Parts that the file library reads beside the sheets; what they unpack to is counted before it does. */
function isUnpacked(name: string): boolean {
  return /^xl\/(?:sharedStrings|styles)\.xml$/.test(name) || /^xl\/drawings\/vmlDrawing[^/]*\.vml$/.test(name);
}
async function unpacked(archive: Archive, part: string): Promise<void> {
  const pieces = archive.pieces(part);
  while (pieces && !(await pieces.next()).done);
}
/** What the file library is given: the parts that it has to read, and of the names those of printed ranges, since it unrolls names into cells. */
export async function forLibrary({ archive, workbook }: RawBook): Promise<Uint8Array> {
  const given = archive.only((name) => isUnpacked(name) || GIVEN.test(name));
  const names = /<(?:\w+:)?definedNames>[\s\S]*?<\/(?:\w+:)?definedNames>/;
  const printed = elementsOf(workbook, "definedName").filter(({ attributes }) => (attributes["name"] ?? "").startsWith("_xlnm.Print_"));
  const kept = printed.map(({ attributes, inner }) => `<definedName${attributeText(attributes)}>${inner}</definedName>`).join("");
  await given.replace(
    "xl/workbook.xml",
    workbook.replace(names, () => `<definedNames>${kept}</definedNames>`),
  );
  return given.write();
}
const GIVEN =
  /^(?:\[Content_Types\]\.xml|_rels\/\.rels|docProps\/[^/]+\.xml|xl\/(?:workbook|comments[^/]*|theme\/[^/]+|tables\/[^/]+|worksheets\/[^/]+)\.xml|xl\/(?:worksheets\/)?_rels\/[^/]+\.rels)$/;
function textBetween(xml: string, name: string): string {
  return elementsOf(xml, name)[0]?.inner ?? "";
}
async function relations(archive: Archive, part: string, folder: string): Promise<Map<string, string>> {
  const xml = (await archive.text(part)) ?? "";
  return new Map(
    elementsOf(xml, "Relationship").map(({ attributes }) => {
      const target = attributes["Target"] ?? "";
      return [attributes["Id"] ?? "", target.startsWith("/") ? target.slice(1) : folder + target];
    }),
  );
}
/** The standard theme, for files without one. */
const OFFICE_THEME = [
  "FFFFFF",
  "000000",
  "E7E6E6",
  "44546A",
  "4472C4",
  "ED7D31",
  "A5A5A5",
  "FFC000",
  "5B9BD5",
  "70AD47",
  "0563C1",
  "954F72",
];
function themeColors(xml: string | null): string[] {
  if (xml === null) return OFFICE_THEME;
  // Cells count light before dark; the file lists dark before light.
  const order = ["lt1", "dk1", "lt2", "dk2", "accent1", "accent2", "accent3", "accent4", "accent5", "accent6", "hlink", "folHlink"];
  return order.map((name, at) => {
    const inner = elementsOf(xml, name)[0]?.inner ?? "";
    const plain = elementsOf(inner, "srgbClr")[0]?.attributes["val"] ?? elementsOf(inner, "sysClr")[0]?.attributes["lastClr"];
    return plain ?? OFFICE_THEME[at] ?? "000000";
  });
}
/** Parts that this model has no place for, as a phrase each. */
export function partsNotKept(archive: Archive): string[] {
  const kinds: [pattern: RegExp, phrase: string][] = [
    [/^xl\/vbaProject\.bin$/, "the macros"],
    [/^xl\/media\//, "the pictures"],
    [/^xl\/diagrams\//, "the diagrams"],
    [/^xl\/embeddings\//, "the embedded objects"],
    [/^xl\/activeX\//, "the controls"],
    [/^xl\/timelines\//, "the timelines"],
    [/^xl\/richData\//, "the data types in cells"],
    [/^xl\/model\//, "the data model"],
    [/^_xmlsignatures\//, "the signature"],
    [/^xl\/charts\//, "the charts"],
    [/^xl\/chartsheets\//, "the chart sheets"],
    [/^xl\/pivotTables\//, "the pivot tables"],
    [/^xl\/slicers\//, "the slicers"],
    [/^xl\/threadedComments\//, "the comment threads"],
    [/^xl\/externalLinks\//, "the links to other workbooks"],
    [/^xl\/ctrlProps\//, "the form controls"],
    [/^xl\/queryTables\//, "the data connections"],
  ];
  return kinds.filter(([pattern]) => archive.names().some((name) => pattern.test(name))).map(([, phrase]) => phrase);
}
/** Priorities of the conditional formats that stop further ones. */
export function stoppingPriorities(sheetXml: string): Set<number> {
  return new Set(
    elementsOf(sheetXml, "cfRule")
      .filter(({ attributes }) => isTrue(attributes["stopIfTrue"]))
      .map(({ attributes }) => Number(attributes["priority"])),
  );
}
/** Filters of a table by values: zero-based column to the texts let through; null when it has others. */
export function valueFilters(tableXml: string): Map<number, string[]> | null {
  const filters = new Map<number, string[]>();
  for (const { attributes, inner } of elementsOf(tableXml, "filterColumn")) {
    const list = elementsOf(inner, "filters")[0];
    if (!list) {
      if (inner.trim() !== "") return null;
      continue;
    }
    if (elementsOf(list.inner, "dateGroupItem").length > 0) return null;
    const texts = elementsOf(list.inner, "filter").map((filter) => filter.attributes["val"] ?? "");
    if (isTrue(list.attributes["blank"])) texts.push("");
    filters.set(Number(attributes["colId"]), texts);
  }
  return filters;
}
export function isTrue(value: string | undefined): boolean {
  return value === "1" || value === "true";
}
