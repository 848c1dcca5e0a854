/** The functions that are worked out here; all others come from a library (`../library.ts`). */
import type { SheetFunction } from "../compile";
import type { CellSource } from "../values";
import { COUNTING } from "./counting";
import { INFORMATION } from "./information";
import { LOGICAL } from "./logical";
import { lookups } from "./lookup";
import { TEXT } from "./text";

export const builtIn = (source: (sheet: string | null) => CellSource | null): ReadonlyMap<string, SheetFunction> =>
  new Map(Object.entries({ ...LOGICAL, ...INFORMATION, ...TEXT, ...COUNTING, ...lookups(source) }));
