/** Asks before a workbook that was changed gives way to another. */
import type { Book } from "../book/book";
import { element } from "./elements";

export type Choice = "save" | "open" | "stay";
/** Tells whether people or the add-in changed the book since it was opened or saved. */
export class Unsaved {
  private book: Book | null = null;
  private end: () => void = () => undefined;
  private changed = false;

  /** Follows another book, which counts as unchanged. */
  follow(book: Book): void {
    this.end();
    this.book = book;
    this.changed = false;
    // What a calculation writes follows from what was there.
    this.end = book.listen((change) => {
      if (change.kind === "cells" ? change.by !== "calc" : change.kind === "style" || change.kind === "sheets") this.changed = true;
    });
  }

  saved(): void {
    this.changed = false;
  }

  /** What to do with a changed book before `next` is opened; a book without changes just gives way. */
  async before(next: string): Promise<Choice> {
    if (this.book === null || !this.changed) return "open";
    return ask(`${this.book.fileName} was changed and is not saved. Opening ${next} drops the changes.`);
  }
}
function ask(text: string): Promise<Choice> {
  const dialog = element("unsaved", HTMLDialogElement);
  element("unsaved-text", HTMLParagraphElement).textContent = text;
  return new Promise((resolve) => {
    const ends = new AbortController();
    const answer = (choice: Choice): void => {
      ends.abort();
      dialog.close();
      resolve(choice);
    };
    for (const button of dialog.querySelectorAll("button"))
      button.addEventListener(
        "click",
        () => {
          answer(button.value as Choice);
        },
        { signal: ends.signal },
      );
    // Esc leaves everything as it is.
    dialog.addEventListener(
      "cancel",
      () => {
        answer("stay");
      },
      { signal: ends.signal },
    );
    dialog.showModal();
  });
}
