/** A date cell, told apart from a plain number by the cell's number format. */
export interface DateCell {
  readonly serial: number;
}
/** What a cell holds as the workbook hands it over. Null, undefined and "" are blank. */
export type CellValue = number | string | boolean | null | undefined | DateCell;
