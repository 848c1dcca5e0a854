/** Finds an installed browser of the Chromium family: the trial page's window and the page's tests need one. */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import os from "node:os";
import path from "node:path";

const LINUX_NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "microsoft-edge-stable"];
const MAC_NAMES = ["Chromium", "Google Chrome", "Microsoft Edge"];
const WINDOWS_PATHS = [
  "Google\\Chrome\\Application\\chrome.exe",
  "Microsoft\\Edge\\Application\\msedge.exe",
  "Chromium\\Application\\chrome.exe",
];

/**
 * Path of a browser, or an error that says in one sentence what to install. `install` lets it be installed on Debian, as root.
 * @param {{ install?: boolean }} [options]
 */
export async function findBrowser({ install = false } = {}) {
  const named = process.env.GEAR_BROWSER;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`GEAR_BROWSER names ${named}, which is not there.`);
  }
  const found = installedBrowser();
  if (found) return found;
  const debian = process.platform === "linux" && existsSync("/etc/debian_version") && process.getuid?.() === 0;
  if (install && debian) {
    installChromium();
    const installed = installedBrowser();
    if (installed) return installed;
  }
  throw new Error("No Chromium, Chrome or Edge was found: install one of them, or set GEAR_BROWSER to its program file.");
}

function installedBrowser() {
  return candidates().find((file) => existsSync(file));
}

function candidates() {
  if (process.platform === "win32") {
    const roots = [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA].filter(Boolean);
    return WINDOWS_PATHS.flatMap((file) => roots.map((root) => path.win32.join(root, file)));
  }
  if (process.platform === "darwin") {
    const roots = ["/Applications", path.join(os.homedir(), "Applications")];
    return MAC_NAMES.flatMap((name) => roots.map((root) => `${root}/${name}.app/Contents/MacOS/${name}`));
  }
  const folders = (process.env.PATH ?? "").split(path.delimiter).concat("/usr/bin", "/usr/local/bin", "/snap/bin");
  return [...LINUX_NAMES.flatMap((name) => folders.map((folder) => path.join(folder, name))), ...testBrowsers()];
}

/** Browsers that the page tests' own library may have fetched before. */
function testBrowsers() {
  const cache = path.join(os.homedir(), ".cache", "ms-playwright");
  if (!existsSync(cache)) return [];
  return readdirSync(cache)
    .filter((name) => name.startsWith("chromium-"))
    .sort()
    .reverse()
    .flatMap((name) => ["chrome-linux64", "chrome-linux"].map((folder) => path.join(cache, name, folder, "chrome")));
}

function installChromium() {
  console.log("Installing Chromium with apt-get (once).");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [
    ["update", "-qq"],
    ["install", "-y", "-qq", "--no-install-recommends", "chromium"],
  ]) {
    const { status } = spawnSync("apt-get", args, { env, stdio: ["ignore", "ignore", "inherit"] });
    if (status !== 0) throw new Error(`apt-get ${args[0]} did not finish, so no browser could be installed; see its lines above.`);
  }
}
