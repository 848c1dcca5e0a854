import { describe, expect, it } from "vitest";
import { boxAddress, BrokenReference, columnLetters, writeOutReferences } from "../../src/trial/calculation/structured";
import { type Surroundings } from "../../src/trial/calculation/structured";

/** A register at B4:G9 (headings in row 4) and a list of places at A1:A3 of another sheet. */
const around: Surroundings = {
  tables: [
    {
      name: "Gear",
      sheet: "Register",
      box: { row: 3, column: 1, rows: 6, columns: 6 },
      headings: ["Id", "Gear", "Next due", "Lay #1 [mm]", "Maker's mark", "Verdict"],
    },
    { name: "Loads", sheet: "Register", box: { row: 20, column: 0, rows: 4, columns: 1 }, headings: ["Load"], totals: true },
    { name: "Places", sheet: "Yard's lists", box: { row: 0, column: 0, rows: 3, columns: 1 }, headings: ["Place"] },
  ],
  names: new Map([
    ["asof", "=Notes!$B$2"],
    ["twice", "=2*AsOf"],
    ["circle", "=Circle+1"],
    ["gearids", "=Gear[Id]"],
  ]),
};
/** Row 6 of the sheet is the second data row of the register. */
const inRegister = { sheet: "Register", row: 5, column: 6 };
const beside = { sheet: "Register", row: 0, column: 0 };
const elsewhere = { sheet: "Notes", row: 0, column: 0 };

// What is not of the row itself stands still, so that one text serves every row of a column.
describe("table references become addresses for the row of the formula", () => {
  const cases: [title: string, formula: string, place: typeof inRegister, written: string][] = [
    ["this row of one column", "=[@Id]", inRegister, "=B6"],
    ["this row of a heading with a space", "=[@[Next due]]", inRegister, "=D6"],
    ["this row with the table's name", "=Gear[@Id]", inRegister, "=B6"],
    ["this row of a run of columns", "=Gear[@[Id]:[Next due]]", inRegister, "=B6:D6"],
    ["this row of all columns", "=Gear[@]", inRegister, "=B6:G6"],
    ["the long spelling of this row", "=Gear[[#This Row],[Next due]]", inRegister, "=D6"],
    ["a whole column", "=COUNTA(Gear[Verdict])", beside, "=COUNTA($G$5:$G$9)"],
    ["a whole column from another sheet", "=COUNTA(Gear[Verdict])", elsewhere, "=COUNTA('Register'!$G$5:$G$9)"],
    ["a column without the table's name, inside the table", "=SUM([Id])", inRegister, "=SUM($B$5:$B$9)"],
    ["a sheet name with an apostrophe", "=COUNTA(Places[Place])", elsewhere, "=COUNTA('Yard''s lists'!$A$2:$A$3)"],
    ["one heading", "=Gear[[#Headers],[Id]]", elsewhere, "='Register'!$B$4"],
    ["a run of headings", "=Gear[[#Headers],[Id]:[Verdict]]", inRegister, "=$B$4:$G$4"],
    ["all headings", "=Gear[#Headers]", inRegister, "=$B$4:$G$4"],
    ["headings and data of a column", "=Gear[[#Headers],[#Data],[Id]]", beside, "=$B$4:$B$9"],
    ["everything", "=ROWS(Gear[#All])", beside, "=ROWS($B$4:$G$9)"],
    ["the data by name alone", "=ROWS(Gear)", beside, "=ROWS($B$5:$G$9)"],
    ["the data with empty brackets", "=ROWS(Gear[])", beside, "=ROWS($B$5:$G$9)"],
    ["a run of columns written backwards", "=Gear[@[Next due]:[Id]]", inRegister, "=B6:D6"],
    ["escaped number sign and brackets", "=Gear[@[Lay '#1 '[mm']]]", inRegister, "=E6"],
    ["escaped apostrophe", "=Gear[Maker''s mark]", beside, "=$F$5:$F$9"],
    ["upper and lower case", "=gear[@[NEXT DUE]]", inRegister, "=D6"],
    ["data above a total row", "=SUM(Loads[Load])", beside, "=SUM($A$22:$A$23)"],
    ["the total", "=Loads[[#Totals],[Load]]", beside, "=$A$24"],
    ["a space after the comma", "=Gear[[#Headers], [Id]]", inRegister, "=$B$4"],
    [
      "the register's own formula",
      "=GEAR.VERDICT(Gear[[#Headers],[Id]:[Maker''s mark]],IF(ISBLANK(Gear[@[Id]:[Maker''s mark]]),\"\",Gear[@[Id]:[Maker''s mark]]),$C$2)",
      inRegister,
      '=GEAR.VERDICT($B$4:$F$4,IF(ISBLANK(B6:F6),"",B6:F6),$C$2)',
    ],
  ];
  it.each(cases)("%s", (_, formula, place, written) => {
    expect(writeOutReferences(formula, place, around)).toBe(written);
  });
});

describe("what is not a table reference stays as it is", () => {
  it.each([
    ["a text that looks like one", '="Gear[Id]"&"[@Id] ""Gear"""'],
    ["a quoted sheet", "='Gear [Id]'!B2+1"],
    ["a sheet called like a name", "=AsOf!A1+Gear!$B$2:C3"],
    ["a function called like a table", "=Gear(1)+GEAR.WORST(A1:A3)"],
    ["numbers, addresses, columns", "=1E5+$A$1:B2+SUM(C:C)+SUM(3:3)+TRUE"],
    ["an array of constants", '={1,2;"a","b"}'],
    ["an error", "=IFERROR(#N/A,#REF!)"],
  ])("%s", (_, formula) => {
    expect(writeOutReferences(formula, beside, around)).toBe(formula);
  });
});

describe("today's date", () => {
  it("is written as a number, whatever the case", () => {
    expect(writeOutReferences('=IF(D2<today( ),"TODAY()",TODAY()+30)', beside, { ...around, today: 46_351 })).toBe(
      '=IF(D2<46351,"TODAY()",46351+30)',
    );
  });
  it("stays a function where no date is given", () => {
    expect(writeOutReferences("=TODAY()", beside, around)).toBe("=TODAY()");
  });
});

describe("defined names are written out", () => {
  it("a name for a cell", () => {
    expect(writeOutReferences("=asOf+30", beside, around)).toBe("=Notes!$B$2+30");
  });
  it("a name for a formula keeps its own precedence", () => {
    expect(writeOutReferences("=Twice^2", beside, around)).toBe("=(2*Notes!$B$2)^2");
  });
  it("a name for a table column", () => {
    expect(writeOutReferences("=COUNTA(GearIds)", elsewhere, around)).toBe("=COUNTA('Register'!$B$5:$B$9)");
  });
});

describe("references that lead nowhere are refused with a cell error and a sentence", () => {
  it.each([
    ["an unknown table", "=SUM(Chains[Id])", beside, "#REF!", "There is no table named Chains."],
    ["an unknown column", "=Gear[@Weight]", inRegister, "#REF!", 'Gear has no column named "Weight".'],
    ["this row from outside the rows", "=Gear[@Id]", beside, "#VALUE!", "The formula does not stand in a row of Gear."],
    [
      "this row from the row of headings",
      "=Gear[@Id]",
      { sheet: "Register", row: 3, column: 8 },
      "#VALUE!",
      "The formula does not stand in a row of Gear.",
    ],
    ["no table around", "=[@Id]", elsewhere, "#REF!", "[@Id] names no table, and the formula does not stand in one."],
    ["a totals row", "=Gear[[#Totals],[Id]]", beside, "#REF!", "Gear has no total row."],
    ["another workbook", "=[1]Log!A1", beside, "#REF!", "A reference to another workbook ([1]) can't be followed here."],
    ["a name in a circle", "=Circle", beside, "#NAME?", "The name Circle refers to itself."],
    ["an open bracket", "=Gear[@[Id]", inRegister, "#NAME?", "A bracket is not closed in [@[Id]."],
  ])("%s", (_, formula, place, code, message) => {
    let failure: unknown;
    try {
      writeOutReferences(formula, place, around);
    } catch (thrown) {
      failure = thrown;
    }
    expect(failure).toBeInstanceOf(BrokenReference);
    expect(failure).toMatchObject({ code, message });
  });
});

describe("addresses", () => {
  it("letters run from A over Z to AA and XFD", () => {
    expect([0, 25, 26, 51, 701, 702, 16_383].map(columnLetters)).toEqual(["A", "Z", "AA", "AZ", "ZZ", "AAA", "XFD"]);
  });
  it("a single cell has no colon", () => {
    expect(boxAddress({ row: 4, column: 2, rows: 1, columns: 1 })).toBe("C5");
    expect(boxAddress({ row: 4, column: 2, rows: 2, columns: 3 })).toBe("C5:E6");
  });
});
