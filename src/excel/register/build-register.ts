import { today } from "../kit/clock";
import { inWorkbook } from "../kit/run";
import { HEADING_ROW, REGISTER_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { BuildResult, Progress, ReadLog } from "../port";
import { planRegister } from "./plan-register";
import { standing } from "./read-register";
import { otherShape, shapeOf } from "./shape";
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
    if (now.sheet && now.table === null) throw otherShape(now.why);
    if (now.table !== null) {
      const shape = shapeOf(now.table);
      if (!shape.ok) throw otherShape(shape.why);
      if (now.table.row !== HEADING_ROW - 1 || now.table.column !== 0)
        throw otherShape(`its headings do not stand in row ${String(HEADING_ROW)} from column A on`);
    }
    const plan = planRegister(log.report, log.place, { register: now.table, copied: now.copied });
    if (signal.aborted) throw new WorkbookError("stopped", "Stopped before anything was written.");
    await writeRegister(context, plan, {
      basis: log.report.basis,
      asOf: log.report.asOf === today() ? null : log.report.asOf,
      exists: now.table !== null,
      notesExist: now.notes,
      copiedExist: now.keeps,
      oldRows: now.table?.rows ?? 0,
      oldColumns: now.table?.columns ?? 0,
      onProgress,
    });
    return {
      sheet: REGISTER_SHEET,
      items: plan.rows.length,
      added: plan.added,
      kept: plan.kept,
      differing: plan.differing,
      onlyInRegister: plan.onlyInRegister,
      sentences: plan.sentences,
    };
  });
}
