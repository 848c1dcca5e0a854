/** The ribbon's buttons. Their names stand in the manifest. */
import type { Bell } from "./bell";

export function connectRibbon(bell: Bell): void {
  Office.actions.associate("ShowPane", async (event: Office.AddinCommands.Event) => {
    try {
      await Office.addin.showAsTaskpane();
    } finally {
      event.completed();
    }
  });
  Office.actions.associate("RebuildRegister", async (event: Office.AddinCommands.Event) => {
    try {
      // A failure must be seen, so the pane comes forward with its sentence.
      if (!(await bell.ring())) await Office.addin.showAsTaskpane();
    } finally {
      event.completed();
    }
  });
}
