/** Every row of the public texts that was read, against its record: document, clause, figure, word, status; or the reason why it is not judged. */
import { describe, expect, it } from "vitest";
import { listSources } from "../../src/engine/pages/figures";
import { LEFT_OUT } from "../../src/engine/pages/not-judged";
import { PUBLISHED_ROWS } from "../fixtures/published-rows";

/** The words of the fixture for what the list of sources prints. */
const inWords = (says: string): string => {
  if (says === "any" || says.startsWith("every ")) return says;
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
