/**
 * Marks of the add-in's own sheets: defined names of the workbook. A name follows its sheet when that is renamed, is saved
 * with the file, and stays with the first one when a sheet is copied, so that neither another sheet of the same name nor a
 * copy is ever taken for one of ours.
 */
export const MARKS = {
  register: "GearVerdicts.Register",
  notes: "GearVerdicts.Notes",
  house: "GearVerdicts.House",
  types: "GearVerdicts.Types",
  copied: "GearVerdicts.Copied",
  workings: "GearVerdicts.Workings",
  /** Stands while a first build or a conversion is not finished. */
  building: "GearVerdicts.Building",
} as const;
export type Mark = keyof typeof MARKS;
const ALL = Object.keys(MARKS) as Mark[];
export interface SheetName {
  readonly id: string;
  readonly name: string;
  readonly visible: boolean;
}
export interface Sheets {
  readonly all: readonly SheetName[];
  /** The sheet that bears a mark; null where it is gone. */
  marked(name: Mark): SheetName | null;
  /** Whether the mark stands, wherever it leads. */
  stands(name: Mark): boolean;
  named(name: string): SheetName | null;
}
/** The workbook's sheets, and which of them bear a mark; one round trip. */
export async function readSheets(context: Excel.RequestContext): Promise<Sheets> {
  const { names, worksheets } = context.workbook;
  worksheets.load("items/id,items/name,items/visibility");
  const found = ALL.map((name) => {
    const item = names.getItemOrNullObject(MARKS[name]);
    item.load("formula");
    return { name, item };
  });
  await context.sync();
  const all = worksheets.items.map(({ id, name, visibility }) => ({ id, name, visible: visibility === Excel.SheetVisibility.visible }));
  const named = (name: string): SheetName | null => all.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()) ?? null;
  const standing = new Map(found.filter(({ item }) => !item.isNullObject).map(({ name, item }) => [name, String(item.formula)]));
  return {
    all,
    named,
    stands: (name) => standing.has(name),
    marked: (name) => named(sheetIn(standing.get(name) ?? "")),
  };
}
/** Sheet of an address such as ='Gear notes'!$A$1, or "". */
function sheetIn(formula: string): string {
  const [, quoted, plain] = /^=(?:'((?:[^']|'')+)'|([^'!]+))!/.exec(formula) ?? [];
  return quoted?.replaceAll("''", "'") ?? plain ?? "";
}
/** Puts a mark on a sheet, in place of one that leads elsewhere. */
export function putMark(context: Excel.RequestContext, sheet: Excel.Worksheet, name: Mark, stands: boolean): void {
  const { names } = context.workbook;
  if (stands) names.getItem(MARKS[name]).delete();
  names.add(MARKS[name], sheet.getRange("A1"));
}
export function takeMark(context: Excel.RequestContext, name: Mark): void {
  context.workbook.names.getItem(MARKS[name]).delete();
}
