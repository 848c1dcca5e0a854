import { showLength, type Unit } from "../numbers/lengths";
import type { Length } from "./length";
import type { Read } from "./read";

/** A length cell, read once: its reading, how it is told, and what was prepared on it as the size as new. */
export class Size {
  readonly read: Read<Length>;
  private words: string | null = null;
  private readonly prepared: [Map<object, unknown> | null, Map<object, unknown> | null] = [null, null];
  constructor(read: Read<Length>) {
    this.read = read;
  }
  /** As a decimal with its unit, and as it was typed where that is a fraction or in feet; what stands there where it is no reading. */
  get typed(): string {
    return (this.words ??= wordsOf(this.read));
  }
  /** As a decimal with its unit alone. */
  get brief(): string {
    return this.read.kind === "value" ? showLength(this.read.value.size, this.read.value.unit) : this.read.text;
  }
  /** What holds for this size by `key`, in a unit; made once. */
  once<T>(key: object, unit: Unit, make: () => T): T {
    const at = unit === "in" ? 0 : 1;
    const kept = (this.prepared[at] ??= new Map<object, unknown>());
    let made = kept.get(key) as T | undefined;
    if (made === undefined) kept.set(key, (made = make()));
    return made;
  }
}
function wordsOf(read: Read<Length>): string {
  if (read.kind !== "value") return read.text;
  const figure = showLength(read.value.size, read.value.unit);
  return /\/|\d ?'(?!')/.test(read.text) ? `${figure} (${read.text})` : figure;
}
