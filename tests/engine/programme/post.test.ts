/** What posting a round does to register and history, as plain data. */
import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { FieldId } from "../../../src/engine/columns";
import { historyRow, type HistoryRow } from "../../../src/engine/programme/history";
import { type FilledLine, planPosting, type RegisterWrite } from "../../../src/engine/programme/post";
import type { CellValue } from "../../../src/engine/reading/cell-value";

const hash = (text: string): string => createHash("sha256").update(text).digest("hex");
const GOOD: readonly (readonly [FieldId, string, string, CellValue])[] = [
  ["throatNow", "Throat opening", "2 in", "2.01 in"],
  ["sectionNow", "Saddle section", "1.5 in", "1.5 in"],
  ["twist", "Twist deg", "", "0"],
  ["latch", "Latch works", "", "yes"],
  ["cracks", "Cracks", "", "none"],
  ["tag", "Identification legible", "", "yes"],
];
function post(
  {
    found = "",
    reading = {},
    was = {},
  }: { readonly found?: string; readonly reading?: Partial<Record<FieldId, CellValue>>; readonly was?: Partial<Record<FieldId, string>> },
  register: Partial<Record<FieldId, CellValue>>,
  history: readonly HistoryRow[] = [],
): { readonly to: (id: FieldId) => CellValue | undefined; readonly changed: readonly string[]; readonly inspected: readonly string[] } {
  const lines = GOOD.map(([now, label, asNew, good]): FilledLine => ({
    role: "check",
    now,
    label,
    asNew,
    asNewWas: asNew,
    reading: reading[now] ?? good,
    found: now === "cracks" ? found : "",
    gauge: "",
    was: was[now] ?? "",
    required: true,
  }));
  const cells = new Map<FieldId, CellValue>([["id", "H-1"], ["gear", "hook"], ...(Object.entries(register) as [FieldId, CellValue][])]);
  const planned = planPosting({
    round: {
      round: "2",
      title: "Round 2",
      kind: "due",
      basis: ["standard", "practice"],
      by: "Inspector two",
      date: { serial: 46354 },
      items: [{ id: "H-1", gear: "hook", place: "", inspectedWas: "", state: "", lines }],
    },
    register: [{ id: "H-1", cells }],
    fields: new Set<FieldId>(["id", "gear", ...GOOD.map(([now]) => now), "inspected", "inspector", "remarks", "result"]),
    history,
    kept: [],
    today: 46354,
    hash,
  });
  if (!planned.ok) throw new Error(planned.why);
  const last = (id: FieldId): RegisterWrite | undefined => planned.writes.filter((write) => write.field === id).at(-1);
  return { to: (id) => last(id)?.value, changed: planned.changedMeanwhile.map(({ line }) => line), inspected: planned.inspected };
}

describe("what was seen", () => {
  it("goes into the remarks also where an older remark holds the same words and says something else", () => {
    expect(post({ found: "crack at the eye" }, { remarks: "no crack at the eye" }).to("remarks")).toBe(
      "no crack at the eye; crack at the eye",
    );
    expect(post({ found: "crack at the eye" }, { remarks: "cleaned; crack at the eye" }).to("remarks")).toBeUndefined();
  });
});
describe("the result of an item", () => {
  const before = historyRow({ Id: "H-1", Check: "Latch works", Reading: "no", Date: "2026-01-05", Round: "1" });
  it("that somebody typed stays, even where an earlier round read the same word of a check", () => {
    expect(post({}, { result: "no" }, [before]).to("result")).toBeUndefined();
  });
  it("that an earlier round saw is settled by a whole inspection", () => {
    const seen = historyRow({ Id: "H-1", Check: "Cracks, seen", Reading: "cracked", Date: "2026-01-05", Round: "1" });
    expect(post({}, { result: "cracked" }, [seen]).to("result")).toBe("");
  });
});
describe("a cell that somebody changed meanwhile", () => {
  it("is left, also where the new figure begins like the old", () => {
    const { changed, to, inspected } = post({ was: { throatNow: "2" } }, { throatNow: "2 1/8 in" });
    expect([changed, to("throatNow"), inspected]).toEqual([["Throat opening"], undefined, []]);
  });
  it("is none where only its unit came to it", () => {
    expect(post({ was: { throatNow: "2" } }, { throatNow: "2 in" }).to("throatNow")).toBe("2.01 in");
  });
});
