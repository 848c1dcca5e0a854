/** Long work in the workbook that may never end: a calculation that hangs gives no answer and no error. */
import { WorkbookError } from "../../excel/kit/workbook-error";

/** Without a word for so long, the pane stops waiting. The last step of a build, the calculation, is one silent piece. */
export const SILENCE_MS = 180_000;
/** The work's answer, or a sentence when nothing was heard of it for too long; each call of `heard` begins the time anew. */
export function whileHeard<T>(work: (heard: () => void) => Promise<T>, giveUp: () => void): Promise<T> {
  return new Promise<T>((resolve, reject) => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const heard = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        giveUp();
        reject(
          new WorkbookError(
            "host",
            "The workbook has not answered for 3 minutes. It may still be calculating: wait until it rests, look at the register, then build again. What was typed stays.",
          ),
        );
      }, SILENCE_MS);
    };
    heard();
    work(heard)
      .then(resolve, reject)
      .finally(() => {
        clearTimeout(timer);
      });
  });
}
