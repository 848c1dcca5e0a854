/**
 * Formulas with a range that ends where a cell says (`A1:INDEX(G:G,B3)`). The engine looks such a range up before it works
 * anything out, with what the cell held before: where that changed in the same pass, the formula is worked out once more.
 */
import { parseBox } from "../book/address";
import type { Book } from "../book/book";
import type { Touched } from "./engine";

const ENDS_AT = /:INDEX\([^,()]+,(?:'((?:[^']|'')+)'!)?(\$?[A-Z]+\$?\d+)\)/gi;
interface End {
  readonly sheet: string;
  readonly address: string;
  readonly before: unknown;
  readonly formulas: Touched[];
}
export class JoinedRanges {
  private readonly ends = new Map<string, End>();

  /** Forgets the formulas of the pass before. */
  begin(): void {
    this.ends.clear();
  }

  note(book: Book, formula: string, on: string, at: Touched): void {
    if (!formula.includes(":INDEX(")) return;
    for (const [, quoted, address = ""] of formula.matchAll(ENDS_AT)) {
      const sheet = quoted?.replaceAll("''", "'") ?? on;
      const id = `${sheet}!${address}`;
      const end = this.ends.get(id) ?? { sheet, address, before: valueAt(book, sheet, address), formulas: [] };
      end.formulas.push(at);
      this.ends.set(id, end);
    }
  }

  /** The formulas whose range ends elsewhere now. */
  moved(book: Book): Touched[] {
    return [...this.ends.values()].flatMap(({ sheet, address, before, formulas }) =>
      valueAt(book, sheet, address) === before ? [] : formulas,
    );
  }
}
function valueAt(book: Book, sheet: string, address: string): unknown {
  const box = parseBox(address);
  const cell = box ? book.sheet(sheet)?.cell(box.row, box.column) : undefined;
  return cell?.error ?? cell?.value ?? null;
}
