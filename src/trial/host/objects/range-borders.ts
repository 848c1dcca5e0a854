/** Borders of a range, kept cell by cell. */
import { bottomOf, rightOf } from "../../book/address";
import type { Border, Box, Edge, Sheet } from "../../book/book";
import { colorOf } from "../../book/colors";
import { invalidArgument, notModelled } from "../../book/errors";
import { HostCollection, HostObject, sameText } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { restyle, sharedStyle } from "../sheet/style";

interface Side {
  edge: Edge;
  /** The cells of the range that carry the line; null when the range has no such line. */
  cells(box: Box): Box | null;
}
const SIDES: Readonly<Record<string, Side>> = {
  EdgeTop: { edge: "Top", cells: (box) => ({ ...box, rows: 1 }) },
  EdgeBottom: { edge: "Bottom", cells: (box) => ({ ...box, row: bottomOf(box), rows: 1 }) },
  EdgeLeft: { edge: "Left", cells: (box) => ({ ...box, columns: 1 }) },
  EdgeRight: { edge: "Right", cells: (box) => ({ ...box, column: rightOf(box), columns: 1 }) },
  InsideHorizontal: { edge: "Bottom", cells: (box) => (box.rows > 1 ? { ...box, rows: box.rows - 1 } : null) },
  InsideVertical: { edge: "Right", cells: (box) => (box.columns > 1 ? { ...box, columns: box.columns - 1 } : null) },
};
const STYLES = ["None", "Continuous", "Dash", "DashDot", "DashDotDot", "Dot", "Double", "SlantDashDot"];
const WEIGHTS = ["Hairline", "Thin", "Medium", "Thick"];
export class RangeBorderCollection extends HostCollection<RangeBorder> {
  readonly type = "RangeBorderCollection";
  private readonly sheet: Sheet;
  private readonly box: Box;

  constructor(state: HostState, sheet: Sheet, box: Box) {
    super(state);
    this.sheet = sheet;
    this.box = box;
  }

  list(): RangeBorder[] {
    return Object.entries(SIDES).map(([index, side]) => new RangeBorder(this.state, this.sheet, this.box, index, side));
  }

  answersTo(item: RangeBorder, key: string | number): boolean {
    return sameText(item.SideIndex, key);
  }

  override GetItem(key: string | number): RangeBorder {
    const found = this.find(key);
    if (!found) throw notModelled(`RangeBorderCollection.getItem(${String(key)})`);
    return found;
  }
}
export class RangeBorder extends HostObject {
  readonly type = "RangeBorder";
  readonly scalars = ["SideIndex", "Style", "Weight", "Color"];
  readonly SideIndex: string;
  private readonly sheet: Sheet;
  private readonly box: Box;
  private readonly side: Side;

  constructor(state: HostState, sheet: Sheet, box: Box, index: string, side: Side) {
    super(state);
    this.sheet = sheet;
    this.box = box;
    this.SideIndex = index;
    this.side = side;
  }

  get Id(): string {
    return this.SideIndex;
  }

  get Style(): string | null {
    return this.shared((border) => border?.style ?? "None");
  }
  set Style(given: string | null) {
    const style = STYLES.find((known) => known === given);
    if (style === undefined) throw invalidArgument(undefined, "RangeBorder.style");
    this.change("style", (border) => (style === "None" ? null : { ...border, style }));
  }

  get Weight(): string | null {
    return this.shared((border) => border?.weight ?? "Thin");
  }
  set Weight(given: string | null) {
    const weight = WEIGHTS.find((known) => known === given);
    if (weight === undefined) throw invalidArgument(undefined, "RangeBorder.weight");
    this.change("weight", (border) => ({ ...border, weight }));
  }

  get Color(): string | null {
    return this.shared((border) => border?.color ?? "#000000");
  }
  set Color(given: unknown) {
    const color = colorOf(given, "RangeBorder.color");
    this.change("color", (border) => ({ ...border, color }));
  }

  private shared<T>(read: (border: Border | undefined) => T): T | null {
    const cells = this.side.cells(this.box);
    return cells && sharedStyle(this.sheet, cells, (style) => read(style?.borders?.[this.side.edge]));
  }

  private change(member: string, change: (border: Border) => Border | null): void {
    const cells = this.side.cells(this.box);
    if (!cells) return;
    const { edge } = this.side;
    restyle(this.state, this.sheet, cells, `RangeBorder.${member}`, (style) => {
      const next = change(style.borders?.[edge] ?? { style: "Continuous", color: "#000000", weight: "Thin" });
      style.borders = { ...style.borders };
      if (next) style.borders[edge] = next;
      else Reflect.deleteProperty(style.borders, edge);
    });
  }
}
