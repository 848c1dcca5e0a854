/** Light or dark: as chosen on this page before, else as the machine says. */
import { element } from "./elements";

const KEY = "trial page shade";
/** Sets the page's shade and tells `changed` of each change; returns true for dark. */
export function followShade(changed: (dark: boolean) => void): boolean {
  const button = element("shade", HTMLButtonElement);
  const set = (dark: boolean): void => {
    document.documentElement.dataset["shade"] = dark ? "dark" : "light";
    button.setAttribute("aria-pressed", String(dark));
  };
  const chosen = localStorage.getItem(KEY);
  let dark = chosen === null ? window.matchMedia("(prefers-color-scheme: dark)").matches : chosen === "dark";
  set(dark);
  button.addEventListener("click", () => {
    dark = !dark;
    localStorage.setItem(KEY, dark ? "dark" : "light");
    set(dark);
    changed(dark);
  });
  return dark;
}
