/** The history's seals: any change, deletion, insertion or swap is found, and by its number. */
import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { HISTORY_HEADINGS, historyRow, type HistoryRow, ROUND_HEAD } from "../../../src/engine/programme/history";
import { checkSeals, isWrong, type KeptRound, openSeals, sealRows } from "../../../src/engine/programme/seals";

const hash = (text: string): string => createHash("sha256").update(text).digest("hex");

/** A history of some rounds, one posted after the other, and what the workbook keeps of it. */
function history(rounds: number, each: number): { readonly rows: readonly HistoryRow[]; readonly kept: readonly KeptRound[] } {
  const rows: HistoryRow[] = [];
  const kept: KeptRound[] = [];
  for (let r = 1; r <= rounds; r += 1) {
    const round = `R${String(r)}`;
    const joins = openSeals(rows, kept, round).join(" ");
    const own = [
      historyRow({ Check: ROUND_HEAD, Round: round, Joins: joins }),
      ...Array.from({ length: each }, (_, at) =>
        historyRow({
          Id: `H-${String(at)}`,
          Check: "Throat opening",
          Reading: `2.0${String((r * at) % 10)}`,
          Round: round,
          Decision: "KEEP",
        }),
      ),
    ].map((row, at) => ({ ...row, Number: String(rows.length + at + 1) }));
    const sealed = sealRows(own, "", hash);
    rows.push(...sealed);
    kept.push({ round, rows: sealed.length, last: sealed.at(-1)!.Seal });
  }
  return { rows, kept };
}
const wrong = (rows: readonly HistoryRow[], kept: readonly KeptRound[]): readonly string[] =>
  checkSeals(rows, kept, hash)
    .findings.filter(isWrong)
    .map(({ what, sentence }) => `${what}: ${sentence}`);

describe("the seals of the history", () => {
  const { rows, kept } = history(6, 8);
  it("are SHA-256, by the library that the workbook takes", () => {
    // FIPS 180-2, appendix B.1: "abc".
    const mine = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));
    expect(mine("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        expect(mine(text)).toBe(hash(text));
      }),
      { numRuns: 50 },
    );
  });
  it("find nothing wrong where nothing was touched, and tell the one last seal", () => {
    expect(checkSeals(rows, kept, hash)).toMatchObject({ rows: 54, rounds: 6, findings: [], last: [rows.at(-1)!.Seal] });
    expect(checkSeals([], [], hash)).toMatchObject({ rows: 0, findings: [] });
  });
  it("find any one of a thousand random edits, deletions, insertions and swaps", () => {
    const at = fc.nat({ max: rows.length - 1 });
    const heading = fc.constantFrom(...HISTORY_HEADINGS);
    const act = fc.oneof(
      fc.record({ how: fc.constant("edit" as const), at, heading, text: fc.string({ maxLength: 5 }) }),
      fc.record({ how: fc.constant("delete" as const), at }),
      fc.record({ how: fc.constant("insert" as const), at, copied: at, heading, text: fc.string({ maxLength: 5 }) }),
      fc.record({ how: fc.constant("swap" as const), at, with: at }),
      // Two rows with only their readings swapped.
      fc.record({ how: fc.constant("swap readings" as const), at, with: at }),
      fc.record({ how: fc.constant("delete from" as const), at }),
    );
    fc.assert(
      fc.property(act, (change) => {
        const changed = [...rows];
        if (change.how === "edit") changed[change.at] = { ...rows[change.at]!, [change.heading]: change.text };
        else if (change.how === "delete") changed.splice(change.at, 1);
        else if (change.how === "delete from") changed.splice(change.at);
        else if (change.how === "insert") changed.splice(change.at, 0, { ...rows[change.copied]!, [change.heading]: change.text });
        else {
          const [a, b] = [rows[change.at]!, rows[change.with]!];
          changed[change.at] = change.how === "swap" ? b : { ...a, Reading: b.Reading };
          changed[change.with] = change.how === "swap" ? a : { ...b, Reading: a.Reading };
        }
        fc.pre(JSON.stringify(changed) !== JSON.stringify(rows));
        expect(wrong(changed, kept), JSON.stringify(change)).not.toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
  it("name what was done", () => {
    const edited = rows.map((row, at) => (at === 12 ? { ...row, Reading: "2.00", Decision: "WATCH" } : row));
    expect(wrong(edited, kept)).toEqual(["changed: Rows of round R2 were changed or put in since they were sealed: 13."]);
    expect(
      wrong(
        rows.filter((_, at) => at !== 12),
        kept,
      )[0],
    ).toBe("gone: Rows of round R2 are gone: 13.");
    expect(wrong(rows.slice(0, -1), kept)[0]).toMatch(/^end gone: Round R6 ended with 9 rows/);
    expect(
      wrong(
        rows.filter((row) => row.Round !== "R6"),
        kept,
      )[0],
    ).toMatch(/^round gone: Round R6 is gone: its 9 rows/);
    expect(
      wrong(
        [...rows].sort((a, b) => (a.Id < b.Id ? -1 : 1)),
        kept,
      )[0],
    ).toMatch(/^moved: /);
  });
  it("show two rounds that were posted at once, and call nothing wrong; the next round joins both", () => {
    const beside = history(6, 8);
    const before = { rows: rows.filter(({ Round }) => Round !== "R6"), kept: kept.slice(0, 5) };
    const joins = openSeals(before.rows, before.kept, "Q6").join(" ");
    const other = sealRows(
      [historyRow({ Check: ROUND_HEAD, Round: "Q6", Joins: joins, Number: "46" }), historyRow({ Id: "Z", Round: "Q6", Number: "47" })],
      "",
      hash,
    );
    const both = [...beside.rows, ...other];
    const known = [...kept, { round: "Q6", rows: 2, last: other[1]!.Seal }];
    const check = checkSeals(both, known, hash);
    expect(check.findings.map(({ what, sentence }) => `${what}: ${sentence}`)).toEqual([
      "fork: Rounds R6 and Q6 were posted at the same time; both stand.",
    ]);
    expect(check.last).toHaveLength(2);
    expect(openSeals(both, known, "R7")).toEqual([...check.last].sort());
  });
  it("keep a deleted end in memory: the next round joins it, and every later check misses it", () => {
    const cut = rows.slice(0, -9);
    expect(openSeals(cut, kept, "R7")).toContain(rows.at(-1)!.Seal);
  });
  it("check 50,000 rows in less than five seconds", () => {
    const large = history(10, 5000);
    const start = performance.now();
    expect(checkSeals(large.rows, large.kept, (text) => bytesToHex(sha256(utf8ToBytes(text)))).findings).toEqual([]);
    expect(performance.now() - start).toBeLessThan(5000);
  });
});
