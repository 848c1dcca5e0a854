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
  history: "GearVerdicts.History",
  report: "GearVerdicts.Report",
  listOut: "GearVerdicts.ListOut",
  listExamine: "GearVerdicts.ListExamine",
  listLate: "GearVerdicts.ListLate",
  /** Stands while a first build or a conversion is not finished. */
  building: "GearVerdicts.Building",
} as const;
export type Mark = keyof typeof MARKS;
const ALL = Object.keys(MARKS) as Mark[];
/** All marks begin so; sheets of which there are many, such as rounds, have marks with a name of their own behind it. */
const OURS = "GearVerdicts.";
export const ROUND_MARK = `${OURS}Round.`;
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
  /** Sheets whose marks begin with `prefix`, each with what follows it. */
  markedWith(prefix: string): readonly { readonly rest: string; readonly sheet: SheetName }[];
  /** Ids of every sheet that bears a mark of the add-in. */
  readonly ours: ReadonlySet<string>;
}
/** The workbook's sheets, and which of them bear a mark; one round trip. */
export async function readSheets(context: Excel.RequestContext): Promise<Sheets> {
  const { names, worksheets } = context.workbook;
  worksheets.load("items/id,items/name,items/visibility");
  names.load("items/name,items/formula");
  await context.sync();
  const all = worksheets.items.map(({ id, name, visibility }) => ({ id, name, visible: visibility === Excel.SheetVisibility.visible }));
  const named = (name: string): SheetName | null => all.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()) ?? null;
  const marks = names.items.filter(({ name }) => name.startsWith(OURS)).map(({ name, formula }) => ({ name, formula: String(formula) }));
  const standing = new Map(ALL.flatMap((name) => marks.filter((mark) => mark.name === MARKS[name]).map(({ formula }) => [name, formula])));
  const markedWith: Sheets["markedWith"] = (prefix) =>
    marks.flatMap(({ name, formula }) => {
      const sheet = name.startsWith(prefix) ? named(sheetIn(formula)) : null;
      return sheet === null ? [] : [{ rest: name.slice(prefix.length), sheet }];
    });
  return {
    all,
    named,
    stands: (name) => standing.has(name),
    marked: (name) => named(sheetIn(standing.get(name) ?? "")),
    markedWith,
    ours: new Set(markedWith(OURS).map(({ sheet }) => sheet.id)),
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
