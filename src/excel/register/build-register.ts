import { Sending } from "../kit/in-parts";
import { today } from "../kit/clock";
import { inWorkbook, whileWriting } from "../kit/run";
import { HEADING_ROW, HOUSE_SHEET, NOTES_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { BuildResult, Progress, ReadLog } from "../port";
import type { RegisterPlan } from "./plan";
import { planRegister } from "./plan-register";
import { type Standing, standing } from "./read-register";
import { refuse, renamedHeadings } from "./refusals";
import { otherShape } from "./shape";
import { writeRegister } from "./write-register";

export async function build(log: ReadLog, onProgress: (progress: Progress) => void, signal: AbortSignal): Promise<BuildResult> {
  if (log.report.items.length === 0)
    throw new WorkbookError(
      "no log",
      `The log on ${log.place.sheet} has headings and no items under them. Fill in a row, then read it again; nothing was written.`,
    );
  if (log.report.problems.length > 0)
    throw new WorkbookError("duplicate", `${log.report.problems.join(" ")} Put that right, then build again; nothing was written.`);
  return inWorkbook(async (context) => {
    onProgress({ done: 0, of: log.report.items.length, step: "Looking for a register" });
    const now = await standing(context);
    const { found } = now;
    if (found !== null && (found.row !== HEADING_ROW - 1 || found.column !== 0))
      throw otherShape(`its headings do not stand in row ${String(HEADING_ROW)} from column A on`, found.sheet.name);
    const own = found !== null && (log.place.sheetId === found.sheet.id || log.place.sheet === found.sheet.name);
    const plan = planRegister(log.report, log.place, { register: now.table, copied: now.copied, own });
    if (now.table !== null) refuse(now.table, now.copied, plan.layout, { name: now.register.name, unfinished: now.unfinished });
    await refuseCellsInTheWay(context, plan, now);
    if (signal.aborted) throw new WorkbookError("stopped", "Stopped before anything was written.");
    const sending = new Sending(context);
    try {
      await writeRegister(
        context,
        plan,
        now,
        { basis: log.report.basis, asOf: log.report.asOf === today() ? null : log.report.asOf, onProgress },
        sending,
      );
    } catch (fault) {
      throw sending.wrote ? whileWriting(fault) : fault;
    }
    return {
      sheet: now.register.name,
      items: plan.rows.length,
      added: plan.added,
      kept: plan.kept,
      differing: plan.differing,
      onlyInRegister: plan.onlyInRegister,
      sentences: [...plan.sentences, ...strangers(now, log)],
    };
  });
}
/** Sheets that bear our names and are somebody else's: they are left alone, and that is said. */
function strangers({ notes, house, sheets }: Standing, { report }: ReadLog): readonly string[] {
  return [
    ...(notes === null
      ? [`The sheet "${NOTES_SHEET}" is not the add-in's and was left as it is; rename it, and the next build writes the notes.`]
      : []),
    ...(house === null && sheets.named(HOUSE_SHEET) !== null && report.basis.includes("house")
      ? [
          `The sheet "${HOUSE_SHEET}" is not the add-in's and was left as it is. Its limits count in the pane; the register's cells follow only a sheet that the pane made.`,
        ]
      : []),
  ];
}
/** New rows need room under the table; what somebody wrote there is never overwritten. */
async function refuseCellsInTheWay(context: Excel.RequestContext, plan: RegisterPlan, { found, register }: Standing): Promise<void> {
  if (found === null) return;
  const more = plan.rows.length - found.rows;
  if (more <= 0) return;
  const bottom = HEADING_ROW + found.rows + (found.totals ? 1 : 0);
  const below = context.workbook.worksheets
    .getItem(register.name)
    .getRangeByIndexes(bottom, 0, more, plan.layout.columns.length)
    .getUsedRangeOrNullObject(true);
  below.load("address");
  await context.sync();
  if (below.isNullObject) return;
  const address = below.address.slice(below.address.lastIndexOf("!") + 1);
  throw new WorkbookError(
    "other shape",
    `Cells stand under the register (${address}), where ${String(more)} new ${more === 1 ? "row needs" : "rows need"} room. Move them, then build again; nothing was written.`,
  );
}
/** Gives headings that were renamed over readings their names back; the number of them. */
export async function nameBack(): Promise<number> {
  return inWorkbook(async (context) => {
    const { found, table, copied } = await standing(context);
    if (found === null || table === null) return 0;
    const renamed = renamedHeadings(table, copied);
    const head = found.table.getHeaderRowRange();
    for (const { column, was } of renamed) head.getCell(0, column).values = [[was]];
    await context.sync();
    return renamed.length;
  });
}
