/** Refusals of the engine as cell errors: #N/A when something is not there, #VALUE! when a cell cannot be read. */
import type { Answer } from "../engine/reading/answer";

export function figure<T>(answer: Answer<T>): T {
  if (answer.ok) return answer.value;
  const code = answer.kind === "missing" ? CustomFunctions.ErrorCode.notAvailable : CustomFunctions.ErrorCode.invalidValue;
  // The add-in runtime recognises only its own error type, which does not extend Error.
  // eslint-disable-next-line @typescript-eslint/only-throw-error
  throw new CustomFunctions.Error(code, answer.why);
}
