/** `Office.context.document.settings` in Node: a copy in memory until it is saved into the book. */
import type { Book } from "../book/book";

interface AsyncResult {
  status: "succeeded";
  value: unknown;
}
type Callback = (result: AsyncResult) => void;
export class LibrarySettings {
  private readonly book: Book;
  private values = new Map<string, unknown>();

  constructor(book: Book) {
    this.book = book;
    this.read();
  }

  get(name: string): unknown {
    return this.values.get(name) ?? null;
  }

  set(name: string, value: unknown): void {
    this.values.set(name, value);
  }

  remove(name: string): void {
    this.values.delete(name);
  }

  saveAsync(first?: Callback | object, callback?: Callback): void {
    this.book.settings.clear();
    for (const [name, value] of this.values) this.book.settings.set(name, JSON.stringify(value));
    this.finish(first, callback);
  }

  refreshAsync(first?: Callback | object, callback?: Callback): void {
    this.read();
    this.finish(first, callback);
  }

  private read(): void {
    this.values = new Map([...this.book.settings].map(([name, text]) => [name, JSON.parse(text) as unknown]));
  }

  private finish(first: Callback | object | undefined, callback: Callback | undefined): void {
    const call = typeof first === "function" ? (first as Callback) : callback;
    setTimeout(() => call?.({ status: "succeeded", value: this }), 0);
  }
}
