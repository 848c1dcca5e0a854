/** A round sheet that an inspector fills in at the bench while the store looks on: few columns, one unit. */
import { INK, MIST, SLATE, aligned, fileOf, fill, newBook, setWidths, thin } from "./book.mjs";
import { roundItems } from "./round-items.mjs";

const column = (key, heading, width, takes = "text") => ({ key, heading, width, takes });

export const ROUND_COLUMNS = [
  column("id", "Mark", 9),
  column("gear", "Gear", 22),
  column("size", "Size (mm)", 8),
  column("place", "Place", 13),
  column("inspected", "Checked on", 12, "day"),
  column("inspector", "Checked by", 17),
  column("gauge", "Gauge reads to (mm)", 9, "number"),
  column("throatNew", "Throat new (mm)", 9, "number"),
  column("throatNow", "Throat now (mm)", 9, "number"),
  column("sectionNew", "Section new (mm)", 9, "number"),
  column("sectionNow", "Section now (mm)", 9, "number"),
  column("pinNew", "Pin new (mm)", 9, "number"),
  column("pinNow", "Pin now (mm)", 9, "number"),
  column("twist", "Twist (deg)", 7, "number"),
  column("latch", "Latch works", 9, "sound"),
  column("pinSeated", "Pin fully seated", 8, "sound"),
  column("cracks", "Cracks", 8, "fault"),
  column("deformed", "Bent or stretched", 10, "fault"),
  column("tag", "Marking or tag legible", 11, "sound"),
  column("brokenLay", "Broken wires per lay", 9, "number"),
  column("brokenStrand", "Broken wires in one strand", 13, "number"),
  column("kinks", "Kinks or crushing", 9, "fault"),
  column("endFittings", "End fittings sound", 9, "sound"),
  column("heat", "Heat or chemical damage", 9, "fault"),
  column("corrosion", "Corrosion", 10, "fault"),
  column("cuts", "Cuts or tears", 8, "fault"),
  column("stitching", "Stitching sound", 9, "sound"),
  column("nickDepth", "Nick depth (mm)", 9, "number"),
  column("nickPart", "Nick at", 8),
  column("remarks", "Remarks", 38),
];

const LISTS = { fault: '"none,found"', sound: '"yes,no"' };
const TOP = 4;

function headings(sheet) {
  sheet.getCell("A1").value = "Tern Point Yard: round sheet";
  sheet.getCell("A1").font = { name: "Calibri", size: 16, bold: true, color: { argb: INK } };
  sheet.getCell("A2").value = "Winter round, 23 to 25 November 2026. All sizes in millimetres. Leave a cell empty when you did not look.";
  sheet.getCell("A2").font = { name: "Calibri", size: 11, color: { argb: INK } };
  ROUND_COLUMNS.forEach(({ heading, takes }, at) => {
    const cell = sheet.getCell(TOP, at + 1);
    cell.value = heading;
    cell.font = { name: "Calibri", size: 11, bold: true, color: { argb: "FFFFFFFF" } };
    cell.fill = fill(SLATE);
    cell.alignment = aligned(takes === "number", { wrapText: true, vertical: "middle" });
    cell.border = { right: { style: "thin", color: { argb: MIST } } };
  });
  sheet.getRow(TOP).height = 48;
}

function write(cell, value, takes) {
  cell.value = value ?? null;
  cell.numFmt = takes === "day" ? "yyyy-mm-dd" : takes === "number" ? "General" : "@";
  cell.font = { name: "Calibri", size: 11 };
  cell.alignment = aligned(takes === "number");
  cell.border = thin("bottom", "right");
}

/** One rule over the whole column: set cell by cell, exceljs 4.4.0 writes ranges that overlap. */
function offer(sheet, column, list) {
  const { letter } = sheet.getColumn(column);
  sheet.dataValidations.add(`${letter}${String(TOP + 1)}:${letter}${String(TOP + roundItems.length)}`, {
    type: "list",
    allowBlank: true,
    formulae: [list],
    showErrorMessage: false,
  });
}

const NOTES = [
  "Notes for the round",
  "Boat hall first, then plate shop, slipway and store; the store rows are still open.",
  "Calliper reads to 0.1 mm. If you have only the tape, write 1 in the gauge column.",
  "A tag or marking that you cannot read is a no, not an empty cell.",
  "Anything with a crack goes to the red cage at once; tell the rigging inspector, ext. 21.",
  "The slipway slings hang wet: wipe them before you count wires.",
];

function notes(book) {
  const sheet = book.addWorksheet("Notes", { views: [{ showGridLines: false }] });
  sheet.columns = [{ width: 92 }];
  NOTES.forEach((line, at) => {
    const cell = sheet.getCell(at + 1, 1);
    cell.value = line;
    cell.font = { name: "Calibri", size: at === 0 ? 14 : 11, bold: at === 0, color: { argb: INK } };
    cell.alignment = { wrapText: true, vertical: "top" };
  });
}

export async function sharedRound() {
  const book = newBook("Round sheet");
  const sheet = book.addWorksheet("Round", {
    views: [{ state: "frozen", xSplit: 2, ySplit: TOP, topLeftCell: `C${String(TOP + 1)}`, activeCell: `C${String(TOP + 1)}` }],
    pageSetup: {
      orientation: "landscape",
      paperSize: 9,
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: `${String(TOP)}:${String(TOP)}`,
    },
    headerFooter: { oddFooter: "&LTern Point Yard&CRound sheet&RPage &P of &N" },
  });
  setWidths(sheet, ROUND_COLUMNS);
  headings(sheet);
  roundItems.forEach((item, at) => {
    ROUND_COLUMNS.forEach(({ key, takes }, index) => write(sheet.getCell(TOP + 1 + at, index + 1), item[key], takes));
    sheet.getCell(TOP + 1 + at, 1).font = { name: "Calibri", size: 11, bold: true };
  });
  ROUND_COLUMNS.forEach(({ takes }, index) => {
    if (takes in LISTS) offer(sheet, index + 1, LISTS[takes]);
  });
  notes(book);
  return fileOf(book);
}
