/** Workbooks come from the samples on this server or from a file of the user's, and go to a file of the user's. */
import type { Book } from "../book/book";
import { readXlsx, writeXlsx } from "../file/xlsx";

/** File names of the samples, in order. */
export async function listSamples(): Promise<string[]> {
  const answer = await fetch("/samples/index.json");
  if (!answer.ok) throw new Error("The list of sample workbooks can't be read from the server; open a workbook of your own.");
  return (await answer.json()) as string[];
}
export async function openSample(fileName: string): Promise<Book> {
  const answer = await fetch(`/samples/${encodeURIComponent(fileName)}`);
  if (!answer.ok) throw new Error(`The sample ${fileName} is not on the server; run npm run samples.`);
  return readBook(fileName, await answer.arrayBuffer());
}
export async function openFile(file: File): Promise<Book> {
  return readBook(file.name, await file.arrayBuffer());
}
async function readBook(fileName: string, bytes: ArrayBuffer): Promise<Book> {
  let book: Book;
  try {
    book = await readXlsx(new Uint8Array(bytes));
  } catch (failure) {
    throw new Error(`${fileName} can't be opened. ${failure instanceof Error ? failure.message : String(failure)}`, { cause: failure });
  }
  book.fileName = fileName;
  return book;
}
/** Hands the book to the browser's own download. */
export async function saveBook(book: Book): Promise<void> {
  const bytes = await writeXlsx(book);
  const blob = new Blob([bytes as BlobPart], { type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = book.fileName;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}
/** A sample's file name as a title: `tidy-register.xlsx` is "Tidy register". */
export function titleOf(fileName: string): string {
  const words = fileName.replace(/\.xlsx$/i, "").replaceAll(/[-_]+/g, " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
