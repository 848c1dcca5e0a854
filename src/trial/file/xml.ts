/** Just enough XML for the parts of a workbook, as spreadsheet programs write them. */

export interface Element {
  attributes: Readonly<Record<string, string>>;
  inner: string;
}
/** The elements of that name, whatever their prefix, in order; not nested in one another. */
export function elementsOf(xml: string, name: string): Element[] {
  const attribute = `(?:"[^"]*"|'[^']*'|[^>"'])*?`;
  const pattern = new RegExp(`<(?:\\w+:)?${name}(\\s${attribute})?(?:/>|>([\\s\\S]*?)</(?:\\w+:)?${name}>)`, "g");
  return [...xml.matchAll(pattern)].map((found) => ({ attributes: attributesOf(found[1] ?? ""), inner: found[2] ?? "" }));
}
function attributesOf(text: string): Record<string, string> {
  const pairs = [...text.matchAll(/([\w:]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)];
  return Object.fromEntries(pairs.map((pair) => [pair[1] ?? "", unescapeXml(pair[2] ?? pair[3] ?? "")]));
}
export function textOf(xml: string, name: string): string | null {
  const element = elementsOf(xml, name)[0];
  return element ? unescapeXml(element.inner) : null;
}
const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };
export function unescapeXml(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi,
    (found, hex: string | undefined, decimal: string | undefined, name: string | undefined) => {
      if (hex !== undefined) return String.fromCodePoint(parseInt(hex, 16));
      if (decimal !== undefined) return String.fromCodePoint(Number(decimal));
      return ENTITIES[name ?? ""] ?? found;
    },
  );
}
export function escapeXml(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/\n/g, "&#10;")
    .replace(/\r/g, "&#13;")
    .replace(/\t/g, "&#9;");
}
/** ` name="value"` for each value that is there. */
export function attributeText(values: Readonly<Record<string, string | number | undefined>>): string {
  return Object.entries(values)
    .map(([name, value]) => (value === undefined ? "" : ` ${name}="${escapeXml(String(value))}"`))
    .join("");
}
