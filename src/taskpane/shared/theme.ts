/** Light or dark: as the page around says, else as the query says, else as Office says, else as the machine says. */
import { type Theme, webDarkTheme, webLightTheme } from "@fluentui/react-components";
import { useSyncExternalStore } from "react";

export type Shade = "light" | "dark";
/** Of what a page knows about its surroundings. `officeBackground` is the body colour of Office's theme, such as #262626. */
export function shadeOf(query: string, officeBackground: string | null, machineIsDark: boolean): Shade {
  const asked = new URLSearchParams(query).get("theme");
  if (asked === "dark" || asked === "light") return asked;
  const background = officeBackground === null ? null : brightness(officeBackground);
  if (background !== null) return background < 128 ? "dark" : "light";
  return machineIsDark ? "dark" : "light";
}
/** Perceived brightness 0 to 255, or null when the text is no colour. */
function brightness(color: string): number | null {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(color);
  if (!parts) return null;
  const [red, green, blue] = [parts[1], parts[2], parts[3]].map((part) => parseInt(part ?? "0", 16)) as [number, number, number];
  return 0.299 * red + 0.587 * green + 0.114 * blue;
}
/** Small type a step larger than the default: the pane is read at arm's length. */
export function themeOf(shade: Shade): Theme {
  return shade === "dark" ? webDarkTheme : webLightTheme;
}
const darkQuery = (): MediaQueryList => window.matchMedia("(prefers-color-scheme: dark)");
function officeBackground(): string | null {
  if (typeof Office === "undefined") return null;
  return (Office.context as { officeTheme?: Office.OfficeTheme } | undefined)?.officeTheme?.bodyBackgroundColor ?? null;
}
/** What the page around has told, if any: a page of the same origin may change the shade while the pane is open. */
let told: Shade | null = null;
/** `{ shade: "dark" }` from the page around; anything else is none of our business. */
function shadeIn({ origin, source, data }: MessageEvent): Shade | null {
  if (origin !== window.location.origin || source !== window.parent || typeof data !== "object" || data === null) return null;
  const { shade } = data as { shade?: unknown };
  return shade === "dark" || shade === "light" ? shade : null;
}
export function useShade(): Shade {
  return useSyncExternalStore(
    (changed) => {
      const query = darkQuery();
      const hear = (event: MessageEvent): void => {
        const shade = shadeIn(event);
        if (shade === null) return;
        told = shade;
        changed();
      };
      query.addEventListener("change", changed);
      window.addEventListener("message", hear);
      return () => {
        query.removeEventListener("change", changed);
        window.removeEventListener("message", hear);
      };
    },
    () => told ?? shadeOf(window.location.search, officeBackground(), darkQuery().matches),
  );
}
/** Whether the window is narrower than a width. */
export function useNarrow(below: number): boolean {
  const query = `(max-width: ${String(below - 1)}px)`;
  return useSyncExternalStore(
    (changed) => {
      const list = window.matchMedia(query);
      list.addEventListener("change", changed);
      return () => {
        list.removeEventListener("change", changed);
      };
    },
    () => window.matchMedia(query).matches,
  );
}
