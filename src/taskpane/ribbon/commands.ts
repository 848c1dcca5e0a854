/** The ribbon's buttons. Their names stand in the manifest. */
import type { Bell } from "./bell";

export function connectRibbon(bell: Bell): void {
  const button = (work: () => Promise<void>) => (event: Office.AddinCommands.Event) =>
    work().finally(() => {
      event.completed();
    });
  const showPane = (): Promise<void> => Office.addin.showAsTaskpane();
  const rebuild = async (): Promise<void> => {
    // A failure must be seen, so the pane comes forward with its sentence.
    if (!(await bell.ring())) await showPane();
  };
  associate("ShowPane", button(showPane));
  associate("RebuildRegister", button(rebuild));
}
/** Office takes a button that ends later, though its types say that it returns nothing. */
function associate(name: string, button: (event: Office.AddinCommands.Event) => unknown): void {
  Office.actions.associate(name, button);
}
