/** Puts the drop-down button beside the selected cell when that cell has a list. */
import { ComponentManager, ILayoutService, SheetCanvasPopManagerService } from "@univerjs/preset-sheets-core";
import type { Book, Box, Sheet } from "../book/book";
import { showCell } from "../book/show";
import { DropDown, type DropDownProps } from "./drop-down";
import { type Grid, UNIT } from "./grid";
import { listAt, offered, showsDropDown } from "./lists";

const COMPONENT = "list of a cell";
export class ListButton {
  private readonly grid: Grid;
  private readonly chosen: (sheet: Sheet, row: number, column: number, word: string) => void;
  private popup: { dispose(): void } | undefined;

  constructor(grid: Grid, chosen: (sheet: Sheet, row: number, column: number, word: string) => void) {
    this.grid = grid;
    this.chosen = chosen;
    grid.injector.get(ComponentManager).register(COMPONENT, DropDown);
  }

  /** True when the cell at the top left of `box` has a list; `open` shows the list at once. */
  offer(book: Book, sheet: Sheet, gridId: string, box: Box, open: boolean): boolean {
    this.popup?.dispose();
    this.popup = undefined;
    const { row, column } = box;
    const validation = listAt(sheet, row, column);
    const words = validation && showsDropDown(validation) ? offered(book, sheet, validation) : [];
    if (words.length === 0) return false;
    const back = (): void => {
      this.offer(book, sheet, gridId, box, false);
      this.grid.injector.get(ILayoutService).focus();
    };
    const extraProps: DropDownProps = {
      words,
      current: showCell(sheet.cell(row, column)),
      open,
      choose: (word) => {
        this.chosen(sheet, row, column, word);
        back();
      },
      leave: back,
    };
    const popups = this.grid.injector.get(SheetCanvasPopManagerService);
    this.popup =
      popups.attachPopupToCell(
        row,
        column,
        { componentKey: COMPONENT, direction: "horizontal", extraProps: { ...extraProps } },
        UNIT,
        gridId,
      ) ?? undefined;
    return this.popup !== undefined;
  }
}
