/** Failures and notes, one sentence each, in bars that can be dismissed. */
import { element } from "./elements";

const MOST = 3;
/** Shows a sentence; the same sentence is not shown twice. */
export function say(sentence: string): void {
  const place = element("messages", HTMLDivElement);
  if ([...place.children].some((bar) => bar.firstChild?.textContent === sentence)) return;
  const bar = document.createElement("div");
  bar.className = "message";
  bar.setAttribute("role", "alert");
  const text = document.createElement("p");
  text.textContent = sentence;
  const dismiss = document.createElement("button");
  dismiss.type = "button";
  dismiss.textContent = "Dismiss";
  dismiss.addEventListener("click", () => {
    bar.remove();
  });
  bar.append(text, dismiss);
  place.append(bar);
  while (place.children.length > MOST) place.firstElementChild?.remove();
}
export function clearMessages(): void {
  element("messages", HTMLDivElement).replaceChildren();
}
/** A failure's own sentence, or what there is of it. */
export function sentenceOf(failure: unknown): string {
  return failure instanceof Error && failure.message !== "" ? failure.message : String(failure);
}
