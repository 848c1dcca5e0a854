/** Opens a book in the real client library: `const host = openBook(book)`, then `Excel.run(...)` works on it. */
import { Book } from "../src/trial/book/book";
import { Host } from "../src/trial/host/host";
import { type HostOptions } from "../src/trial/host/host";
import { connect, loadClientLibrary } from "../src/trial/carriers/node";

loadClientLibrary();

/** The year is fixed, so that dates typed without one don't move. */
export function openBook(book: Book = new Book(), options: HostOptions = {}): Host {
  const host = new Host(book, { year: 2026, ...options });
  connect(host);
  return host;
}

/** Lets events that are on their way arrive. */
export function eventsDelivered(): Promise<void> {
  return new Promise((done) => setTimeout(done, 20));
}
