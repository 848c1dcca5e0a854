/** Where a log stands. */
export interface LogPlace {
  readonly sheet: string;
  /** The sheet's own id, which stays when it is renamed; not known in what earlier versions saved. */
  readonly sheetId?: string | undefined;
  /** Address inside the sheet, such as A4:R96. */
  readonly address: string;
  readonly how: "table" | "selection" | "found" | "register";
  /** Table name, or "". */
  readonly table: string;
}
