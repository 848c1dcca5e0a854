/** What is remembered is what was made, and no more of it is kept than there is room for. */
import { describe, expect, it } from "vitest";
import { Lately } from "../../src/engine/ask/lately";
import { copyOf, Memory, Room, RowMemory, sameLine, sameLines } from "../../src/engine/memory";

describe("a memory by one cell", () => {
  it("makes a thing twice and then no more: what comes once is not kept", () => {
    const memory = new Memory<string>(new Room(100));
    let made = 0;
    const ask = (cell: unknown): string => memory.once(cell, () => `${String(cell)} ${String((made += 1))}`);
    expect([ask("a"), ask("a"), ask("a"), ask("a")]).toEqual(["a 1", "a 2", "a 2", "a 2"]);
  });
  it("tells cells apart by value and by type, as a sheet does", () => {
    const memory = new Memory<string>(new Room(100));
    const cells = [0, "0", "", null, undefined, true, "true", 1, "1", 2.05, "2.05", NaN];
    for (let round = 0; round < 3; round += 1)
      for (const cell of cells) expect(memory.once(cell, () => `${typeof cell} ${String(cell)}`)).toBe(`${typeof cell} ${String(cell)}`);
  });
  it("keeps no date that is an object, which may be changed, and no long text", () => {
    const memory = new Memory<number>(new Room(100));
    const day = { serial: 46000 };
    const long = "x".repeat(201);
    for (const cell of [day, long]) for (let round = 0; round < 3; round += 1) memory.set(cell, round);
    expect([memory.get(day), memory.get(long)]).toEqual([undefined, undefined]);
    for (let round = 0; round < 3; round += 1) memory.set("x".repeat(200), round);
    expect(memory.get("x".repeat(200))).toBe(2);
  });
  it("forgets what nobody asks for while others fill the room, and keeps what is asked for", () => {
    const memory = new Memory<number>(new Room(50));
    const twice = (cell: string, made: number): void => {
      memory.set(cell, made);
      memory.set(cell, made);
    };
    twice("asked for", 1);
    twice("left", 2);
    for (let at = 0; at < 500; at += 1) {
      twice(`other ${String(at)}`, at);
      expect(memory.get("asked for")).toBe(1);
    }
    expect(memory.get("left")).toBeUndefined();
  });
  it("a million different texts are not kept", () => {
    const room = new Room(1000);
    const memory = new Memory<number>(room);
    for (let at = 0; at < 1_000_000; at += 1) memory.once(`text ${String(at)}`, () => at);
    let kept = 0;
    for (let at = 0; at < 1_000_000; at += 1) if (memory.get(`text ${String(at)}`) !== undefined) kept += 1;
    // Two halves of the room; most texts that came once are not there at all.
    expect(kept).toBeLessThanOrEqual(2000);
  });
  it("several share one room", () => {
    const room = new Room(20);
    const [mine, yours] = [new Memory<number>(room), new Memory<number>(room)];
    for (const round of [1, 2]) mine.set("mine", round);
    expect(mine.get("mine")).toBe(2);
    for (let at = 0; at < 200; at += 1) for (const round of [1, 2]) yours.set(at, round);
    expect(mine.get("mine")).toBeUndefined();
  });
});

describe("a memory by several cells", () => {
  it("looks at its own places only, and at all of them", () => {
    const memory = new RowMemory<string>([0, 2], new Room(100));
    for (const made of ["first", "second"]) memory.set(["a", "ignored", 1], made);
    expect(memory.get(["a", "else", 1])).toBe("second");
    expect(memory.get(["a", "ignored", "1"])).toBeUndefined();
    expect(memory.get(["b", "ignored", 1])).toBeUndefined();
    expect(memory.get([1, "ignored", "a"])).toBeUndefined();
  });
  it("keeps at once what is sure to come again", () => {
    const memory = new RowMemory<string>([0], new Room(100));
    memory.keep(["a"], "kept");
    expect(memory.get(["a"])).toBe("kept");
    memory.keep([{ serial: 1 }], "a day");
    expect(memory.get([{ serial: 1 }])).toBeUndefined();
  });
  it("without a place knows nothing", () => {
    const memory = new RowMemory<string>([], new Room(100));
    memory.keep(["a"], "kept");
    expect(memory.get(["a"])).toBeUndefined();
  });
  it("holds no more than its room", () => {
    const memory = new RowMemory<number>([0, 1], new Room(100));
    for (let at = 0; at < 5000; at += 1) memory.keep([at % 7, at], at);
    let kept = 0;
    for (let at = 0; at < 5000; at += 1) if (memory.get([at % 7, at]) !== undefined) kept += 1;
    expect(kept).toBeLessThanOrEqual(200);
    expect(memory.get([4999 % 7, 4999])).toBe(4999);
  });
});

describe("rows judged lately", () => {
  it("are found by their key and all their cells", () => {
    const lately = new Lately<string>();
    const row = ["H-1", "hook", 2];
    lately.keep("H-1", row, "kept");
    expect(lately.get("H-1", ["H-1", "hook", 2])).toBe("kept");
    for (const other of [
      ["H-1", "hook", 3],
      ["H-1", "hook", "2"],
      ["H-1", "hook"],
      ["H-1", "hook", 2, ""],
    ])
      expect(lately.get("H-1", other), JSON.stringify(other)).toBeNull();
    expect(lately.get("H-2", row)).toBeNull();
    // The host may use its own row again for the next.
    row[2] = 9;
    expect(lately.get("H-1", row)).toBeNull();
    expect(lately.get("H-1", ["H-1", "hook", 2])).toBe("kept");
  });
  it("of two with one key the last is known", () => {
    const lately = new Lately<string>();
    lately.keep("", ["", 1], "first");
    lately.keep("", ["", 2], "second");
    expect([lately.get("", ["", 1]), lately.get("", ["", 2])]).toEqual([null, "second"]);
  });
  it("are at least a register of 4,000 rows, and not a million", () => {
    const lately = new Lately<number>();
    for (let at = 0; at < 4000; at += 1) lately.keep(at, [at], at);
    for (let at = 0; at < 4000; at += 1) expect(lately.get(at, [at])).toBe(at);
    for (let at = 0; at < 100_000; at += 1) lately.keep(at, [at], at);
    let kept = 0;
    for (let at = 0; at < 100_000; at += 1) if (lately.get(at, [at]) !== null) kept += 1;
    expect(kept).toBeLessThanOrEqual(5000);
  });
  it("rows and sheets are the same cell by cell", () => {
    const day = { serial: 46000 };
    expect(sameLine([1, "a", null], [1, "a", null])).toBe(true);
    expect(sameLine([1], [1, undefined])).toBe(false);
    expect(sameLine([null], [undefined])).toBe(false);
    expect(sameLine([day], [{ serial: 46000 }])).toBe(false);
    expect(sameLines([[1], [2]], [[1], [2]])).toBe(true);
    expect(sameLines([[1], [2]], [[1]])).toBe(false);
    const sheet = [[1, 2]];
    const copy = copyOf(sheet);
    (sheet[0] ?? []).push(3);
    expect(copy).toEqual([[1, 2]]);
  });
});
