/** What Excel keeps of a written file: dynamic arrays as such, last values, no calculation anew. */
import { describe, expect, it } from "vitest";
import { Book } from "../../src/trial/book/book";
import { needsArray } from "../../src/trial/file/array-formula";
import { readXlsx, writeXlsx } from "../../src/trial/file/xlsx";
import { elementsOf } from "../../src/trial/file/xml";
import { Archive } from "../../src/trial/file/zip";

describe("a formula that stands as a dynamic array in the file", () => {
  it.each([
    '=GEAR.VERDICT(A1:C1,IF(ISBLANK(A2:C2),"",A2:C2))',
    "=GEAR.WEARPCT(A1,B1)",
    '=IF(ISBLANK(A2:C2),"",A2:C2)',
    "=SUM(IF(A1:A3>0,1,0))",
    "=SUM(A1:A3*2)",
    "=Gear[Now]*2",
    "=IF(Gear[@[Id]:[Now]]=1,2,3)",
    "='My log'!A1:A9",
    "=A:A",
    "=SUM({1,2})",
    "=UNIQUE(Gear[Id])",
    "=Gear[[#Headers],[Id]:[Now]]",
    "=COUNTIFS(A1:A9,B1:B9)",
  ])("%s", (formula) => {
    expect(needsArray(formula)).toBe(true);
  });

  it.each([
    "=A1+B1",
    '=IF(Gear[@Now]="","",Gear[@[As new]])',
    "=SUM(A1:A3)",
    "=COUNTIFS(Gear[Assembly],[@Assembly],Gear[Sign],1)",
    "=INDEX(Gear[Id],MATCH([@Id],'Gear copied'!$A$2:$A$99,0))",
    '=MID([@Answer],FIND("A1:B2",[@Answer]),9)',
    "=Gear[[#Headers],[Id]]",
    "=Gear[[#This Row],[Id]]&Gear[@[Last date]]",
    "=TODAY()",
  ])("%s does not", (formula) => {
    expect(needsArray(formula)).toBe(false);
  });
});

describe("the written file", () => {
  async function written(): Promise<{ archive: Archive; sheet: string; bytes: Uint8Array }> {
    const book = new Book();
    const sheet = book.addSheet("Gear");
    for (const [column, heading] of ["Id", "Now", "Verdict", "Note"].entries()) sheet.at(0, column).value = heading;
    for (const row of [1, 2]) {
      Object.assign(sheet.at(row, 0), { value: `H-${String(row)}` });
      Object.assign(sheet.at(row, 2), {
        value: "KEEP",
        formula: '=GEAR.VERDICT(T[[#Headers],[Id]:[Now]],IF(ISBLANK(T[@[Id]:[Now]]),"",T[@[Id]:[Now]]))',
      });
      Object.assign(sheet.at(row, 3), { value: row === 1 ? "" : null, formula: '=IF(T[@Now]="","",T[@Now])' });
    }
    book.tables.push({
      id: "1",
      name: "T",
      sheet,
      box: { row: 0, column: 0, rows: 3, columns: 4 },
      style: "",
      showBanded: false,
      filters: new Map(),
    });
    const bytes = await writeXlsx(book);
    const archive = Archive.read(bytes);
    return { archive, sheet: (await archive.text("xl/worksheets/sheet1.xml"))!, bytes };
  }

  it("marks guarded formulas as dynamic arrays, in their cell and in their column, with the part that says so", async () => {
    const { archive, sheet } = await written();
    const cells = new Map(elementsOf(sheet, "c").map((cell) => [cell.attributes["r"], cell]));
    expect(cells.get("C2")?.attributes["cm"]).toBe("1");
    expect(cells.get("C2")?.inner).toMatch(/^<f t="array" ref="C2">_xldudf_GEAR_VERDICT\(.*<\/f><v>KEEP<\/v>$/);
    expect(cells.get("D2")?.attributes["cm"]).toBeUndefined();
    expect(cells.get("D2")?.inner).toMatch(/^<f>/);
    expect(await archive.text("xl/tables/table1.xml")).toContain('<calculatedColumnFormula array="1">_xldudf_GEAR_VERDICT(');
    expect(await archive.text("xl/metadata.xml")).toContain('<xda:dynamicArrayProperties fDynamic="1"');
    expect(await archive.text("[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
    expect(await archive.text("xl/_rels/workbook.xml.rels")).toContain('Target="metadata.xml"');
  });

  it("holds the last value of each formula, an empty one as empty text", async () => {
    const { sheet } = await written();
    const cells = new Map(elementsOf(sheet, "c").map((cell) => [cell.attributes["r"], cell]));
    for (const cell of ["D2", "D3"]) {
      expect(cells.get(cell)?.attributes["t"], cell).toBe("str");
      expect(cells.get(cell)?.inner, cell).toMatch(/<\/f><v(?:\/>|><\/v>)$/);
    }
  });

  it("is not older than the program that opens it", async () => {
    const { archive } = await written();
    const calc = elementsOf((await archive.text("xl/workbook.xml"))!, "calcPr")[0]?.attributes;
    expect(Number(calc?.["calcId"])).toBeGreaterThanOrEqual(191029);
    expect(calc?.["fullCalcOnLoad"]).toBeUndefined();
  });

  it("has no metadata where no formula needs it", async () => {
    const book = new Book();
    book.addSheet("Log").at(0, 0).formula = "=SUM(B1:B9)";
    expect(Archive.read(await writeXlsx(book)).names()).not.toContain("xl/metadata.xml");
  });

  it("comes back with the same formulas, each in its own cell", async () => {
    const { bytes } = await written();
    const sheet = (await readXlsx(bytes)).sheet("Gear")!;
    expect(sheet.cell(1, 2)).toMatchObject({
      value: "KEEP",
      formula: '=GEAR.VERDICT(T[[#Headers],[Id]:[Now]],IF(ISBLANK(T[@[Id]:[Now]]),"",T[@[Id]:[Now]]))',
    });
    expect(sheet.cell(1, 2)?.spill).toBeUndefined();
  });
});
