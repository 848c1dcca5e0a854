/** How far a cell is from being in sight. Pure. */
export interface Edges {
  readonly start: number;
  readonly end: number;
}
/** How far to scroll, in pixels, so that a cell lies between the edges of the window; its start goes before its end. */
export function distance(cell: Edges, window: Edges): number {
  if (cell.start < window.start) return cell.start - window.start;
  if (cell.end > window.end) return Math.min(cell.end - window.end, cell.start - window.start);
  return 0;
}
