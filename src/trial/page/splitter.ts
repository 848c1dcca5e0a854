/** The edge between grid and pane: dragged, or moved with the arrow keys. */
import { element } from "./elements";

const LEAST = 260;
const MOST = 720;
const STEP = 20;
export function movableEdge(): void {
  const edge = element("splitter", HTMLDivElement);
  const pane = element("pane", HTMLElement);
  const set = (width: number): void => {
    const fitting = Math.round(Math.min(MOST, window.innerWidth - 300, Math.max(LEAST, width)));
    pane.style.width = `${String(fitting)}px`;
    edge.setAttribute("aria-valuenow", String(fitting));
  };
  edge.setAttribute("aria-valuemin", String(LEAST));
  edge.setAttribute("aria-valuemax", String(MOST));
  set(320);

  edge.addEventListener("pointerdown", (down) => {
    edge.setPointerCapture(down.pointerId);
    edge.classList.add("moving");
    document.body.classList.add("dragging");
    const startsAt = down.clientX;
    const startWidth = pane.getBoundingClientRect().width;
    const move = (event: PointerEvent): void => {
      set(startWidth + startsAt - event.clientX);
    };
    const end = (): void => {
      edge.classList.remove("moving");
      document.body.classList.remove("dragging");
      edge.removeEventListener("pointermove", move);
    };
    edge.addEventListener("pointermove", move);
    edge.addEventListener("lostpointercapture", end, { once: true });
  });
  edge.addEventListener("keydown", (event) => {
    const width = pane.getBoundingClientRect().width;
    if (event.key === "ArrowLeft") set(width + STEP);
    else if (event.key === "ArrowRight") set(width - STEP);
    else if (event.key === "Home") set(LEAST);
    else if (event.key === "End") set(MOST);
    else return;
    event.preventDefault();
  });
}
