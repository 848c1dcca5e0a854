/** Calls of worksheet functions through the library's own runtime, as Excel makes them. */
import type { Entry } from "./protocol/wire";

const CATEGORY = 1;
const INVOKE = 1000;
const CANCEL = 1001;
/** The cell error that each of the runtime's codes stands for; codes not named here show #VALUE!. */
const ERRORS: Readonly<Record<number, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
  9: "#NAME?",
  10: "#NAME?",
};
export type InvocationResult = { ok: true; value: unknown } | { ok: false; error: string; message: unknown };
export interface InvocationOptions {
  /** Address of the calling cell, such as `Gear!D4`. */
  address?: string;
  /** 1 cancelable, 2 streaming, 4 takes errors as arguments, 8 data types. */
  flags?: number;
}
export class Invocations {
  private readonly post: (entries: Entry[]) => void;
  private readonly waiting = new Map<number, (result: InvocationResult) => void>();
  private last = 0;

  constructor(post: (entries: Entry[]) => void) {
    this.post = post;
  }

  /** Calls the function associated with `id`; null, 0 and "" reach it as they are. */
  invoke(id: string, parameters: readonly unknown[], options: InvocationOptions = {}): Promise<InvocationResult> {
    this.last += 1;
    const number = this.last;
    const result = new Promise<InvocationResult>((settle) => this.waiting.set(number, settle));
    const call = [number, id, parameters, options.address ?? "", options.flags ?? 0, null];
    this.post([{ messageCategory: CATEGORY, messageType: INVOKE, targetId: "", message: JSON.stringify(call) }]);
    return result;
  }

  /** Ends the latest streaming call. */
  cancel(): void {
    this.post([{ messageCategory: CATEGORY, messageType: CANCEL, targetId: "", message: JSON.stringify({ invocationId: this.last }) }]);
  }

  settle(id: number, ok: boolean, value: unknown, errorCode?: number): void {
    const settle = this.waiting.get(id);
    this.waiting.delete(id);
    settle?.(ok ? { ok, value } : { ok, error: ERRORS[errorCode ?? 0] ?? "#VALUE!", message: value });
  }
}
