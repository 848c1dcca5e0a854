/** A second sheet in the old log's file that is no log. */
import { INK, MIST, fill, thin } from "./book.mjs";

const LINES = [
  ["Yard office", "ext. 1"],
  ["Gate", "ext. 3"],
  ["Rigging store", "ext. 10"],
  ["Crane foreman", "ext. 12"],
  ["Slipway foreman", "ext. 14"],
  ["Plate shop foreman", "ext. 15"],
  ["Boat hall", "ext. 18"],
  ["Rigging inspector", "ext. 21"],
  ["Yard rigging engineer", "ext. 22"],
  ["First aid room", "ext. 30"],
];

export function phoneList(book) {
  const sheet = book.addWorksheet("Phone list");
  sheet.columns = [{ width: 26 }, { width: 12 }];
  const head = sheet.getRow(1);
  head.values = ["Who", "Phone"];
  head.eachCell((cell) => {
    cell.font = { name: "Arial", size: 10, bold: true, color: { argb: INK } };
    cell.fill = fill(MIST);
  });
  LINES.forEach((line, at) => {
    const row = sheet.getRow(at + 2);
    row.values = line;
    row.eachCell((cell) => {
      cell.font = { name: "Arial", size: 10 };
      cell.border = thin("bottom");
    });
  });
}
