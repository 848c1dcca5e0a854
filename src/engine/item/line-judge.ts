/** The lines of a log, each judged by its columns. */
import type { FieldId } from "../columns";
import type { LogColumns } from "../log/cells";
import type { Headings } from "../log/match-headings";
import { besidesOf, firstColumns, mergeColumns } from "../log/merge-columns";
import type { CellValue } from "../reading/cell-value";
import { type Judging, LogJudge } from "./judge";
import type { JudgedItem } from "./verdict";

type Line = readonly CellValue[];
type Reader = (cell: CellValue) => CellValue;
export const columnsOf = (headings: Headings): LogColumns => ({
  fields: [...new Set([...headings.columns.keys(), ...ADDED])],
  units: headings.units,
  names: headings.names,
});
/** Fields that a row may have though no column is read as them: a tag or a crack in the column of results, a unit for the whole log, a part under another name. */
const ADDED: readonly FieldId[] = ["tagged", "cracks", "unit", "sectionNew", "sectionNow", "latch"];
/** A judge of a log's lines: each cell goes to its place, what several columns say is merged, and the row is judged. */
export class LineJudge {
  readonly log: LogJudge;
  private readonly headings: Headings;
  /** By place of a field, its first column, -1 where it has none, and how that is read. */
  private readonly columns: readonly number[];
  private readonly readers: readonly (Reader | null)[];
  constructor(headings: Headings, judging: Judging) {
    this.headings = headings;
    this.log = new LogJudge(columnsOf(headings), judging);
    const first = new Map(firstColumns(headings).map(([id, column, read]) => [id, { column, read }] as const));
    this.columns = this.log.fields.map((id) => first.get(id)?.column ?? -1);
    this.readers = this.log.fields.map((id) => first.get(id)?.read ?? null);
  }
  /** A cell of the row that was judged last. */
  cell(id: FieldId): CellValue {
    return this.log.row.get(id);
  }
  /**
   * `overload` is the day on which the item's assembly was found overloaded; `asked` are the columns of the log that ask, as
   * in `openCells`.
   */
  judge(line: Line, overload: number | null = null, asked?: ReadonlySet<number>): JudgedItem {
    const { headings, log, columns, readers } = this;
    const { row } = log;
    const { values } = row;
    for (let slot = 0; slot < columns.length; slot += 1) {
      const column = columns[slot] ?? -1;
      const cell = column < 0 ? undefined : line[column];
      const read = readers[slot];
      values[slot] = read == null ? cell : read(cell);
    }
    const unread = mergeColumns(line, headings, row);
    return log.judge(besidesOf(line, headings, row, asked, unread), overload);
  }
}
