/** The real client library in Node, joined to a host through the library's native bridge. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import vm from "node:vm";
import type { Carrier, Host } from "../host/host";
import type { Entry, RequestBody } from "../host/protocol/wire";
import { LibrarySettings } from "./node-settings";

interface Association {
  mappings: Record<string, unknown>;
  onchange(listener: () => void): void;
}
/** The globals of the library that this file touches. */
interface LibraryGlobals {
  window?: unknown;
  Excel?: unknown;
  Office: Record<string, unknown> & { actions: Record<string, unknown> };
  OSF: { _OfficeAppFactory?: unknown };
  OfficeExtension: {
    GenericEventRegistration: { s_genericEventRegistrations: Record<string, unknown> };
    CommonUtility: { _doApiNotSupportedCheck: boolean };
  };
  CustomFunctions?: unknown;
  _richApiNativeBridge?: Bridge;
}
interface Bridge {
  sendMessageToHost(text: string): void;
  /** Set by the library. */
  onMessageFromHost?(text: string): void;
}
interface BridgeRequest {
  id: number;
  type: number;
  flags?: number;
  message: { body: RequestBody };
}
const everywhere = globalThis as unknown as LibraryGlobals & Record<string, unknown>;
const ORIGIN = {
  href: "http://localhost/",
  search: "",
  hash: "",
  host: "localhost",
  hostname: "localhost",
  protocol: "http:",
  pathname: "/",
};
let connected: Host | null = null;
/** Loads the library into this process; a second call does nothing. */
export function loadClientLibrary(): void {
  if (everywhere.Excel !== undefined) return;
  const inOffice = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js");
  const source = readFileSync(join(dirname(inOffice), "excel-web-16.00.js"), "utf8");
  everywhere.window ??= globalThis;
  const remove = placeholders({
    self: globalThis,
    parent: globalThis,
    top: globalThis,
    name: "",
    navigator: { userAgent: "node", language: "en-US" },
    location: ORIGIN,
    document: {
      getElementById: () => null,
      getElementsByTagName: () => [],
      addEventListener: () => undefined,
      readyState: "loading",
      URL: ORIGIN.href,
      cookie: "",
    },
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
  });
  const functions = associations();
  everywhere.CustomFunctions = { _association: functions.association, associate: functions.associate };
  everywhere._richApiNativeBridge = {
    sendMessageToHost: () => {
      throw new Error("No workbook is connected to the client library.");
    },
  };
  // The library writes a line about its storage while it loads.
  const { log } = console;
  console.log = () => undefined;
  try {
    vm.runInThisContext(source, { filename: "excel-web-16.00.js" });
  } finally {
    console.log = log;
    remove();
  }
  // The library ends its loading by turning this check on, but on a subclass where it is not looked for (1.1.110). With it,
  // every member newer than the requirement sets is refused here and not only in somebody's older Excel.
  everywhere.OfficeExtension.CommonUtility._doApiNotSupportedCheck = true;
  addOfficeParts();
}
/** Globals that only the loading of the library asks for; those that were there stay. */
function placeholders(values: Record<string, unknown>): () => void {
  const added = Object.keys(values).filter((name) => everywhere[name] === undefined);
  for (const name of added) everywhere[name] = values[name];
  return () => {
    for (const name of added) Reflect.deleteProperty(everywhere, name);
  };
}
/** `associate(id, function)` or `associate({ id: function })`, as office.js defines it for functions and for commands. */
function associations(): { association: Association; associate: (id: string | Record<string, unknown>, call?: unknown) => void } {
  const listeners: (() => void)[] = [];
  const association: Association = {
    mappings: {},
    onchange: (listener) => {
      listeners.push(listener);
    },
  };
  return {
    association,
    associate: (id, call) => {
      const pairs = typeof id === "string" ? [[id, call] as const] : Object.entries(id);
      for (const [name, value] of pairs) association.mappings[name.toUpperCase()] = value;
      for (const listener of listeners) listener();
    },
  };
}
/** The few members that office.js brings along and the Excel part of the library does not. */
function addOfficeParts(): void {
  const { Office } = everywhere;
  const commands = associations();
  Object.assign(Office.actions, { _association: commands.association, associate: commands.associate });
  const info = { host: "Excel", platform: "OfficeOnline" };
  Office["onReady"] ??= (callback?: (ready: typeof info) => unknown) => {
    callback?.(info);
    return Promise.resolve(info);
  };
  Office["HostType"] ??= { Excel: "Excel" };
  Office["PlatformType"] ??= { PC: "PC", OfficeOnline: "OfficeOnline", Mac: "Mac" };
}
/** From now on the library talks to `host`, with its requirement sets and the settings of its book. */
export function connect(host: Host): void {
  loadClientLibrary();
  connected = host;
  const bridge = everywhere._richApiNativeBridge;
  if (!bridge) throw new Error("The client library was loaded without its bridge.");
  // A workbook that is opened afresh knows nothing of handlers registered with another.
  everywhere.OfficeExtension.GenericEventRegistration.s_genericEventRegistrations = {};
  bridge.sendMessageToHost = (text) => {
    void deliver(host, bridge, JSON.parse(text) as BridgeRequest);
  };
  host.attach(carrierFor(host, bridge));
  setContext(host, host.requirements);
}
async function deliver(host: Host, bridge: Bridge, request: BridgeRequest): Promise<void> {
  if (request.type !== 1) return;
  const answer = await host.answer(JSON.stringify(request.message.body), request.flags ?? 0);
  const message = answer.ok
    ? { statusCode: 200, headers: {}, body: JSON.parse(answer.text) as unknown }
    : { statusCode: 400, headers: {}, body: { error: { code: answer.code, message: answer.message } } };
  setTimeout(() => bridge.onMessageFromHost?.(JSON.stringify({ id: request.id, type: 2, message })), 0);
}
function carrierFor(host: Host, bridge: Bridge): Carrier {
  return {
    post(entries: Entry[]): void {
      setTimeout(() => {
        if (connected === host) bridge.onMessageFromHost?.(JSON.stringify({ type: 3, controlId: "", message: { entries } }));
      }, 0);
    },
    async press(name: string): Promise<void> {
      const { mappings } = everywhere.Office.actions["_association"] as Association;
      const command = mappings[name.toUpperCase()];
      if (typeof command !== "function") throw new Error(`No command is associated with the button ${name}.`);
      await new Promise<void>((completed) => {
        (command as (event: unknown) => void)({
          source: { id: name },
          completed: () => {
            completed();
          },
        });
      });
    },
  };
}
/** Changes the requirement sets that the library finds. */
export function setRequirements(requirements: Readonly<Record<string, string>>): void {
  if (!connected) throw new Error("Connect a workbook before its requirement sets are changed.");
  setContext(connected, requirements);
}
function setContext(host: Host, requirements: Readonly<Record<string, string>>): void {
  const context = {
    host: "Excel",
    platform: "OfficeOnline",
    displayLanguage: "en-US",
    contentLanguage: "en-US",
    document: { url: host.book.fileName, settings: new LibrarySettings(host.book) },
    requirements: { isSetSupported: (name: string, version?: string) => isSupported(requirements, name, version) },
  };
  everywhere.OSF._OfficeAppFactory = {
    getContext: () => context,
    getHostInfo: () => ({ hostPlatform: "web", hostType: "excel", flags: 0 }),
  };
}
function isSupported(requirements: Readonly<Record<string, string>>, name: string, version = "1.1"): boolean {
  const has = Object.entries(requirements).find(([known]) => known.toLowerCase() === name.toLowerCase())?.[1];
  if (has === undefined) return false;
  const [major = 0, minor = 0] = has.split(".").map(Number);
  const [askedMajor = 0, askedMinor = 0] = version.split(".").map(Number);
  return major > askedMajor || (major === askedMajor && minor >= askedMinor);
}
