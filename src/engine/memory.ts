/**
 * What was worked out before, found again by the cells that it was worked out from. Logs repeat themselves, so most rows are put
 * together from what is known. A log that does not must not fill the machine: all memories together hold so many entries, and
 * what comes only once is not kept at all.
 */

// Taken out of its object once: where the functions run by themselves, each look at a global costs more than the work behind it.
const { imul } = Math;

/** How much is remembered in all: what was not asked for while so much that is new came in is forgotten. */
export class Room {
  /** Counts how often the room was full. */
  turns = 0;
  private readonly most: number;
  private taken = 0;
  /** What came by once: a mark by the figure that its cells make. Two that make the same figure are taken for one, which only keeps more. */
  private readonly marks = new Uint8Array(MARKS);
  private marked = 0;
  constructor(most: number) {
    this.most = most;
  }
  take(): void {
    this.taken += 1;
    if (this.taken < this.most) return;
    this.taken = 0;
    this.turns += 1;
  }
  /** Whether such cells came by lately; from now on they did. */
  cameBy(figure: number): boolean {
    const at = (figure ^ (figure >>> 16)) & (MARKS - 1);
    if (this.marks[at] === 1) return true;
    if (this.marked >= MARKS / 8) {
      this.marks.fill(0);
      this.marked = 0;
    }
    this.marks[at] = 1;
    this.marked += 1;
    return false;
  }
}
const MARKS = 65_536;
/** The room that everything shares that was read or judged; a memory holds at most twice as much. */
const SHARED = new Room(40_000);
/** A longer text is worked out each time. */
const LONGEST = 200;
/** Whether a cell is told by its value: a date that is an object of its own is not. */
const isKept = (cell: unknown): boolean => (typeof cell === "string" ? cell.length <= LONGEST : typeof cell !== "object" || cell === null);
/** A figure that tells most cells apart. */
function figureOf(cell: unknown): number {
  if (typeof cell === "number") return (cell * 1_000_003) | 0;
  if (typeof cell !== "string") return cell === true ? 3 : 1;
  const { length } = cell;
  if (length === 0) return 1;
  const ends = cell.charCodeAt(0) + 31 * cell.charCodeAt(length - 1) + 961 * cell.charCodeAt(length >> 1);
  return imul(length + 131 * ends + 7 * cell.charCodeAt(length >> 2), 40_503);
}
let memories = 0;

/** Keeps what was made lately, and what was asked for again: when the room is full, only what is asked for moves over. */
abstract class Halves<H> {
  protected fresh: H;
  protected old: H | null = null;
  protected readonly room: Room;
  /** Tells the marks of this memory from those of others. */
  protected readonly own: number;
  private turn: number;
  constructor(room: Room) {
    this.room = room;
    this.turn = room.turns;
    this.own = imul((memories += 1), 0x9e3779b1);
    this.fresh = this.empty();
  }
  protected abstract empty(): H;
  /** To be called before a look: forgets what the room has no place for. */
  protected keepUp(): void {
    const { turns } = this.room;
    if (turns === this.turn) return;
    this.old = turns === this.turn + 1 ? this.fresh : null;
    this.fresh = this.empty();
    this.turn = turns;
  }
}
/** What came of a cell, from its second time on. `undefined` is never remembered. */
export class Memory<V> extends Halves<Map<unknown, V>> {
  constructor(room: Room = SHARED) {
    super(room);
  }
  get(cell: unknown): V | undefined {
    this.keepUp();
    const found = this.fresh.get(cell);
    if (found !== undefined || this.old === null) return found;
    const before = this.old.get(cell);
    if (before !== undefined) this.put(cell, before);
    return before;
  }
  set(cell: unknown, made: V): void {
    if (isKept(cell) && this.room.cameBy(figureOf(cell) ^ this.own)) this.put(cell, made);
  }
  /** What came of the cell before, or what is made of it now. */
  once(cell: unknown, make: () => V): V {
    let made = this.get(cell);
    if (made === undefined) this.set(cell, (made = make()));
    return made;
  }
  protected empty(): Map<unknown, V> {
    return new Map();
  }
  private put(cell: unknown, made: V): void {
    this.keepUp();
    this.fresh.set(cell, made);
    this.room.take();
  }
}
type Branch = Map<unknown, unknown>;
/** What came of several cells of a row together, from their second time on; they stand at fixed places, those that differ least first. */
export class RowMemory<V> extends Halves<Branch> {
  private readonly places: readonly number[];
  constructor(places: readonly number[], room: Room = SHARED) {
    super(room);
    this.places = places;
  }
  get(row: readonly unknown[]): V | undefined {
    this.keepUp();
    const found = this.look(this.fresh, row);
    if (found !== undefined || this.old === null) return found;
    const before = this.look(this.old, row);
    if (before !== undefined) this.put(row, before);
    return before;
  }
  set(row: readonly unknown[], made: V): void {
    let figure = this.own;
    for (const place of this.places) {
      const cell = row[place];
      if (!isKept(cell)) return;
      figure = imul(figure, 31) ^ figureOf(cell);
    }
    if (this.room.cameBy(figure)) this.put(row, made);
  }
  /** The same for what is sure to be asked for again. */
  keep(row: readonly unknown[], made: V): void {
    for (const place of this.places) if (!isKept(row[place])) return;
    this.put(row, made);
  }
  protected empty(): Branch {
    return new Map();
  }
  private look(from: Branch, row: readonly unknown[]): V | undefined {
    if (this.places.length === 0) return undefined;
    let branch: unknown = from;
    for (const place of this.places) {
      if (branch === undefined) return undefined;
      branch = (branch as Branch).get(row[place]);
    }
    return branch as V | undefined;
  }
  private put(row: readonly unknown[], made: V): void {
    this.keepUp();
    const { places } = this;
    const last = places.length - 1;
    let branch = this.fresh;
    for (let at = 0; at < last; at += 1) {
      const cell = row[places[at] ?? 0];
      let next = branch.get(cell) as Branch | undefined;
      if (next === undefined) branch.set(cell, (next = new Map()));
      branch = next;
    }
    branch.set(row[places[last] ?? 0], made);
    this.room.take();
  }
}
export type Line = readonly unknown[];
/** Whether two rows hold the same cells. Dates that are objects of their own never do. */
export function sameLine(a: Line, b: Line): boolean {
  if (a.length !== b.length) return false;
  for (let at = 0; at < a.length; at += 1) if (a[at] !== b[at]) return false;
  return true;
}
export function sameLines(a: readonly Line[], b: readonly Line[]): boolean {
  if (a.length !== b.length) return false;
  for (let at = 0; at < a.length; at += 1) if (!sameLine(a[at] ?? [], b[at] ?? [])) return false;
  return true;
}
/** A copy that stays as it is whatever the host does with its own. */
export const copyOf = <T>(lines: readonly (readonly T[])[]): readonly (readonly T[])[] => lines.map((line) => line.slice());
