/** A register in good order: one table, one item a row, a heading for each column, dates as dates. */
import { MIST, SLATE, aligned, fileOf, fill, newBook, setWidths, thin } from "./book.mjs";
import { tidyItems } from "./tidy-items.mjs";

const TEXT = "@",
  DAY = "yyyy-mm-dd",
  FIGURE = "General",
  LOAD = "0.0#";
const column = (key, heading, width, format = TEXT) => ({ key, heading, width, format });

export const TIDY_COLUMNS = [
  column("id", "Id", 10),
  column("gear", "Gear", 22),
  column("size", "Size", 9),
  column("unit", "Unit", 7),
  column("load", "Rated load (t)", 10, LOAD),
  column("order", "Purchase order", 14),
  column("assembly", "Assembly", 21),
  column("place", "Place", 14),
  column("service", "Service", 11),
  column("inspected", "Inspected", 12, DAY),
  column("inspector", "Inspected by", 18),
  column("gauge", "Gauge reads to", 9, FIGURE),
  column("construction", "Construction", 15),
  column("throatNew", "Throat as-new", 9, FIGURE),
  column("throatNow", "Throat now", 9, FIGURE),
  column("sectionNew", "Section as-new", 9, FIGURE),
  column("sectionNow", "Section now", 9, FIGURE),
  column("acrossNew", "Across as-new", 9, FIGURE),
  column("acrossNow", "Across now", 9, FIGURE),
  column("pinNew", "Pin as-new", 9, FIGURE),
  column("pinNow", "Pin now", 9, FIGURE),
  column("twist", "Twist deg", 8, FIGURE),
  column("clearance", "Swivel clearance", 11, FIGURE),
  column("nickDepth", "Nick depth", 8, FIGURE),
  column("nickPart", "Nick at", 9),
  column("brokenLay", "Broken wires in a lay", 11, FIGURE),
  column("brokenStrand", "Broken wires in one strand", 13, FIGURE),
  column("cracks", "Cracks", 8),
  column("deformed", "Bent or stretched", 11),
  column("latch", "Latch works", 13),
  column("tag", "Identification legible", 14),
  column("pinSeated", "Pin fully seated", 9),
  column("turnsFreely", "Turns freely", 8),
  column("sheaveTrue", "Sheave turns true", 9),
  column("fasteners", "Fasteners in place", 11),
  column("endFittings", "End fittings sound", 11),
  column("stitching", "Stitching sound", 10),
  column("kinks", "Kinks or crushing", 10),
  column("heat", "Heat damage", 9),
  column("chemical", "Chemical damage", 10),
  column("corrosion", "Corrosion", 11),
  column("cuts", "Cuts or tears", 9),
  column("fieldChange", "Field weld or change", 11),
  column("tagged", "Tagged out", 12, DAY),
  column("releasedBy", "Released by", 22),
  column("releasedOn", "Released on", 12, DAY),
  column("remarks", "Remarks", 46),
];

const FIGURES = new Set([FIGURE, LOAD]);

export async function tidyRegister() {
  const book = newBook("Gear log");
  const sheet = book.addWorksheet("Gear log", {
    views: [{ state: "frozen", xSplit: 2, ySplit: 1, activeCell: "C2", topLeftCell: "C2" }],
    pageSetup: { orientation: "landscape", paperSize: 8, fitToPage: true, fitToWidth: 1, fitToHeight: 0, printTitlesRow: "1:1" },
    headerFooter: { oddFooter: "&LTern Point Yard&CGear log&RPage &P of &N" },
  });
  setWidths(sheet, TIDY_COLUMNS);
  sheet.addTable({
    name: "GearLog",
    ref: "A1",
    headerRow: true,
    style: { theme: "TableStyleLight1", showRowStripes: true },
    columns: TIDY_COLUMNS.map(({ heading }) => ({ name: heading, filterButton: true })),
    rows: tidyItems.map((item) => TIDY_COLUMNS.map(({ key }) => item[key] ?? null)),
  });
  const head = sheet.getRow(1);
  head.height = 48;
  TIDY_COLUMNS.forEach(({ format }, index) => {
    const cell = head.getCell(index + 1);
    cell.font = { name: "Calibri", size: 11, bold: true, color: { argb: "FFFFFFFF" } };
    cell.fill = fill(SLATE);
    cell.alignment = aligned(FIGURES.has(format), { wrapText: true, vertical: "middle" });
    cell.border = { right: { style: "thin", color: { argb: MIST } } };
  });
  tidyItems.forEach((item, at) => {
    TIDY_COLUMNS.forEach(({ key, format }, index) => {
      const cell = sheet.getCell(at + 2, index + 1);
      cell.numFmt = format === FIGURE && typeof item[key] === "string" ? TEXT : format;
      cell.font = { name: "Calibri", size: 11, bold: index === 0 };
      cell.alignment = aligned(FIGURES.has(format));
      cell.border = thin("bottom");
    });
  });
  return fileOf(book);
}
