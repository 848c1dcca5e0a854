/** Entry of the add-in's page: mounts the pane and connects the ribbon's buttons once Office is ready. */
import { createRoot } from "react-dom/client";
import { excelPort } from "../excel/workbook";
import { createBell } from "./ribbon/bell";
import { connectRibbon } from "./ribbon/commands";
import { fetchPlaces } from "./shell/OpenPlace";
import { Pane } from "./shell/Pane";

const bell = createBell();
void Office.onReady(() => {
  connectRibbon(bell);
  const host = document.getElementById("pane");
  if (host === null) throw new Error("The page has no place for the pane.");
  createRoot(host).render(<Pane port={excelPort} bell={bell} />);
  // What cannot be fetched now is fetched again, and told, when it is opened.
  void fetchPlaces().catch(() => undefined);
});
