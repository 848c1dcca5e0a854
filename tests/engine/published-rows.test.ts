/** Every row of the public texts that was read, against its record: document, clause, figure, word, status; or the reason why it is not judged. */
import { describe, expect, it } from "vitest";
import { listSources } from "../../src/engine/pages/figures";
import { LEFT_OUT, unconfirmed } from "../../src/engine/pages/not-judged";
import { PUBLISHED_ROWS } from "../fixtures/published-rows";

/** The words of the fixture for what the list of sources prints. */
const inWords = (says: string): string => {
  if (says === "any" || says.startsWith("every ") || says.startsWith("less than ")) return says;
  const [word = "", figure = "", ...rest] = says.replace("1/3", "33.33 %").split(" ");
  const [share, cap] = [figure, ...rest].join(" ").split(", ");
  const of = word === "above" ? `more than ${share ?? ""}` : `${share ?? ""} or more`;
  return cap === undefined ? of : `${of}, ${cap}`;
};

describe("every row of a public text that was read or restated", () => {
  const lines = new Map(listSources().map((line) => [line.criterion, line]));
  it.each(PUBLISHED_ROWS.filter((row) => row.records !== undefined))(
    "$document $clause: $says stands in its records",
    ({ document, clause, says, status, records = [] }) => {
      for (const id of records) {
        const line = lines.get(id);
        expect(line, `${id} by ${document} ${clause}`).toBeDefined();
        expect(line?.document, `${id}: the document`).toContain(document);
        expect(line?.clause, `${id}: the clause of ${document}`).toContain(clause);
        expect([id, line?.status], `${id}: the status of ${document} ${clause}`).toEqual([id, status]);
        // Constructions and stress classes stand behind the figure.
        expect(
          `${line?.figure ?? ""},`.startsWith(`${inWords(says)},`),
          `${id} by ${document} ${clause}: ${says}, not ${line?.figure ?? ""}`,
        ).toBe(true);
      }
    },
  );
  it.each(PUBLISHED_ROWS.filter((row) => row.leftOut !== undefined))(
    "$document $clause: not judged, with a reason",
    ({ document, clause, leftOut = "" }) => {
      expect(
        LEFT_OUT.filter((line) => line.document.includes(document) && line.clause.includes(clause) && line.what.includes(leftOut)),
      ).not.toEqual([]);
    },
  );
});

describe("what nobody read", () => {
  it("is listed row by row: chain of 1 3/4 in by the old table, six sizes by the newer", () => {
    const rows = unconfirmed().filter((line) => line.document.includes("N-184-1") || line.document.includes("9-1.9.5-1"));
    expect(rows.map((line) => line.what)).toEqual([
      "chain sling, link thickness: 1 3/4 in, below 1 13/32 in",
      "chain sling, link thickness: 7/32 in (5.5 mm), below 0.189 in",
      "chain sling, link thickness: 9/32 in (7 mm), below 0.239 in",
      "chain sling, link thickness: 3/4 in (20 mm), below 0.687 in",
      "chain sling, link thickness: 7/8 in (22 mm), below 0.750 in",
      "chain sling, link thickness: 1 in (26 mm), below 0.887 in",
      "chain sling, link thickness: 1 1/4 in (32 mm), below 1.091 in",
    ]);
    for (const line of unconfirmed()) expect(line.why).toMatch(/not used for a verdict$/);
  });
});
