import { addressOf, LAST_COLUMN, LAST_ROW, parseBox } from "../../book/address";
import type { Box, PageSetup, Sheet } from "../../book/book";
import { invalidArgument, notModelled } from "../../book/errors";
import { type Found, HostObject, isRange, NULL_OBJECT } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";

interface Zoom {
  horizontalFitToPages?: number | null;
  verticalFitToPages?: number | null;
  scale?: number | null;
}
abstract class PagePart extends HostObject {
  protected readonly sheet: Sheet;

  constructor(state: HostState, sheet: Sheet) {
    super(state);
    this.sheet = sheet;
  }

  protected get page(): PageSetup {
    return this.sheet.page;
  }

  protected tell(): void {
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
  }
}
export class PageLayout extends PagePart {
  readonly type = "PageLayout";
  readonly scalars = [
    "Orientation",
    "PaperSize",
    "Zoom",
    "CenterHorizontally",
    "CenterVertically",
    "PrintGridlines",
    "LeftMargin",
    "RightMargin",
    "TopMargin",
    "BottomMargin",
    "HeaderMargin",
    "FooterMargin",
  ];

  get HeadersFooters(): HeaderFooterGroup {
    return new HeaderFooterGroup(this.state, this.sheet);
  }

  get Orientation(): string {
    return this.page.orientation ?? "Portrait";
  }
  set Orientation(given: string) {
    const orientation = (["Portrait", "Landscape"] as const).find((known) => known === given);
    if (!orientation) throw invalidArgument(undefined, "PageLayout.orientation");
    this.page.orientation = orientation;
    this.tell();
  }

  get PaperSize(): string {
    return this.page.paperSize ?? "Letter";
  }
  set PaperSize(size: string) {
    this.page.paperSize = size;
    this.tell();
  }

  get Zoom(): Zoom {
    const { fitWide, fitTall, scale } = this.page;
    if (fitWide === undefined && fitTall === undefined) return { scale: scale ?? 100 };
    return {
      ...(fitWide !== undefined && { horizontalFitToPages: fitWide }),
      ...(fitTall !== undefined && { verticalFitToPages: fitTall }),
    };
  }
  set Zoom(zoom: Zoom) {
    delete this.page.fitWide;
    delete this.page.fitTall;
    delete this.page.scale;
    if (typeof zoom.horizontalFitToPages === "number") this.page.fitWide = zoom.horizontalFitToPages;
    if (typeof zoom.verticalFitToPages === "number") this.page.fitTall = zoom.verticalFitToPages;
    if (typeof zoom.scale === "number") {
      if (zoom.scale < 10 || zoom.scale > 400) throw invalidArgument(undefined, "PageLayout.zoom");
      this.page.scale = zoom.scale;
    }
    this.tell();
  }

  get CenterHorizontally(): boolean {
    return this.page.centerHorizontally ?? false;
  }
  set CenterHorizontally(center: boolean) {
    this.page.centerHorizontally = center;
    this.tell();
  }
  get CenterVertically(): boolean {
    return this.page.centerVertically ?? false;
  }
  set CenterVertically(center: boolean) {
    this.page.centerVertically = center;
    this.tell();
  }
  get PrintGridlines(): boolean {
    return this.page.printGridlines ?? false;
  }
  set PrintGridlines(print: boolean) {
    this.page.printGridlines = print;
    this.tell();
  }

  get LeftMargin(): number {
    return this.margin("Left", 50.4);
  }
  set LeftMargin(points: number) {
    this.setMargin("Left", points);
  }
  get RightMargin(): number {
    return this.margin("Right", 50.4);
  }
  set RightMargin(points: number) {
    this.setMargin("Right", points);
  }
  get TopMargin(): number {
    return this.margin("Top", 54);
  }
  set TopMargin(points: number) {
    this.setMargin("Top", points);
  }
  get BottomMargin(): number {
    return this.margin("Bottom", 54);
  }
  set BottomMargin(points: number) {
    this.setMargin("Bottom", points);
  }
  get HeaderMargin(): number {
    return this.margin("Header", 21.6);
  }
  set HeaderMargin(points: number) {
    this.setMargin("Header", points);
  }
  get FooterMargin(): number {
    return this.margin("Footer", 21.6);
  }
  set FooterMargin(points: number) {
    this.setMargin("Footer", points);
  }

  SetPrintArea(range: RangeObject | string): null {
    this.page.printArea = addressOf(boxOf(range, "PageLayout.setPrintArea"));
    this.tell();
    return null;
  }

  SetPrintTitleRows(range: RangeObject | string): null {
    const box = boxOf(range, "PageLayout.setPrintTitleRows");
    this.page.titleRows = addressOf({ ...box, column: 0, columns: LAST_COLUMN }, true);
    this.tell();
    return null;
  }

  SetPrintTitleColumns(range: RangeObject | string): null {
    const box = boxOf(range, "PageLayout.setPrintTitleColumns");
    this.page.titleColumns = addressOf({ ...box, row: 0, rows: LAST_ROW }, true);
    this.tell();
    return null;
  }

  GetPrintTitleRowsOrNullObject(): Found<RangeObject> {
    return this.rangeAt(this.page.titleRows);
  }
  GetPrintTitleColumnsOrNullObject(): Found<RangeObject> {
    return this.rangeAt(this.page.titleColumns);
  }

  private rangeAt(address: string | undefined): Found<RangeObject> {
    const box = address === undefined ? null : parseBox(address);
    return box ? this.state.make.range(this.sheet, box) : NULL_OBJECT;
  }

  private margin(side: keyof NonNullable<PageSetup["margins"]>, standard: number): number {
    return this.page.margins?.[side] ?? standard;
  }

  private setMargin(side: keyof NonNullable<PageSetup["margins"]>, points: number): void {
    if (typeof points !== "number" || points < 0) throw invalidArgument(undefined, "PageLayout.margin");
    this.page.margins = { ...this.page.margins, [side]: points };
    this.tell();
  }
}
function boxOf(range: RangeObject | string, location: string): Box {
  const box = isRange(range) ? range.box : parseBox(range);
  if (!box) throw invalidArgument(undefined, location);
  return box;
}
class HeaderFooterGroup extends PagePart {
  readonly type = "HeaderFooterGroup";
  readonly scalars = ["State"];
  get DefaultForAllPages(): HeaderFooter {
    return new HeaderFooter(this.state, this.sheet);
  }
  get State(): string {
    return "Default";
  }
  set State(state: string) {
    if (state !== "Default") throw notModelled(`HeaderFooterGroup.State ${state}`);
  }
}
/** Excel specifications and limits (support.microsoft.com): "Characters in a header or footer: 255". */
const LONGEST_LINE = 255;
const HEADER = ["leftHeader", "centerHeader", "rightHeader"] as const;
const FOOTER = ["leftFooter", "centerFooter", "rightFooter"] as const;
const LINES = {
  leftHeader: HEADER,
  centerHeader: HEADER,
  rightHeader: HEADER,
  leftFooter: FOOTER,
  centerFooter: FOOTER,
  rightFooter: FOOTER,
} as const;
class HeaderFooter extends PagePart {
  readonly type = "HeaderFooter";
  readonly scalars = ["LeftHeader", "CenterHeader", "RightHeader", "LeftFooter", "CenterFooter", "RightFooter"];
  get LeftHeader(): string {
    return this.page.leftHeader ?? "";
  }
  set LeftHeader(text: string) {
    this.put("leftHeader", text);
  }
  get CenterHeader(): string {
    return this.page.centerHeader ?? "";
  }
  set CenterHeader(text: string) {
    this.put("centerHeader", text);
  }
  get RightHeader(): string {
    return this.page.rightHeader ?? "";
  }
  set RightHeader(text: string) {
    this.put("rightHeader", text);
  }
  get LeftFooter(): string {
    return this.page.leftFooter ?? "";
  }
  set LeftFooter(text: string) {
    this.put("leftFooter", text);
  }
  get CenterFooter(): string {
    return this.page.centerFooter ?? "";
  }
  set CenterFooter(text: string) {
    this.put("centerFooter", text);
  }
  get RightFooter(): string {
    return this.page.rightFooter ?? "";
  }
  set RightFooter(text: string) {
    this.put("rightFooter", text);
  }

  private put(part: keyof typeof LINES, text: string): void {
    const line = LINES[part];
    // In the file a line is one text, each part of it behind its own code (&L, &C, &R).
    const length = line.reduce((sum, one) => {
      const held = one === part ? text : (this.page[one] ?? "");
      return held === "" ? sum : sum + 2 + held.length;
    }, 0);
    if (length > LONGEST_LINE)
      throw invalidArgument(
        `A header or footer takes ${String(LONGEST_LINE)} characters with its codes; this one has ${String(length)}.`,
        "HeaderFooter",
      );
    this.page[part] = text;
    this.tell();
  }
}
