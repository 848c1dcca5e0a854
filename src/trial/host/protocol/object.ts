/** What every object of the workbook has in common. Members that the client library names are written as it names them. */
import { invalidArgument, itemNotFound } from "../../book/errors";
import type { HostState, RangeObject } from "./state";

/** Stands for an object that is not there, such as `getItemOrNullObject` of an unknown name. */
export const NULL_OBJECT = Symbol("null object");
export type Found<T> = T | typeof NULL_OBJECT;
export abstract class HostObject {
  /** Name of the type in the client library. */
  abstract readonly type: string;
  /** Members answered when the add-in loads an object without naming any. */
  abstract readonly scalars: readonly string[];
  /** Events the add-in may register for, as in `_RegisterDataChangedEvent`. */
  readonly events: readonly string[] = [];
  readonly state: HostState;
  /** Set when the client library tracks the object from one batch to the next. */
  reference: string | null = null;

  constructor(state: HostState) {
    this.state = state;
  }
}
export type Key = string | number;
export abstract class HostCollection<T extends HostObject> extends HostObject {
  readonly scalars: readonly string[] = ["Count"];

  abstract list(): T[];
  /** True when `key` is the item's name or id. */
  abstract answersTo(item: T, key: Key): boolean;

  get Count(): number {
    return this.list().length;
  }

  GetCount(): number {
    return this.list().length;
  }

  GetItem(key: Key): T {
    const item = this.find(key);
    if (!item) throw itemNotFound(`${this.type}.getItem`);
    return item;
  }

  GetItemAt(index: number): T {
    const item = this.list()[index];
    if (!item) throw invalidArgument(undefined, `${this.type}.getItemAt`);
    return item;
  }

  GetItemOrNullObject(key: Key): Found<T> {
    return this.find(key) ?? NULL_OBJECT;
  }

  find(key: Key): T | undefined {
    return this.list().find((item) => this.answersTo(item, key));
  }
}
export function sameText(a: string, b: unknown): boolean {
  return a.toLowerCase() === String(b).toLowerCase();
}
/** True for a range among what the add-in hands over. */
export function isRange(given: unknown): given is RangeObject {
  return given instanceof HostObject && given.type === "Range";
}
