/** Postings that fail on purpose at each request in turn, and colleagues who write between two requests. */
import { describe, expect, it } from "vitest";
import { checkHistory } from "../../../src/excel/programme/check-history";
import { postRound } from "../../../src/excel/programme/post-round";
import { WorkbookError } from "../../../src/excel/kit/workbook-error";
import { historyRow } from "../../../src/engine/programme/history";
import { type Book } from "../../../src/trial/book/book";
import { type Host } from "../../../src/trial/host/host";
import { fillRound, GOOD_HOOK, historyRows, registerCells, round, TODAY, yard } from "./rounds";

interface Filled {
  readonly made: Book;
  readonly host: Host;
  readonly sheet: string;
}
/** A round of two hooks: the second with a removal, a word beside a reading and a line that is left out. */
async function filled(): Promise<Filled> {
  const { made, host } = await yard();
  const { sheet } = await round();
  fillRound(made.sheet(sheet)!, { "H-1": GOOD_HOOK, "H-2": { ...GOOD_HOOK, "Throat opening": "2.2", "Latch works": null } });
  fillRound(made.sheet(sheet)!, { "H-2": { Cracks: "none seen" } }, { heading: "Found" });
  return { made, host, sheet };
}
/** What stands at the end, without the numbers and seals of the postings that it took. */
function state(made: Book): unknown {
  const rows = historyRows(made)
    .filter(({ Check }) => Check !== "round")
    .map((row) => JSON.stringify(Object.entries(row).filter(([heading]) => !["Number", "Round", "Joins", "Seal"].includes(heading))));
  return { rows: rows.sort(), register: registerCells(made.sheet("Gear register")!) };
}
/** Fails one request: "refused" does nothing, "lost" does all and says nothing, a number does so many actions. */
function failing(host: Host, at: number, how: "refused" | "lost" | number): () => void {
  const run = host.run.bind(host);
  let count = 0;
  host.run = async (body) => {
    if (count++ !== at) return run(body);
    if (how === "lost") await run(body);
    const done = typeof how === "number" ? await run({ ...body, Actions: body.Actions.slice(0, how) }) : { Results: [], TraceIds: [] };
    return { ...done, Error: { Code: "GeneralException", Message: "Injected.", Location: "", ActionIndex: 0, HttpStatusCode: 400 } };
  };
  return () => {
    host.run = run;
  };
}

describe("a posting that fails", () => {
  it("at any request, before it, after it or in the middle, is finished by posting again, to the same state", async () => {
    const sound = await filled();
    const all = (): string =>
      JSON.stringify(sound.made.sheets.map((one) => [one.name, [...one.rows].map(([r, cells]) => [r, [...cells]])]));
    const actions: number[] = [];
    const writing = new Set<number>();
    const run = sound.host.run.bind(sound.host);
    sound.host.run = async (body) => {
      const was = all();
      const answer = await run(body);
      if (all() !== was) writing.add(actions.length);
      actions.push(body.Actions.length);
      return answer;
    };
    await postRound(sound.sheet, TODAY);
    const wanted = state(sound.made);
    expect(writing.size).toBeGreaterThanOrEqual(2);
    for (let at = 0; at < actions.length; at += 1) {
      const middle = Math.floor((actions[at] ?? 0) / 2);
      // A request that only reads fails in one way.
      for (const how of writing.has(at) ? (["refused", "lost", middle, middle + 1, 3] as const) : (["refused"] as const)) {
        const { made, host, sheet } = await filled();
        const mend = failing(host, at, how);
        const fault: unknown = await postRound(sheet, TODAY).then(
          () => null,
          (error: unknown) => error,
        );
        mend();
        // The last requests only let go of what the library held on to; the posting is done by then.
        if (fault === null && at >= actions.length - 2) continue;
        expect(fault, `request ${String(at)} ${String(how)}`).toBeInstanceOf(WorkbookError);
        await postRound(sheet, TODAY);
        expect(state(made), `request ${String(at)} ${String(how)}`).toEqual(wanted);
        expect((await checkHistory()).findings, `request ${String(at)} ${String(how)}`).toEqual([]);
        expect(await postRound(sheet, TODAY)).toMatchObject({ added: 0, written: 0 });
      }
    }
  }, 180_000);
});

describe("two people who post at once", () => {
  it("lose no row: a colleague's rows that come between two requests stay, and the register's rows are found where they are now", async () => {
    const sound = await filled();
    const before = sound.host.requests.length;
    await postRound(sound.sheet, TODAY);
    const requests = sound.host.requests.length - before;
    const wanted = registerCells(sound.made.sheet("Gear register")!);
    for (let at = 0; at < requests; at += 1) {
      const { made, host, sheet } = await filled();
      const run = host.run.bind(host);
      let count = 0;
      host.run = async (body) => {
        if (count++ === at) remote(made);
        return run(body);
      };
      await postRound(sheet, TODAY);
      host.run = run;
      const rows = historyRows(made);
      expect(rows.filter(({ Round }) => Round === "R9.colleague").length, `request ${String(at)}`).toBe(posted.has(made) ? 1 : 0);
      expect(rows.filter(({ Check }) => Check === "verdict").length).toBeGreaterThanOrEqual(2);
      const cells = registerCells(made.sheet("Gear register")!);
      for (const id of ["H-1", "H-2", "H-3"])
        expect([cells[id]!["Throat now"], cells[id]!["Inspected"]], `request ${String(at)}, ${id}`).toEqual([
          wanted[id]!["Throat now"],
          wanted[id]!["Inspected"],
        ]);
    }
  }, 120_000);
});
/** A colleague's doing: the register's first rows change places, and the history, where there is one, gets a row. */
const posted = new WeakSet<Book>();
function remote(made: Book): void {
  const register = made.sheet("Gear register")!;
  const rows = register.rows;
  const [first, second] = [rows.get(4)!, rows.get(5)!];
  rows.set(4, second);
  rows.set(5, first);
  const table = made.tables.find(({ name }) => name === "GearHistory");
  if (!table) return;
  posted.add(made);
  const row = table.box.row + table.box.rows;
  Object.values(historyRow({ Round: "R9.colleague", Id: "C-1", Number: "1" })).forEach((value, column) => {
    if (value !== "") table.sheet.at(row, column).value = value;
  });
  table.box = { ...table.box, rows: table.box.rows + 1 };
}
