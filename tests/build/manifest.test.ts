import { createRequire } from "node:module";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Window } from "happy-dom";
import { describe, expect, it } from "vitest";
import { built } from "./dist";

const require = createRequire(import.meta.url);
const path = fileURLToPath(new URL("../../manifest.xml", import.meta.url));
const xml = readFileSync(path, "utf8");
const parse = (text: string): ReturnType<InstanceType<Window["DOMParser"]>["parseFromString"]> =>
  new new Window().DOMParser().parseFromString(text, "application/xml");
const doc = parse(xml);
const attributes = (selector: string, name: string): string[] => [...doc.querySelectorAll(selector)].map((e) => e.getAttribute(name) ?? "");
/** Child elements of the root in the order that the published schema gives. */
const ORDER = [
  "Id",
  "Version",
  "ProviderName",
  "DefaultLocale",
  "DisplayName",
  "Description",
  "IconUrl",
  "HighResolutionIconUrl",
  "SupportUrl",
  "AppDomains",
  "Hosts",
  "Requirements",
  "DefaultSettings",
  "Permissions",
  "VersionOverrides",
];

/** What is wrong with a manifest, in words. */
function faults(text: string): string[] {
  const manifest = parse(text);
  const values = (selector: string, name: string): string[] =>
    [...manifest.querySelectorAll(selector)].map((e) => e.getAttribute(name) ?? "");
  const used = new Set([...values("[resid]", "resid")]);
  const declared = values("Resources [id]", "id");
  return [
    ...[...used].filter((id) => !declared.includes(id)).map((id) => `resid ${id} is declared nowhere`),
    ...declared.filter((id) => !used.has(id)).map((id) => `resource ${id} is used nowhere`),
    ...declared.filter((id, index) => declared.indexOf(id) !== index).map((id) => `resource ${id} is declared twice`),
    ...declared.filter((id) => id.length > 32).map((id) => `resource id ${id} is longer than 32 characters`),
    ...[...manifest.querySelectorAll("ShortStrings > *")]
      .filter((e) => (e.getAttribute("DefaultValue") ?? "").length > 125)
      .map((e) => `short string ${String(e.getAttribute("id"))} is longer than 125 characters`),
    ...[...manifest.querySelectorAll("LongStrings > *")]
      .filter((e) => (e.getAttribute("DefaultValue") ?? "").length > 250)
      .map((e) => `long string ${String(e.getAttribute("id"))} is longer than 250 characters`),
  ];
}

describe("the manifest", () => {
  it("keeps the element order of the published schema", () => {
    const names = Array.from(doc.documentElement.children, (e) => e.tagName);
    expect(names).toEqual(ORDER);
  });

  it("declares every resource once, uses every one, and keeps to the length limits", () => {
    expect(faults(xml)).toEqual([]);
  });

  it("is caught when a resource points nowhere, stands twice, or an id is too long", () => {
    expect(faults(xml.replace('Label resid="Pane.Button.Label"', 'Label resid="Nowhere"'))).toContain("resid Nowhere is declared nowhere");
    expect(faults(xml.replace('bt:String id="Main.Group.Label"', 'bt:String id="Pane.Button.Label"')).length).toBeGreaterThan(0);
    expect(
      faults(xml.replaceAll("Icon.16x16", "Icon.16x16.with.a.name.that.is.far.too.long")).some((f) => f.includes("longer than 32")),
    ).toBe(true);
  });

  it("runs pane, functions and ribbon commands in one shared runtime", () => {
    const [runtime] = attributes("Runtimes > Runtime", "resid");
    expect(attributes("Runtimes > Runtime", "lifetime")).toEqual(["long"]);
    for (const place of ["Page > SourceLocation", "FunctionFile", "Action > SourceLocation"])
      expect(attributes(place, "resid")).toEqual([runtime]);
  });

  it("asks for the least requirement sets and the namespace GEAR", () => {
    const sets = Object.fromEntries(
      [...doc.querySelectorAll("Requirements > Sets > Set")].map((e) => [e.getAttribute("Name"), e.getAttribute("MinVersion")]),
    );
    expect(sets).toEqual({ SharedRuntime: "1.1", CustomFunctionsRuntime: "1.3", ExcelApi: "1.12" });
    expect([...doc.querySelectorAll("[id='Functions.Namespace']")].map((e) => e.getAttribute("DefaultValue"))).toEqual(["GEAR"]);
  });

  it("names ribbon commands that the pane associates, and icons that exist", () => {
    const pane = built("taskpane.js");
    for (const name of [...doc.querySelectorAll("FunctionName")].map((e) => e.textContent)) expect(pane).toContain(name);
    for (const icon of [...xml.matchAll(/DefaultValue="([^"]+\.(?:png|html))"/g)]
      .map((m) => m[1] ?? "")
      .filter((address) => address.includes("assets/")))
      expect(existsSync(fileURLToPath(new URL(`../../src/taskpane/${icon.slice(icon.indexOf("assets/"))}`, import.meta.url))), icon).toBe(
        true,
      );
  });

  it("is stamped for production by one build setting, without a local address left over", async () => {
    const { stamp } = require("../../tools/webpack.config.cjs") as { stamp: (text: string, at: string) => string };
    const production = stamp(xml, "https://gear.example.org/app/");
    expect(production).not.toContain("localhost");
    expect(production).toContain("https://gear.example.org/app/taskpane.html");
    expect(production).toContain("<AppDomain>https://gear.example.org</AppDomain>");
    expect(faults(production)).toEqual([]);
  });

  it("is read by the add-in tooling's own parser", async () => {
    const { OfficeAddinManifest } = require("office-addin-manifest") as {
      OfficeAddinManifest: { readManifestFile: (file: string) => Promise<{ id: string; displayName: string; hosts: string[] }> };
    };
    const info = await OfficeAddinManifest.readManifestFile(path);
    expect(info.displayName).toBe("Gear Verdicts");
    expect(info.hosts).toEqual(["Workbook"]);
  });
});
