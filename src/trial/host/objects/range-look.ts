/** Fill, font and lock of the cells of a range. */
import type { Box, CellStyle, Sheet } from "../../book/book";
import { colorOf } from "../../book/colors";
import { invalidArgument } from "../../book/errors";
import { HostObject } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { restyle, sharedStyle } from "../sheet/style";

abstract class Look extends HostObject {
  protected readonly sheet: Sheet;
  protected readonly box: Box;

  constructor(state: HostState, sheet: Sheet, box: Box) {
    super(state);
    this.sheet = sheet;
    this.box = box;
  }

  protected shared<T>(read: (style: CellStyle | undefined) => T): T | null {
    return sharedStyle(this.sheet, this.box, read);
  }

  protected change(member: string, change: (style: CellStyle) => void): void {
    restyle(this.state, this.sheet, this.box, `${this.type}.${member}`, change);
  }
}
export class RangeFill extends Look {
  readonly type = "RangeFill";
  readonly scalars = ["Color"];

  get Color(): string | null {
    return this.shared((style) => style?.fill ?? "#FFFFFF");
  }
  set Color(given: unknown) {
    if (given === "") {
      this.Clear();
      return;
    }
    const color = colorOf(given, "RangeFill.color");
    this.change("color", (style) => {
      style.fill = color;
    });
  }

  Clear(): null {
    this.change("clear", (style) => {
      delete style.fill;
    });
    return null;
  }
}
const UNDERLINES = ["None", "Single", "Double", "SingleAccountant", "DoubleAccountant"];
export class RangeFont extends Look {
  readonly type = "RangeFont";
  readonly scalars = ["Name", "Size", "Color", "Italic", "Bold", "Underline", "Strikethrough"];

  get Bold(): boolean | null {
    return this.shared((style) => style?.bold ?? false);
  }
  set Bold(given: unknown) {
    this.change("bold", (style) => {
      style.bold = given === true;
    });
  }

  get Italic(): boolean | null {
    return this.shared((style) => style?.italic ?? false);
  }
  set Italic(given: unknown) {
    this.change("italic", (style) => {
      style.italic = given === true;
    });
  }

  get Strikethrough(): boolean | null {
    return this.shared((style) => style?.strikethrough ?? false);
  }
  set Strikethrough(given: unknown) {
    this.change("strikethrough", (style) => {
      style.strikethrough = given === true;
    });
  }

  get Underline(): string | null {
    return this.shared((style) => style?.underline ?? "None");
  }
  set Underline(given: unknown) {
    const underline = UNDERLINES.find((known) => known === given);
    if (underline === undefined) throw invalidArgument(undefined, "RangeFont.underline");
    this.change("underline", (style) => {
      style.underline = underline;
    });
  }

  get Size(): number | null {
    return this.shared((style) => style?.size ?? 11);
  }
  set Size(size: unknown) {
    if (typeof size !== "number" || size < 1 || size > 409) throw invalidArgument(undefined, "RangeFont.size");
    this.change("size", (style) => {
      style.size = size;
    });
  }

  get Name(): string | null {
    return this.shared((style) => style?.fontName ?? "Calibri");
  }
  set Name(name: string | null) {
    if (name === null) throw invalidArgument(undefined, "RangeFont.name");
    this.change("name", (style) => {
      style.fontName = name;
    });
  }

  get Color(): string | null {
    return this.shared((style) => style?.color ?? "#000000");
  }
  set Color(given: unknown) {
    const color = colorOf(given, "RangeFont.color");
    this.change("color", (style) => {
      style.color = color;
    });
  }
}
export class FormatProtection extends Look {
  readonly type = "FormatProtection";
  readonly scalars = ["Locked"];

  get Locked(): boolean | null {
    return this.shared((style) => style?.locked ?? true);
  }
  set Locked(given: unknown) {
    this.change("locked", (style) => {
      style.locked = given !== false;
    });
  }
}
