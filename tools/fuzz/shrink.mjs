/** Makes a failing row as small and as plain as it stays failing. What makes its truth is never touched. */
import { isCount, isDimension, isSight } from "./log.mjs";

const pinned = (row, at, what) => row.truth.pins.some((pin) => pin.at === at && (what === "any" || pin.what === "both"));
const alone = (log, row) => ({
  ...log,
  columns: log.columns.map((column) => ({ ...column })),
  rows: [{ ...row, cells: [...row.cells], plain: [...row.plain] }],
});
const without = (log, at) => ({
  ...log,
  columns: log.columns.filter((_, i) => i !== at),
  rows: log.rows.map((row) => ({
    ...row,
    cells: row.cells.filter((_, i) => i !== at),
    plain: row.plain.filter((_, i) => i !== at),
    truth: { ...row.truth, pins: row.truth.pins.map((pin) => (pin.at > at ? { ...pin, at: pin.at - 1 } : pin)) },
  })),
});
/** With the plain heading, the plain cell, or both. */
function plainer(log, at, heading, cell) {
  const next = alone(log, log.rows[0]);
  if (heading) next.columns[at].heading = next.columns[at].plain;
  if (cell) next.rows[0].cells[at] = next.rows[0].plain[at];
  return next;
}

/**
 * `fails(log)` says whether the one row of a log still fails in the same way. A row that was refused though clean keeps every
 * column that a verdict needs, since without one the refusal would be right.
 */
export function shrink(log, row, fails, keepNeeded) {
  let small = alone(log, row);
  if (!fails(small)) return small;
  const attempt = (next) => {
    if (!fails(next)) return false;
    small = next;
    return true;
  };
  for (let at = small.columns.length - 1; at >= 0; at--) {
    const column = small.columns[at];
    const frame = ["gear", "unit"].includes(column.of);
    const used = column.of in small.rows[0].is;
    if (!pinned(small.rows[0], at, "any") && !frame && (!keepNeeded || !used || column.optional) && attempt(without(small, at))) continue;
    if (column.of === "added" || column.of === "instead" || column.of === "dated" || column.optional) continue;
    if (!pinned(small.rows[0], at, "any")) {
      // A heading that turns the meaning goes with its cell.
      attempt(plainer(small, at, true, true)) ||
        attempt(plainer(small, at, false, true)) ||
        (!isSight(column.of) && attempt(plainer(small, at, true, false)));
    } else if (!pinned(small.rows[0], at, "both") && (isDimension(column.of) || isCount(column.of) || column.form === "plain"))
      attempt(plainer(small, at, true, false));
  }
  return small;
}

/** What is still not plain in a row: the cause, as far as it could be told apart. */
export function unusual(log) {
  const [row] = log.rows;
  return log.columns.flatMap((column, at) => {
    const same = column.heading === column.plain && row.cells[at] === row.plain[at];
    const beside = ["added", "aside", "remarks", "result"].includes(column.of);
    // A column beside the readings that could not be dropped is part of the cause, plain or not.
    if (same && !beside && !pinned(row, at, "any")) return [];
    if (beside || pinned(row, at, "any")) return [`${column.heading.trim()} = ${JSON.stringify(row.cells[at])}`];
    const heading = JSON.stringify(column.heading.normalize("NFKC").replace(/\s+/g, " ").replace(/:$/, "").trim().toLowerCase());
    return [
      row.cells[at] === row.plain[at] || (isSight(column.of) && column.heading !== column.plain)
        ? `heading ${heading}`
        : `cell ${JSON.stringify(row.cells[at])} under ${heading}`,
    ];
  });
}
