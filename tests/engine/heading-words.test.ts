/** Headings as yards write them: read as what they say, or of the office; an unknown word asks. */
import { describe, expect, it } from "vitest";
import { type FieldId } from "../../src/engine/columns";
import { ANSWERS } from "../../src/engine/log/answers";
import { matchHeadings } from "../../src/engine/log/match-headings";
import { asksForMore, asksTheSame } from "../../src/engine/log/which-one";
import * as VOCABULARY from "../../src/engine/log/vocabulary";
import { HEADING_WORDS, OFFICE_HEADINGS } from "../fixtures/heading-words";

const match = (heading: string) => matchHeadings([heading]).matches[0];
describe("headings of inspection sheets", () => {
  const all = Object.entries(HEADING_WORDS).flatMap(([id, list]) => list.map((heading): [FieldId, string] => [id as FieldId, heading]));
  it.each(all)("%s: %s", (id, heading) => {
    expect(match(heading)?.field).toBe(id);
  });
  it.each(all.map(([, heading]) => heading))("%s asks as soon as a word of it is not known", (heading) => {
    expect(match(`${heading} zorbled`)?.state).toBe("not understood");
  });
  it.each(OFFICE_HEADINGS)("%s says nothing of condition", (heading) => {
    const state = match(heading);
    expect([state?.state, state?.field ?? ""].join(" ")).toMatch(
      /^(not about condition |read (place|legs|service|usedOn|inspected|id|gearType)$)/,
    );
  });
});
describe("a blank column", () => {
  it.each([
    ["Cracks", "Cracks (Y/N)"],
    ["Cracks", "Free of cracks"],
    ["Cracks", "Cracks found?"],
    ["Tag legible", "Tag present"],
    ["Hook latch", "Shackle latch"],
  ])("%s is filled by %s", (first, second) => {
    expect(asksTheSame(first, second)).toBe(true);
  });
  it.each([
    ["Cracks", "Cracked at eye"],
    ["Tag legible", "Tag faded"],
    ["Kinks", "Crushing"],
    ["Bent or stretched", "Bent"],
  ])("%s is not filled by %s", (first, second) => {
    expect(asksTheSame(first, second)).toBe(false);
  });
  it("asks for more where the other asks the same of one place", () => {
    expect(asksForMore("No cracks", "Cracked at eye")).toBe(true);
    expect(asksForMore("Cracked at eye", "Cracks")).toBe(false);
  });
});
describe("the answers that headings offer", () => {
  it("say one thing each, sorted, and turn yes and no into a question", () => {
    for (const { words, why } of [ANSWERS.well, ANSWERS.badly]) {
      expect(why.length).toBeGreaterThan(10);
      expect([...words]).toEqual([...new Set<string>(words)].sort());
    }
    const badly: readonly string[] = ANSWERS.badly.words;
    expect(ANSWERS.well.words.filter((word) => badly.includes(word))).toEqual([]);
  });
});
describe("the words of headings", () => {
  it("stand in groups with a sentence why", () => {
    const groups = Object.values(VOCABULARY).flatMap((value) =>
      Array.isArray(value)
        ? (value as readonly VOCABULARY.Group[])
        : "words" in value
          ? [value]
          : Object.values(value as Record<string, VOCABULARY.Group>),
    );
    expect(groups.flatMap(({ words }) => words).length).toBeGreaterThan(600);
    for (const { why, words } of groups) expect([words[0], why.length > 10, new Set(words).size]).toEqual([words[0], true, words.length]);
  });
});
