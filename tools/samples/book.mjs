/** What the sample workbooks share: properties, days, colours, and a file that is the same byte for byte each time. */
import ExcelJS from "exceljs";

/** Day on which the samples are judged. */
export const AS_OF = "2026-11-25";

export const INK = "FF1F2933";
export const SLATE = "FF33475B";
export const MIST = "FFE6ECF2";
export const SAND = "FFF3EEE3";
export const LINE = "FFC5CFD9";

export function newBook(title) {
  const book = new ExcelJS.Workbook();
  book.creator = "Tern Point Yard";
  book.lastModifiedBy = "Tern Point Yard";
  book.company = "Tern Point Yard";
  book.title = title;
  book.created = day("2026-11-20");
  book.modified = day("2026-11-24");
  return book;
}

/** A day as exceljs takes it: midnight, universal time. */
export function day(iso) {
  const [year, month, date] = iso.split("-").map(Number);
  return new Date(Date.UTC(year, month - 1, date));
}

/** The day so many days before the day of judging. */
export function daysAgo(count) {
  return new Date(day(AS_OF).getTime() - count * 86_400_000);
}

export function fill(color) {
  return { type: "pattern", pattern: "solid", fgColor: { argb: color } };
}

export function thin(...edges) {
  return Object.fromEntries(edges.map((edge) => [edge, { style: "thin", color: { argb: LINE } }]));
}

/** Column widths with a little air; exceljs leaves out a width of exactly 9, which would then be the reader's default. */
export function setWidths(sheet, columns) {
  sheet.columns = columns.map(({ width }) => ({ width: width + 0.7 }));
}

/** Figures stand right with a little room before the next column; words and days stand left. */
export function aligned(isFigure, more = {}) {
  return { ...(isFigure ? { horizontal: "right", indent: 1 } : { horizontal: "left" }), ...more };
}

export async function fileOf(book) {
  return withFixedTimes(Buffer.from(await book.xlsx.writeBuffer()));
}

const LOCAL = 0x04034b50,
  CENTRAL = 0x02014b50,
  END = 0x06054b50;
/** 2026-11-24 00:00 as zip files write it: years since 1980, month, day. */
const ZIP_DAY = ((2026 - 1980) << 9) | (11 << 5) | 24;

/** Each entry of a zip file carries the clock of the run that wrote it; here it is a fixed day. */
function withFixedTimes(zip) {
  let end = zip.length - 22;
  while (zip.readUInt32LE(end) !== END) end -= 1;
  let at = zip.readUInt32LE(end + 16);
  for (let left = zip.readUInt16LE(end + 10); left > 0; left -= 1) {
    if (zip.readUInt32LE(at) !== CENTRAL) throw new Error("The workbook's zip directory could not be read.");
    const local = zip.readUInt32LE(at + 42);
    if (zip.readUInt32LE(local) !== LOCAL) throw new Error("An entry of the workbook's zip file could not be read.");
    zip.writeUInt32LE((ZIP_DAY << 16) >>> 0, at + 12);
    zip.writeUInt32LE((ZIP_DAY << 16) >>> 0, local + 10);
    at += 46 + zip.readUInt16LE(at + 28) + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
  }
  return zip;
}
