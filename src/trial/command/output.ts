/** What the command prints. Nothing is cut in a pipe, and no cell of a workbook speaks to the terminal. */
import type { Writable } from "node:stream";

/** Lines are handed over in pieces of about this many characters. */
const PIECE = 65_536;
/** Control characters, line separators, and marks that turn the direction of writing. */
const UNSEEN = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;
/** A text in one line, in which control characters are seen instead of obeyed. */
export function shown(text: string): string {
  return text.replace(UNSEEN, (character) => {
    const code = character.charCodeAt(0);
    if (code < 0x20) return String.fromCharCode(0x2400 + code);
    return code === 0x7f ? "\u2421" : escaped(character);
  });
}
/** JSON text for a terminal: what JSON itself leaves as it is and a terminal obeys is escaped as well. */
export function shownJson(value: unknown): string {
  return JSON.stringify(value).replace(UNSEEN, escaped);
}
function escaped(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
}
export class Output {
  private readonly stream: Writable;
  private waiting = "";
  private failure: NodeJS.ErrnoException | null = null;

  constructor(stream: Writable) {
    this.stream = stream;
    stream.on("error", (fault: NodeJS.ErrnoException) => {
      this.failure ??= fault;
    });
  }

  /** Prints one line. */
  line(text: string): void {
    this.whole(shown(text));
  }

  /** Prints a line that is fit for a terminal already. */
  whole(text: string): void {
    this.waiting += `${text}\n`;
    if (this.waiting.length >= PIECE) this.hand();
  }

  /** Resolves when everything has gone to the reader; throws one sentence when it could not. A reader that went away is no failure. */
  async drained(): Promise<void> {
    this.hand();
    if (!this.failure) await new Promise<void>((resolve) => this.stream.write("", () => setImmediate(resolve)));
    if (this.failure && this.failure.code !== "EPIPE")
      throw new Error(`What is printed could not be written whole (${this.failure.code ?? this.failure.message}).`);
  }

  private hand(): void {
    if (this.waiting !== "" && !this.failure) this.stream.write(this.waiting);
    this.waiting = "";
  }
}
