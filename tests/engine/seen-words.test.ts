/** Words in columns of observations: what is in order stands in a list of what is good, and everything else keeps nothing in service. */
import { describe, expect, it } from "vitest";
import { field, type FieldId } from "../../src/engine/columns";
import { readSeen } from "../../src/engine/reading/observation";
import * as SEEN from "../../src/engine/reading/words/seen";
import { ASKED, BAD_WORDS, CLEAN_WORDS } from "../fixtures/seen-words";

const says = (id: FieldId, word: string): string => {
  const { type, soundWords = [], faultWords = [] } = field(id);
  const read = readSeen(word, type === "sound" ? "sound" : "fault", { mayBeAbsent: true, sound: soundWords, fault: faultWords });
  return read.kind === "value" ? read.value : read.kind;
};
const look = (word: string, column: "fault" | "sound"): string => {
  const read = readSeen(word, column);
  return read.kind === "value" ? read.value : read.kind;
};
const each = (words: Partial<Record<FieldId, readonly string[]>>): [FieldId, string][] =>
  Object.entries(words).flatMap(([id, list]) => list.map((word): [FieldId, string] => [id as FieldId, word]));

describe("words of inspection sheets", () => {
  it.each(each(CLEAN_WORDS))("%s: %s is in order", (id, word) => {
    expect(says(id, word)).toBe("sound");
  });
  it.each(each(BAD_WORDS))("%s: %s keeps nothing in service", (id, word) => {
    expect(says(id, word)).not.toBe("sound");
  });
  it.each(each(ASKED))("%s: %s is asked about", (id, word) => {
    expect(says(id, word)).not.toBe("sound");
  });
});

describe("the words that observations are read by", () => {
  const GROUPS = Object.entries(SEEN);
  it("stand sorted in groups, each with a sentence why", () => {
    expect(GROUPS.flatMap(([, { words }]) => words).length).toBeGreaterThan(700);
    for (const [name, { why, words }] of GROUPS) {
      expect([name, why.length > 10]).toEqual([name, true]);
      expect([name, ...words]).toEqual([name, ...[...new Set(words)].sort()]);
    }
  });
  it("are good each by themselves, and not behind a denial or before damage", () => {
    for (const word of SEEN.GOOD.words)
      for (const column of ["fault", "sound"] as const) {
        expect([word, column, look(word, column)]).toEqual([word, column, "sound"]);
        for (const spoilt of [
          `not ${word}`,
          `no longer ${word}`,
          `${word} but bent`,
          `${word} except at the eye`,
          `${word}?`,
          `was ${word}`,
        ])
          expect([spoilt, column, look(spoilt, column) === "sound"]).toEqual([spoilt, column, false]);
      }
    for (const word of SEEN.IN_ORDER.words) {
      expect([word, look(word, "sound")]).toEqual([word, "sound"]);
      for (const spoilt of [`not ${word}`, `hardly ${word}`, `${word} but stiff`, `${word} sometimes`])
        expect([spoilt, look(spoilt, "sound") === "sound"]).toEqual([spoilt, false]);
    }
    for (const word of SEEN.NONE.words.filter((one) => one !== "0")) expect([word, look(word, "fault")]).toEqual([word, "sound"]);
  });
  it("of damage are in order only behind a denial", () => {
    for (const word of SEEN.LOOKED_FOR.words) {
      for (const clean of [`no ${word}`, `no visible ${word} seen`, `free of ${word}`])
        expect([clean, look(clean, "fault")]).toEqual([clean, "sound"]);
      for (const bad of [word, `${word} found`, `slight ${word}`, `no new ${word}`, `no ${word} but bent`])
        expect([bad, look(bad, "fault") === "sound"]).toEqual([bad, false]);
    }
    for (const word of SEEN.HARMED_SO.words) {
      expect([word, look(`not ${word}`, "fault")]).toEqual([word, "sound"]);
      expect([word, look(word, "fault") === "sound"]).toEqual([word, false]);
    }
    for (const word of SEEN.NOT_MISSING.words) expect([word, look(word, "sound") === "sound"]).toEqual([word, false]);
  });
});
