/**
 * `npm start`: the trial page. Installs and builds what is missing, serves the page on this machine, opens it.
 *   --no-open    only serve and print the address
 *   --port N     serve on this port
 *   --no-build   serve what was built before
 */
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { ensureInstalled, fail } from "./install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const BUILT = ["dist/taskpane.html", "dist/functions.js", "build/trial/main.js"].map((file) => path.join(root, file));

try {
  const options = readArguments();
  ensureInstalled();
  if (options.build && !isBuilt()) build();
  const { FIRST_PORT, serve } = await import("./serve.mjs");
  const server = await serve(options.port === undefined ? {} : { port: options.port });
  console.log(`Trial page: ${server.url}`);
  if (server.port !== FIRST_PORT)
    console.log(
      `Side-loaded in Excel, the add-in is looked for on port ${FIRST_PORT}, which is not this page's: for that, end the program that holds it and start again without --port.`,
    );
  const clear = options.open ? await open(server) : () => undefined;
  console.log("Ctrl-C ends it.");
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
    process.on(signal, () => {
      clear();
      server.close().then(() => process.exit(0));
    });
  }
} catch (fault) {
  fail(fault);
}

function readArguments() {
  const { values } = parseArgs({ options: { "no-open": { type: "boolean" }, "no-build": { type: "boolean" }, port: { type: "string" } } });
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port > 0 && port < 65_536))
    throw new Error(`--port takes a number from 1 to 65535, not ${values.port}.`);
  return { open: values["no-open"] !== true, build: values["no-build"] !== true, port };
}

/** True when everything that is served is newer than every source file. */
function isBuilt() {
  if (!BUILT.every((file) => existsSync(file))) return false;
  const oldest = Math.min(...BUILT.map((file) => statSync(file).mtimeMs));
  const sources = [...filesUnder(path.join(root, "src")), path.join(root, "package-lock.json")];
  return sources.every((file) => statSync(file).mtimeMs <= oldest);
}

function filesUnder(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const file = path.join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(file) : [file];
  });
}

function build() {
  console.log("Building (half a minute).");
  const { status } = spawnSync(process.execPath, [path.join(root, "tools", "build.mjs")], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (status !== 0) throw new Error("The build did not finish; see its lines above.");
}

/** Opens the page in the way the certificate allows; returns what has to be done at the end. */
async function open({ url, trusted, spki }) {
  const display = process.platform !== "linux" || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (display && trusted) {
    openByDefault(url);
    return () => undefined;
  }
  const { findBrowser } = await import("./browser.mjs");
  const browser = display ? await findBrowser().catch(() => null) : null;
  if (browser === null) {
    console.log(
      "Open the address in a browser on this machine; it warns once that the certificate is the page's own, which is right for localhost.",
    );
    return () => undefined;
  }
  return openWindow(browser, url, spki);
}

function openByDefault(url) {
  const [program, args] =
    process.platform === "win32"
      ? ["cmd", ["/c", "start", "", url]]
      : process.platform === "darwin"
        ? ["open", [url]]
        : ["xdg-open", [url]];
  const child = spawn(program, args, { stdio: "ignore", detached: true });
  child.on("error", () => {
    console.log("No browser could be opened; open the address yourself.");
  });
  child.unref();
}

/** A window of its own that trusts exactly one key besides the usual ones: ours. The profile is thrown away afterwards. */
function openWindow(browser, url, spki) {
  const profile = mkdtempSync(path.join(os.tmpdir(), "gear-verdicts-"));
  const args = [
    `--user-data-dir=${profile}`,
    `--app=${url}`,
    `--ignore-certificate-errors-spki-list=${spki}`,
    "--no-first-run",
    "--no-default-browser-check",
    "--disable-sync",
    "--disable-background-networking",
    "--disable-component-update",
    "--window-size=1400,860",
  ];
  if (process.platform === "linux" && process.getuid() === 0) args.push("--no-sandbox");
  const child = spawn(browser, args, { stdio: "ignore" });
  const forget = () => rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  const clear = () => {
    child.kill();
    forget();
  };
  child.on("error", () => {
    console.log("The browser did not start; open the address yourself.");
  });
  child.on("exit", (code) => {
    forget();
    if (code !== null)
      console.log(
        code === 0 ? "The window is closed; the page is still served." : "The browser could not show a window; open the address yourself.",
      );
  });
  return clear;
}
