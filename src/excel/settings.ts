import * as z from "zod/mini";
import { FIELD_IDS, type FieldId } from "../engine/columns";
import { BASIS_IDS, type BasisId, DEFAULT_BASIS } from "../engine/rules/rule-sets";
import { WorkbookError } from "./kit/workbook-error";
import type { SavedState } from "./port";

const SETTING = "gearVerdicts";
const SAVED = z.object({
  basis: z.array(z.enum(BASIS_IDS as [BasisId, ...BasisId[]])),
  choices: z.record(z.string(), z.union([z.enum(FIELD_IDS as [FieldId, ...FieldId[]]), z.null()])),
  inspector: z.optional(z.string()),
  units: z.optional(z.record(z.string(), z.enum(["in", "mm"]))),
  place: z.union([
    z.object({
      sheet: z.string(),
      address: z.string(),
      how: z.enum(["table", "selection", "found", "register"]),
      table: z.string(),
      sheetId: z.optional(z.string()),
    }),
    z.null(),
  ]),
});
const FRESH: SavedState = { basis: DEFAULT_BASIS, choices: {}, place: null };
/** What an earlier version or another program left in the settings is checked before it is used. */
export function load(): Promise<SavedState> {
  const parsed = SAVED.safeParse(Office.context.document.settings.get(SETTING));
  return Promise.resolve(parsed.success && parsed.data.basis.length > 0 ? parsed.data : FRESH);
}
export function save(state: SavedState): Promise<void> {
  const { settings } = Office.context.document;
  settings.set(SETTING, JSON.parse(JSON.stringify(state)));
  return new Promise((resolve, reject) => {
    settings.saveAsync((result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve();
      else
        reject(
          new WorkbookError(
            "host",
            `The choices could not be kept in the workbook (${result.error.message}). They hold until the pane is closed.`,
          ),
        );
    });
  });
}
