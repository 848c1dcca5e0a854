/**
 * Keeps the selected cell in sight. Beside frozen columns the grid counts columns as if all were as wide as the frozen
 * ones, so it scrolls too little where they are wider and leaves the cell under the frozen part or outside the window.
 */
import { ICommandService, type IRange } from "@univerjs/core";
import {
  IRenderManagerService,
  SetScrollRelativeCommand,
  SHEET_VIEWPORT_KEY,
  SheetSkeletonManagerService,
} from "@univerjs/preset-sheets-core";
import { distance } from "./distance";
import type { Grid } from "./grid";

/** Scrolls the rest of the way to a cell; rows and columns that are frozen are always in sight. */
export function keepInSight(grid: Grid, unit: string, { startRow, startColumn }: IRange): void {
  const render = grid.injector.get(IRenderManagerService).getRenderById(unit);
  const window = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN)?.calcViewportInfo().viewBound;
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
  if (!window || !skeleton) return;
  const { startRow: firstRow, startColumn: firstColumn } = grid.workbook.getActiveSheet().getFreeze();
  const cell = skeleton.getNoMergeCellWithCoordByIndex(startRow, startColumn);
  const offsetX =
    startColumn < firstColumn ? 0 : distance({ start: cell.startX, end: cell.endX }, { start: window.left, end: window.right });
  const offsetY = startRow < firstRow ? 0 : distance({ start: cell.startY, end: cell.endY }, { start: window.top, end: window.bottom });
  if (offsetX !== 0 || offsetY !== 0)
    void grid.injector.get(ICommandService).executeCommand(SetScrollRelativeCommand.id, { offsetX, offsetY });
}
