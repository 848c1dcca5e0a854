import { createServer } from "node:net";
import { request } from "node:https";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../tools/serve.mjs";
import type { Server } from "../../tools/serve.mjs";

let server: Server;
beforeAll(async () => {
  server = await serve();
});
afterAll(() => server.close());

interface Answer {
  status: number;
  headers: Record<string, unknown>;
  body: string;
}

/** The path goes out exactly as written, with its dots and escapes. */
function ask(path: string, options: { method?: string; host?: string } = {}): Promise<Answer> {
  const { method = "GET", host = `localhost:${String(server.port)}` } = options;
  return new Promise((resolve, reject) => {
    const asked = request(
      { host: "127.0.0.1", port: server.port, path, method, headers: { host }, servername: "localhost", rejectUnauthorized: false },
      (answer) => {
        let body = "";
        answer.setEncoding("utf8");
        answer.on("data", (part: string) => {
          body += part;
        });
        answer.on("end", () => {
          resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body });
        });
      },
    );
    asked.on("error", reject);
    asked.end();
  });
}

describe("the local server", () => {
  it("lists the samples and hands them out", async () => {
    const list = await ask("/samples/index.json");
    const names = JSON.parse(list.body) as string[];
    expect(names.length).toBeGreaterThan(0);
    const first = await ask(`/samples/${names[0] ?? ""}`);
    expect([first.status, first.body.slice(0, 2)]).toEqual([200, "PK"]);
  });
  it("hands out the client library from node_modules", async () => {
    const library = await ask("/office/office.js");
    expect([library.status, library.headers["content-type"]]).toEqual([200, "text/javascript; charset=utf-8"]);
  });
  it("keeps every request of its pages on this machine", async () => {
    const { headers } = await ask("/samples/index.json");
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/https?:|\*|unsafe-eval/);
    expect(headers["x-content-type-options"]).toBe("nosniff");
  });
  it.each([
    "/samples/../package.json",
    "/samples/%2e%2e/package.json",
    "/samples/..%2fpackage.json",
    "/samples/%2e%2e%2f%2e%2e%2fetc/passwd",
    "/samples//etc/passwd",
    "/samples/..\\package.json",
    "/.git/HEAD",
    "/certificate/key.pem",
    "/office/../package.json",
    "/samples/",
    "/nothing.html",
    "/samples/index.json/",
  ])("does not hand out %s", async (path) => {
    const { status, body } = await ask(path);
    expect([400, 404]).toContain(status);
    expect(body).not.toMatch(/gear-verdicts|root:|PRIVATE KEY/);
  });
  // Excel on the web frames the pane from another origin and fetches the metadata across origins (publish-add-in-vs-code); Windows keeps
  // no icon that may not be kept (add-in manifests).
  it("lets the add-in's files be framed, read from elsewhere, and its icons kept", async () => {
    const page = await ask("/addin/taskpane.html");
    expect([page.status, page.headers["access-control-allow-origin"]]).toEqual([200, "*"]);
    expect(String(page.headers["content-security-policy"])).not.toContain("frame-ancestors");
    expect(page.headers["cache-control"]).toBe("no-store");
    expect((await ask("/addin/functions.json")).headers["access-control-allow-origin"]).toBe("*");
    const icon = await ask("/addin/assets/icon-32.png");
    expect([icon.status, icon.headers["cache-control"]]).toEqual([200, "public, max-age=86400"]);
    const trial = (await ask("/samples/index.json")).headers;
    expect(String(trial["content-security-policy"])).toContain("frame-ancestors 'self'");
    expect(trial["access-control-allow-origin"]).toBeUndefined();
  });
  it("has no file of a name that is too long", async () => {
    expect((await ask(`/samples/${"x".repeat(9000)}`)).status).toBe(404);
  });
  it("answers to no other name, and only reads", async () => {
    expect((await ask("/samples/index.json", { host: "rebound.example" })).status).toBe(421);
    expect((await ask("/samples/index.json", { method: "POST" })).status).toBe(405);
    expect((await ask("/samples/index.json", { method: "HEAD" })).body).toBe("");
  });
  it("says in a sentence that a port is taken", async () => {
    const other = createServer();
    await new Promise<void>((resolve) => {
      other.listen(0, "127.0.0.1", resolve);
    });
    const address = other.address();
    const port = typeof address === "object" && address ? address.port : 0;
    await expect(serve({ port })).rejects.toThrow(`Port ${String(port)} is taken; choose another with --port.`);
    await new Promise((resolve) => {
      other.close(resolve);
    });
  });
});
