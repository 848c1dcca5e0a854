/**
 * The list of another yard's store: other columns in another order, other words, two heading rows, three units, no size when
 * new. Those stand by type on a sheet of the yard's own.
 */
import { INK, MIST, fileOf, fill, newBook, setWidths, thin } from "./book.mjs";
import { otherItems } from "./other-items.mjs";

const column = (key, width, heading, under) => ({ key, width, heading, under });

/** A heading that stands over two columns is written once, over the first. */
export const OTHER_COLUMNS = [
  column("inspected", 12, "Examined"),
  column("place", 14, "Kept at"),
  column("gear", 22, "Piece"),
  column("id", 9, "Mark"),
  column("gearType", 10, "Type"),
  column("size", 9, "Nom. size"),
  column("throatNow", 12, "Mouth (mm)", "measured"),
  column("sectionNow", 12, "Body", "measured"),
  column("pinNow", 12, "Pin (in)", "measured"),
  column("twist", 7, "Twist (deg)"),
  column("cracks", 11, "Cracks seen"),
  column("deformed", 12, "Bent / drawn out"),
  column("latch", 10, "Safety catch"),
  column("pinSeated", 9, "Pin home"),
  column("tag", 12, "ID plate readable"),
  column("brokenLay", 8, "Wires broken", "per lay"),
  column("brokenStrand", 9, null, "in one strand"),
  column("kinks", 9, "Kinked"),
  column("endFittings", 11, "End fittings"),
  column("cuts", 10, "Cuts"),
  column("stitching", 10, "Stitches"),
  column("heat", 9, "Burns"),
  column("chemical", 9, "Acid"),
  column("corrosion", 10, "Corroded"),
  column("service", 10, "Duty"),
  column("examiner", 14, "Examiner"),
  column("rings", 10, "Rings when struck"),
  column("bag", 7, "Bag no."),
  column("remarks", 34, "Notes"),
];
const TOP = 4;

export const TYPE_HEADINGS = ["Type", "Gear", "Size", "Throat as-new", "Section as-new", "Pin as-new", "Unit", "Where read"];
/** Invented types; the page numbers are those of no real catalogue. */
export const TYPES = [
  ["Hook 20", "hook", null, "48", "40", null, "mm", "maker's catalogue, page 14"],
  ["Hook 30", "hook", null, "62", "52", null, "mm", "maker's catalogue, page 14"],
  ["Bow T", "shackle", "3/4 in", "", "3/4", "7/8", "in", "maker's catalogue, page 31"],
  ["Bow T", "shackle", "1 in", "", "1", "1 1/8", "in", "maker's catalogue, page 31"],
  ["Ring 25", "link", null, null, "25", null, "mm", "measured on three new rings, store drawing 3"],
];

function headingCell(cell, text) {
  cell.value = text ?? null;
  cell.font = { name: "Calibri", size: 10, bold: true, color: { argb: INK } };
  cell.fill = fill(MIST);
  cell.alignment = { wrapText: true, vertical: "middle", horizontal: "center" };
  cell.border = thin("top", "bottom", "left", "right");
}

function write(cell, value) {
  cell.font = { name: "Calibri", size: 10 };
  cell.border = thin("top", "bottom", "left", "right");
  if (value === null || value === undefined || value === "") return;
  cell.value = value;
  if (value instanceof Date) cell.numFmt = "yyyy-mm-dd";
  else if (typeof value === "string") cell.numFmt = "@";
}

function storeList(book) {
  const sheet = book.addWorksheet("STORE LIST", {
    views: [{ state: "frozen", xSplit: 0, ySplit: TOP + 1, topLeftCell: `A${String(TOP + 2)}`, activeCell: `A${String(TOP + 2)}` }],
    pageSetup: { orientation: "landscape", paperSize: 9, fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
  });
  setWidths(sheet, OTHER_COLUMNS);
  const title = sheet.getCell(1, 1);
  title.value = "Kelpmoor Repair Yard, rigging store";
  title.font = { name: "Calibri", size: 14, bold: true, color: { argb: INK } };
  sheet.getCell(2, 1).value = "One line for each piece. Bodies and chain in mm, as the old book had them.";
  OTHER_COLUMNS.forEach(({ heading, under }, at) => {
    headingCell(sheet.getCell(TOP, at + 1), heading);
    headingCell(sheet.getCell(TOP + 1, at + 1), under);
    if (under === undefined) sheet.mergeCells(TOP, at + 1, TOP + 1, at + 1);
  });
  sheet.mergeCells(TOP, 16, TOP, 17);
  sheet.getRow(TOP).height = 30;
  otherItems.forEach((item, index) => {
    OTHER_COLUMNS.forEach(({ key }, at) => write(sheet.getCell(TOP + 2 + index, at + 1), item[key]));
  });
}

function gearTypes(book) {
  const sheet = book.addWorksheet("Gear types");
  setWidths(
    sheet,
    [14, 12, 10, 14, 14, 12, 8, 44].map((width) => ({ width })),
  );
  const title = sheet.getCell(1, 1);
  title.value = "Gear types";
  title.font = { name: "Calibri", size: 14, bold: true, color: { argb: INK } };
  TYPE_HEADINGS.forEach((heading, at) => headingCell(sheet.getCell(2, at + 1), heading));
  TYPES.forEach((row, index) => row.forEach((value, at) => write(sheet.getCell(3 + index, at + 1), value)));
}

export async function otherYard() {
  const book = newBook("Rigging store list");
  for (const role of ["creator", "lastModifiedBy", "company"]) book[role] = "Kelpmoor Repair Yard";
  storeList(book);
  gearTypes(book);
  return fileOf(book);
}
