/** The register's footer fits what Excel takes, with every rule set in force. */
import { expect, it } from "vitest";
import { BASIS_IDS, showRules } from "../../src/engine/rules/rule-sets";
import { REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { excelPort } from "../../src/excel/workbook";
import { openBook } from "../setup-excel";
import { AS_OF, book, hookLog } from "./books";

it.each([
  ["all", BASIS_IDS, "Rules in force: 10 sets, named in the head"],
  ["two", ["law", "standard"] as const, "Rules in force: Law + Standard"],
])("a register under %s rule sets is built", async (_, basis, told) => {
  const made = book({ "Gear log": hookLog(2) });
  openBook(made);
  const log = await excelPort.read({ from: "auto", basis: [...basis], asOf: AS_OF, choices: {} });
  await excelPort.build(log, () => undefined, new AbortController().signal);
  const { leftFooter, centerFooter, rightFooter, titleRows } = made.sheet(REGISTER_SHEET)!.page;
  expect(leftFooter).toContain(told);
  // The head with the rule sets is printed on each page.
  expect([titleRows, made.sheet(REGISTER_SHEET)!.cell(1, 1)?.value]).toEqual(["$1:$4", showRules(basis)]);
  // Excel specifications and limits: 255 characters, the codes of the three parts among them.
  expect([leftFooter, centerFooter, rightFooter].join("").length + 6).toBeLessThanOrEqual(255);
});
