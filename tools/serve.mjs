/**
 * Serves the trial page over https on this machine only. The add-in's page is the built one; the single change is that
 * office.js comes from node_modules here instead of the vendor's network address, so that nothing leaves the machine.
 */
import { readFile, readdir, realpath, stat } from "node:fs/promises";
import { createServer } from "node:https";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { certificate } from "./certificate.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
/** The port that manifest.xml names. */
export const FIRST_PORT = 3000;
const PORTS_TRIED = 50;
const VENDOR_SCRIPT = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

const FOLDERS = [
  ["/addin/", "dist"],
  ["/office/", "node_modules/@microsoft/office-js/dist"],
  ["/samples/", "sample-workbooks"],
  ["/", "build/trial"],
];

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".txt": "text/plain; charset=utf-8",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** Pictures of the add-in, which the ribbon keeps; without leave to keep them Windows shows default ones (add-in manifests, "Icons"). */
const KEPT = { "Cache-Control": "public, max-age=86400" };
/** Everything comes from this server; style attributes are allowed because grid and pane position their parts with them. */
const SOURCES = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "frame-src 'self'",
  "worker-src 'self' blob:",
  "base-uri 'none'",
  "form-action 'none'",
];
const POLICY = [...SOURCES, "frame-ancestors 'self'"].join("; ");
/**
 * Excel on the web shows the add-in's pane in a frame of another origin and fetches the functions' metadata from there, so the
 * add-in's own files say who may frame them nowhere and let every origin read them (publish-add-in-vs-code, CORS).
 */
const ADD_IN_HEADERS = { "Content-Security-Policy": SOURCES.join("; "), "Access-Control-Allow-Origin": "*" };

/**
 * Starts the server.
 * @param {{ port?: number }} [options] a port that must be free; without it, 3000 or the next free one
 * @returns {Promise<{ url: string, port: number, trusted: boolean, spki: string, close(): Promise<void> }>}
 */
export async function serve({ port } = {}) {
  const { key, cert, trusted, spki } = certificate();
  const server = createServer({ key, cert }, (request, response) => {
    answer(request)
      .catch(() => refusal(500, "This file could not be read."))
      .then(({ status, headers, body }) => {
        response.writeHead(status, { ...COMMON_HEADERS, ...headers });
        response.end(request.method === "HEAD" ? undefined : body);
      });
  });
  const taken = await listen(server, port);
  const close = () =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { url: `https://localhost:${taken}/`, port: taken, trusted, spki, close };
}

const COMMON_HEADERS = {
  "Content-Security-Policy": POLICY,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-store",
  "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
};

async function listen(server, port) {
  const ports = port === undefined ? Array.from({ length: PORTS_TRIED }, (_, index) => FIRST_PORT + index) : [port];
  for (const candidate of ports) {
    try {
      await new Promise((resolve, reject) => {
        server.once("error", reject);
        server.listen(candidate, "127.0.0.1", () => {
          server.off("error", reject);
          resolve();
        });
      });
      return server.address().port;
    } catch (fault) {
      if (fault.code !== "EADDRINUSE" && fault.code !== "EACCES") throw fault;
    }
  }
  throw new Error(
    port === undefined
      ? `No port from ${FIRST_PORT} to ${FIRST_PORT + PORTS_TRIED - 1} is free.`
      : `Port ${port} is taken; choose another with --port.`,
  );
}

async function answer({ method, url, headers }) {
  if (method !== "GET" && method !== "HEAD") return refusal(405, "Only reading is possible here.");
  // Only this machine's own names: a page elsewhere must not reach the server under a name of its own.
  if (!/^(localhost|127\.0\.0\.1)(:\d+)?$/i.test(headers.host ?? "")) return refusal(421, "Ask for localhost.");
  const asked = decodedPath(url);
  if (asked === null) return refusal(400, "This address can't be read.");
  if (asked === "/samples/index.json") return listSamples();
  const [prefix, folder] = FOLDERS.find(([start]) => asked.startsWith(start));
  const name = asked.slice(prefix.length) || "index.html";
  const file = await fileInside(path.join(root, folder), name);
  if (file === null) return refusal(404, "There is no such file.");
  const type = TYPES[path.extname(file).toLowerCase()];
  if (type === undefined) return refusal(404, "There is no such file.");
  const body = await readFile(file);
  if (prefix !== "/addin/") return ok(type, body);
  const more = { ...ADD_IN_HEADERS, ...(name.startsWith("assets/") && KEPT) };
  return ok(type, file.endsWith(".html") ? body.toString("utf8").replaceAll(VENDOR_SCRIPT, "/office/office.js") : body, more);
}

function decodedPath(url) {
  try {
    const { pathname } = new URL(url, "https://localhost/");
    const decoded = decodeURIComponent(pathname);
    return /[\0\\]/.test(decoded) ? null : decoded;
  } catch {
    return null;
  }
}

/** The file's real path when it lies inside the folder and no part of its name begins with a dot. */
async function fileInside(folder, name) {
  if (name.split("/").some((part) => part.startsWith(".") || part === "")) return null;
  try {
    const [base, file] = await Promise.all([realpath(folder), realpath(path.join(folder, name))]);
    const within = path.relative(base, file);
    if (within.startsWith("..") || path.isAbsolute(within) || !(await stat(file)).isFile()) return null;
    return file;
  } catch (fault) {
    if (["ENOENT", "ENOTDIR", "ENAMETOOLONG"].includes(fault.code)) return null;
    throw fault;
  }
}

async function listSamples() {
  const names = await readdir(path.join(root, "sample-workbooks")).catch(() => []);
  return ok(TYPES[".json"], JSON.stringify(names.filter((name) => name.endsWith(".xlsx") && !name.startsWith("~")).sort()));
}

function ok(type, body, headers = {}) {
  return { status: 200, headers: { "Content-Type": type, ...headers }, body };
}

function refusal(status, sentence) {
  return { status, headers: { "Content-Type": "text/plain; charset=utf-8" }, body: `${sentence}\n` };
}
