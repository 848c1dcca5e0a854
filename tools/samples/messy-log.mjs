/** A log that one clerk after another has kept for ten years: titles above, two heading rows, and whatever was typed. */
import { INK, MIST, SAND, fileOf, fill, newBook, setWidths, thin } from "./book.mjs";
import { messySections } from "./messy-rows.mjs";
import { phoneList } from "./phone-list.mjs";

const column = (key, width, heading, under) => ({ key, width, heading, under });

/** A heading that stands over two columns is written once, over the first. */
export const MESSY_COLUMNS = [
  column("place", 10, "Loc."),
  column("gear", 22, "Equipment"),
  column("throatNew", 10, "Throat opng (in)", "New"),
  column("throatNow", 10, null, "Now"),
  column("latch", 14, "Latch"),
  column("id", 9, "Gear no."),
  column("cracks", 18, "Cracked?"),
  column("sectionNew", 10, "Sect. (in)", "New"),
  column("sectionNow", 14, null, "Now"),
  column("inspected", 12, "Insp. dt"),
  column("size", 8, "Size"),
  column("tag", 10, "Marking"),
  column("deformed", 16, "Bent / stretched"),
  column("pinNew", 8, "Pin dia. (mm)", "New"),
  column("pinNow", 9, null, "Now"),
  column("pinSeated", 8, "Pin seated"),
  column("twist", 7, "Twist °"),
  column("brokenLay", 9, "Brk. w.", "per lay"),
  column("brokenStrand", 9, null, "1 strand"),
  column("kinks", 20, "Kinks / crush."),
  column("endFittings", 15, "End fittings"),
  column("cuts", 14, "Cuts, tears"),
  column("stitching", 14, "Stitching"),
  column("heat", 22, "Heat / chem."),
  column("corrosion", 23, "Corr."),
  column("clearance", 10, "Swivel clr. (in)"),
  column("turnsFreely", 11, "Turns free"),
  column("sheaveTrue", 14, "Sheave"),
  column("fasteners", 9, "Nuts, bolts"),
  column("nickDepth", 10, "Nick", "depth (in)"),
  column("nickPart", 8, null, "where"),
  column("assembly", 17, "Assy"),
  column("service", 13, "Svc"),
  column("inspector", 14, "Insp. by"),
  column("tagged", 13, "Out of service"),
  column("releasedBy", 21, "Released by"),
  column("releasedOn", 12, "Released on"),
  column("shelf", 7, "Shelf"),
  column("remarks", 42, "Rem."),
];

const WIDE = MESSY_COLUMNS.length;
const TOP = 5;

function title(sheet, row, text, size) {
  const cell = sheet.getCell(row, 1);
  cell.value = text;
  cell.font = { name: "Arial", size, bold: size > 10, italic: size <= 10, color: { argb: INK } };
}

function upperHeadings(sheet, row) {
  MESSY_COLUMNS.forEach(({ heading }, at) => headingCell(sheet.getCell(row, at + 1), heading));
}

function headingCell(cell, text) {
  cell.value = text ?? null;
  cell.font = { name: "Arial", size: 9, bold: true, color: { argb: INK } };
  cell.fill = fill(MIST);
  cell.alignment = { wrapText: true, vertical: "middle", horizontal: "center" };
  cell.border = thin("top", "bottom", "left", "right");
}

function headings(sheet) {
  upperHeadings(sheet, TOP);
  MESSY_COLUMNS.forEach(({ heading, under }, at) => {
    headingCell(sheet.getCell(TOP + 1, at + 1), under);
    if (under === undefined) sheet.mergeCells(TOP, at + 1, TOP + 1, at + 1);
    else if (heading !== null) sheet.mergeCells(TOP, at + 1, TOP, at + 2);
  });
  sheet.getRow(TOP).height = 26;
}

/** Text as text, whatever it begins with; a day as a day; a size that slipped into a day as the spreadsheet shows it. */
function write(cell, value, key) {
  cell.font = { name: "Arial", size: 9 };
  cell.border = thin("top", "bottom", "left", "right");
  if (value === null || value === undefined) return;
  const slipped = typeof value === "object" && "slipped" in value;
  cell.value = slipped ? value.slipped : value;
  if (slipped) cell.numFmt = "d-mmm";
  else if (value instanceof Date) cell.numFmt = "dd/mm/yyyy";
  else if (typeof value === "string") cell.numFmt = "@";
  cell.alignment = { horizontal: key === "remarks" || key === "gear" || key === "place" ? "left" : "center" };
}

function sectionTitle(sheet, row, text) {
  const cell = sheet.getCell(row, 1);
  cell.value = text;
  cell.font = { name: "Arial", size: 10, bold: true, color: { argb: INK } };
  for (let at = 1; at <= WIDE; at += 1) sheet.getCell(row, at).fill = fill(SAND);
}

export async function messyLog() {
  const book = newBook("Lifting gear log");
  const sheet = book.addWorksheet("LIFTING GEAR", {
    views: [{ state: "frozen", xSplit: 0, ySplit: TOP + 1, topLeftCell: `A${String(TOP + 2)}`, activeCell: `A${String(TOP + 2)}` }],
    pageSetup: { orientation: "landscape", paperSize: 8, fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
  });
  setWidths(sheet, MESSY_COLUMNS);
  title(sheet, 1, "TERN POINT YARD - LIFTING & RIGGING GEAR", 14);
  title(sheet, 2, "Log begun 2016, copied from the old book. Red cage = out of service. Ring the store before you take anything.", 9);
  title(sheet, 3, "Sizes in inches unless it says mm, pins in mm", 9);
  headings(sheet);
  let row = TOP + 2;
  let items = 0;
  for (const section of messySections) {
    if (section.newPage === true) {
      title(sheet, row, "carried over", 9);
      upperHeadings(sheet, row + 1);
      row += 2;
    }
    sectionTitle(sheet, row, section.title);
    row += 1;
    for (const item of section.items) {
      MESSY_COLUMNS.forEach(({ key }, at) => write(sheet.getCell(row, at + 1), item[key], key));
      row += 1;
    }
    items += section.items.length;
    row += 1;
  }
  write(sheet.getCell(row, 1), "Total", "place");
  write(sheet.getCell(row, 6), items, "id");
  for (const at of [1, 6]) sheet.getCell(row, at).font = { name: "Arial", size: 9, bold: true };
  title(sheet, row + 2, "Checked against the shelves at stocktaking, store keeper", 9);
  phoneList(book);
  return fileOf(book);
}
