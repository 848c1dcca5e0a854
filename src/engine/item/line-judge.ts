/** The lines of a log, each judged by its columns. */
import type { FieldId } from "../columns";
import { type Besides, NOTHING_BESIDES, openCells } from "../log/besides";
import type { LogColumns } from "../log/cells";
import type { Headings } from "../log/match-headings";
import { besidesOf, passesOn, plainReaders, rowCells } from "../log/merge-columns";
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
/** A judge of a log's lines. Where no two columns say the same thing, each cell goes straight to its place. */
export class LineJudge {
  readonly log: LogJudge;
  private readonly headings: Headings;
  private readonly plain: { readonly columns: readonly number[]; readonly readers: readonly (Reader | null)[] } | null;
  private readonly result: number;
  /** Results that say of the item what another column says. */
  private readonly passing = new Map<CellValue, boolean>();
  constructor(headings: Headings, judging: Judging) {
    this.headings = headings;
    this.log = new LogJudge(columnsOf(headings), judging);
    const { fields } = this.log;
    const readers = plainReaders(headings);
    const byField = new Map((readers ?? []).map(([id, column, read]) => [id, { column, read }] as const));
    this.plain =
      readers === null
        ? null
        : { columns: fields.map((id) => byField.get(id)?.column ?? -1), readers: fields.map((id) => byField.get(id)?.read ?? null) };
    this.result = headings.columns.has("result") ? fields.indexOf("result") : -1;
  }
  /** A cell of the row that was judged last. */
  cell(id: FieldId): CellValue {
    const slot = this.log.fields.indexOf(id);
    return slot < 0 ? undefined : this.log.cells[slot];
  }
  /**
   * `overload` is the day on which the item's assembly was found overloaded; `asked` are the columns of the log that ask, as
   * in `openCells`.
   */
  judge(line: Line, overload: number | null = null, asked?: ReadonlySet<number>): JudgedItem {
    const { plain, headings, log, result } = this;
    if (plain === null) return this.judgeMerged(line, overload, asked);
    const { cells } = log;
    const { columns, readers } = plain;
    for (let slot = 0; slot < columns.length; slot += 1) {
      const cell = line[columns[slot] ?? -1];
      const read = readers[slot];
      cells[slot] = read == null ? cell : read(cell);
    }
    if (result >= 0 && this.passesOn(cells[result])) return this.judgeMerged(line, overload, asked);
    const open = openCells(line, headings, asked);
    return log.judge(open.length === 0 ? NOTHING_BESIDES : { ...NOTHING_BESIDES, open }, overload);
  }
  private judgeMerged(line: Line, overload: number | null, asked: ReadonlySet<number> | undefined): JudgedItem {
    const cells = rowCells(line, this.headings);
    const besides: Besides = besidesOf(line, this.headings, cells, asked);
    return this.log.judgeCells(cells, besides, overload);
  }
  private passesOn(cell: CellValue): boolean {
    if (typeof cell !== "string" || cell === "") return false;
    let passes = this.passing.get(cell);
    if (passes === undefined) {
      if (this.passing.size >= KEPT) this.passing.clear();
      this.passing.set(cell, (passes = passesOn(cell)));
    }
    return passes;
  }
}
const KEPT = 5000;
