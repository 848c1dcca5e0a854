/**
 * Stands where Excel stands: answers the batches of the real, unmodified client library from a book. Knows nothing of
 * how the messages travel; `node.ts` and `web.ts` carry them.
 */
import { parseBox, splitSheet } from "../book/address";
import type { Book, Box, Calculator, Sheet } from "../book/book";
import { invalidArgument, itemNotFound } from "../book/errors";
import { Events } from "./events";
import { type InvocationOptions, type InvocationResult, Invocations } from "./invocations";
import { type RuntimeState, serviceNamed } from "./objects/services";
import { Range } from "./objects/range";
import { Workbook } from "./objects/workbook";
import { Worksheet } from "./objects/worksheet";
import { runBatch } from "./protocol/batch";
import { HostState } from "./protocol/state";
import { type Answer, DELAY_FOR_CELL_EDIT, type Entry, PAYLOAD_LIMIT, type RequestBody, type ResponseBody } from "./protocol/wire";
import { writeValues } from "./sheet/write";

/** What brings the workbook's own messages to the add-in. */
export interface Carrier {
  post(entries: Entry[]): void;
  /** Presses a ribbon button; resolves when the add-in has completed its command. */
  press(name: string): Promise<void>;
}
export interface HostOptions {
  calculator?: Calculator;
  /** Requirement sets that the workbook claims to have. */
  requirements?: Readonly<Record<string, string>>;
  /** The year that completes a date typed without one; this year when left out. */
  year?: number;
}
/** The manifest's minimum (what is newer has to be asked for), and waiting for the end of a cell's editing, which every Excel with these has. */
export const MINIMUM_REQUIREMENTS: Readonly<Record<string, string>> = {
  ExcelApi: "1.12",
  SharedRuntime: "1.1",
  CustomFunctionsRuntime: "1.3",
  DelayForCellEdit: "1.1",
};
export interface RequestRecord {
  readonly bytes: number;
  readonly answered: number;
  /** How many actions the batch held. */
  readonly actions: number;
}
export class Host {
  readonly book: Book;
  readonly requirements: Readonly<Record<string, string>>;
  /** Every batch so far, in order: one for each `sync()`. */
  readonly requests: RequestRecord[] = [];
  readonly runtime: RuntimeState = { visibility: "Visible", startup: "Inactive" };
  private readonly state: HostState;
  private readonly workbook: Workbook;
  private readonly events: Events;
  private readonly invocations: Invocations;
  private carrier: Carrier | null = null;
  private queue: Promise<unknown> = Promise.resolve();
  private isEditing = false;
  private onEditEnd: (() => void)[] = [];

  constructor(book: Book, options: HostOptions = {}) {
    if (book.sheets.length === 0) book.addSheet("Sheet1");
    this.book = book;
    this.requirements = options.requirements ?? MINIMUM_REQUIREMENTS;
    this.state = new HostState(
      book,
      options.calculator ?? null,
      () => options.year ?? new Date().getFullYear(),
      (state) => ({
        range: (sheet, box) => new Range(state, sheet, box),
        worksheet: (sheet) => new Worksheet(state, sheet),
      }),
    );
    this.workbook = new Workbook(this.state);
    const post = (entries: Entry[]): void => {
      this.carrier?.post(entries);
    };
    this.events = new Events(this.state, post);
    this.invocations = new Invocations(post);
  }

  /** True while the user is typing in a cell. */
  get editing(): boolean {
    return this.isEditing;
  }
  set editing(editing: boolean) {
    this.isEditing = editing;
    if (editing) return;
    const waiting = this.onEditEnd;
    this.onEditEnd = [];
    for (const goOn of waiting) goOn();
  }

  attach(carrier: Carrier): void {
    this.carrier = carrier;
  }

  /** Ends the host: the book is no longer listened to. */
  close(): void {
    this.carrier = null;
    this.state.close();
    this.events.close();
  }

  /** Answers one request as it came over the wire, with the limits of Excel on the web. */
  async answer(text: string, flags = 0): Promise<Answer> {
    const bytes = utf8Length(text);
    if (bytes > PAYLOAD_LIMIT) {
      this.requests.push({ bytes, answered: 0, actions: 0 });
      return { ok: false, code: "RequestPayloadSizeLimitExceeded", message: "The request payload size has exceeded the limit." };
    }
    if (this.isEditing) {
      if ((flags & DELAY_FOR_CELL_EDIT) === 0) {
        return { ok: false, code: "InvalidOperationInCellEditMode", message: "Excel is in cell-editing mode." };
      }
      await new Promise<void>((goOn) => this.onEditEnd.push(goOn));
    }
    const body = JSON.parse(text) as RequestBody;
    let response: string;
    try {
      response = JSON.stringify(await this.run(body));
    } catch (failure) {
      // Formulas that come to no end, say: the add-in hears of it and is free again.
      return { ok: false, code: "GeneralException", message: failure instanceof Error ? failure.message : String(failure) };
    }
    const answered = utf8Length(response);
    this.requests.push({ bytes, answered, actions: body.Actions.length });
    if (answered > PAYLOAD_LIMIT) {
      return { ok: false, code: "ResponsePayloadSizeLimitExceeded", message: "The response payload size has exceeded the limit." };
    }
    return { ok: true, text: response };
  }

  /** Runs one batch; batches wait for each other. The answer comes when formulas are up to date. */
  run(body: RequestBody): Promise<ResponseBody> {
    const result = this.queue.then(() => this.runNow(body));
    // The next batch goes on whether this one failed or not; its caller hears of the failure.
    this.queue = result.catch(() => undefined);
    return result;
  }

  private async runNow(body: RequestBody): Promise<ResponseBody> {
    const roots = { root: this.workbook, service: (name: string) => serviceNamed(this.state, name, this.invocations, this.runtime) };
    const response = await runBatch(this.state, roots, body);
    this.state.calculationSuspended = false;
    await this.state.calculate();
    return response;
  }

  /** The user types into a cell (or a colleague elsewhere does, with "coauthor"). */
  async type(sheetName: string, address: string, entry: unknown, by: "user" | "coauthor" = "user"): Promise<void> {
    const { sheet, box } = this.place(sheetName, address);
    writeValues(this.state, sheet, box, entry, by, "typing");
    this.state.stale = true;
    await this.state.calculate();
  }

  /** The user selects a range. */
  select(sheetName: string, address: string): void {
    const { sheet, box } = this.place(sheetName, address);
    this.state.select(sheet, box, "user");
  }

  /** Presses a ribbon button of the add-in. */
  async pressButton(name: string): Promise<void> {
    if (!this.carrier) throw new Error(`No add-in is connected that could answer the button ${name}.`);
    await this.carrier.press(name);
  }

  /** Calls a worksheet function through the library's runtime. */
  invoke(id: string, parameters: readonly unknown[], options?: InvocationOptions): Promise<InvocationResult> {
    return this.invocations.invoke(id, parameters, options);
  }

  cancelInvocation(): void {
    this.invocations.cancel();
  }

  private place(sheetName: string, address: string): { sheet: Sheet; box: Box } {
    const sheet = this.book.sheet(sheetName);
    const box = parseBox(splitSheet(address).address);
    if (!sheet) throw itemNotFound(`the sheet ${sheetName}`);
    if (!box) throw invalidArgument(`${address} is no address.`);
    return { sheet, box };
  }
}
/** Bytes of a text on the wire. */
export function utf8Length(text: string): number {
  let bytes = text.length;
  for (let at = 0; at < text.length; at += 1) {
    const unit = text.charCodeAt(at);
    if (unit > 0x7f) bytes += unit > 0x7ff && (unit < 0xd800 || unit > 0xdfff) ? 2 : 1;
  }
  return bytes;
}
