/** Just enough XML for the parts of a workbook, as spreadsheet programs write them. */

export interface Element {
  attributes: Readonly<Record<string, string>>;
  inner: string;
}
/** The elements of that name, whatever their prefix, in order; not nested in one another. One walk through the text, whatever it holds. */
export function elementsOf(xml: string, name: string): Element[] {
  const found: Element[] = [];
  const open = new RegExp(`<(?:(\\w+):)?${name}(?=[\\s/>])`, "g");
  for (let match = open.exec(xml); match !== null; match = open.exec(xml)) {
    const end = endOfTag(xml, open.lastIndex);
    if (end < 0) break;
    const attributes = attributesOf(xml.slice(open.lastIndex, end));
    open.lastIndex = end + 1;
    if (xml.charAt(end - 1) === "/") {
      found.push({ attributes, inner: "" });
      continue;
    }
    const close = `</${match[1] === undefined ? "" : `${match[1]}:`}${name}>`;
    const until = xml.indexOf(close, end);
    // Where one is not closed, none after it is.
    if (until < 0) break;
    found.push({ attributes, inner: xml.slice(end + 1, until) });
    open.lastIndex = until + close.length;
  }
  return found;
}
/** Place of the ">" that ends a tag; one inside quotes does not. */
function endOfTag(xml: string, from: number): number {
  for (let at = from; at < xml.length; at += 1) {
    const character = xml.charAt(at);
    if (character === ">") return at;
    if (character !== '"' && character !== "'") continue;
    at = xml.indexOf(character, at + 1);
    if (at < 0) return -1;
  }
  return -1;
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
